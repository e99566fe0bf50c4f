package easewright.svg;

import easewright.geom.Affine;

/** How much a map enlarges. */
final class Stretch {
    private Stretch() {}

    /** The largest length that a displacement of length 1 can become: the greater singular value. */
    static double largest(Affine map) {
        double half = (map.a() * map.a() + map.b() * map.b() + map.c() * map.c() + map.d() * map.d()) / 2;
        double det = map.determinant();
        double spread = Math.sqrt(Math.max(0, half * half - det * det));
        return Math.sqrt(half + spread);
    }
}
