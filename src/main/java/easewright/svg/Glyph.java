package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An outline that may be one letter of words that were turned into shapes.
 *
 * @param shape   number of the shape in the drawing
 * @param subPath number of its sub-path
 * @param area    with what is left white inside, mm²
 * @param stroke  how thick it is drawn on average, mm
 * @param hollow  it leaves room in its box, or has a hole, as most letters do and hardly a small piece
 */
record Glyph(int shape, int subPath, Box box, double area, double stroke, boolean hollow) {
    /** Smaller ones are dots and commas, mm². */
    private static final double LEAST_AREA = 8;

    /** A letter that fills more of its box than this has no form to be told by. */
    private static final double FULL = 0.7;

    /** A shape of more strokes is a picture. */
    private static final int MOST_STROKES = 200;

    /** The letters that one shape may be: its closed lines that lie in no other, each with the holes in it. */
    static List<Glyph> of(DrawnShape shape, int number) {
        if (shape.subPaths().size() > MOST_STROKES) {
            return List.of();
        }
        List<Ring> rings = new ArrayList<>();
        for (int k = 0; k < shape.subPaths().size(); k++) {
            Ring.of(shape, k).filter(r -> r.area() >= LEAST_AREA).ifPresent(rings::add);
        }
        rings.sort(Comparator.comparingDouble(Ring::area).reversed());
        List<Area> outer = new ArrayList<>();
        List<List<Ring>> holes = new ArrayList<>();
        for (Ring ring : rings) {
            SubPath line = new SubPath(ring.outline());
            Optional<Area> around =
                    outer.stream().filter(area -> area.holds(line)).findFirst();
            if (around.isPresent()) {
                holes.get(outer.indexOf(around.get())).add(ring);
            } else {
                outer.add(Area.of(ring.outline(), number, ring.subPath()));
                holes.add(new ArrayList<>());
            }
        }
        List<Glyph> glyphs = new ArrayList<>();
        for (int i = 0; i < outer.size(); i++) {
            glyphs.add(of(outer.get(i), holes.get(i)));
        }
        return glyphs;
    }

    private static Glyph of(Area outer, List<Ring> holes) {
        double white = holes.stream().mapToDouble(Ring::area).sum();
        double rim = outer.outline().length()
                + holes.stream().map(Ring::outline).mapToDouble(Outline::length).sum();
        Box box = outer.box();
        boolean hollow = !holes.isEmpty() || outer.area() < FULL * box.width() * box.height();
        return new Glyph(outer.index(), outer.subPath(), box, outer.area(), 2 * (outer.area() - white) / rim, hollow);
    }

    /** As it is when the page is turned by a quarter, so that what ran down runs across. */
    Glyph turned() {
        return new Glyph(
                shape, subPath, new Box(box.minY(), -box.maxX(), box.maxY(), -box.minX()), area, stroke, hollow);
    }
}
