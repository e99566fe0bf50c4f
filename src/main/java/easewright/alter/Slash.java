package easewright.alter;

import easewright.geom.Point;
import java.util.Optional;

/**
 * Where a piece is slashed.
 *
 * @param piece  id or name of the piece
 * @param from   place on the outline at which it opens
 * @param to     place on the outline to which it runs: the hinge, or where it opens as well
 * @param moving a place on the outline of the part that moves; empty: the part without the centre line
 * @param weight how large a part of the whole change it takes, relative to the other slashes
 */
public record Slash(String piece, Point from, Point to, Optional<Point> moving, double weight) {
    /**
     * @throws IllegalArgumentException unless the weight is a number above 0
     */
    public Slash {
        if (!(weight > 0 && Double.isFinite(weight))) {
            throw new IllegalArgumentException("The share of a slash on " + piece + " must be above 0");
        }
    }

    public static Slash of(String piece, Point from, Point to) {
        return new Slash(piece, from, to, Optional.empty(), 1);
    }

    public Slash withWeight(double share) {
        return new Slash(piece, from, to, moving, share);
    }

    public Slash moving(Point place) {
        return new Slash(piece, from, to, Optional.of(place), weight);
    }

    void write(Settings settings, String key) {
        settings.text(key + ".piece", piece).point(key + ".from", from).point(key + ".to", to);
        moving.ifPresent(p -> settings.point(key + ".moving", p));
        settings.number(key + ".share", weight);
    }

    static Slash read(Settings settings, String key) throws Refusal {
        Optional<Point> moving =
                settings.has(key + ".moving") ? Optional.of(settings.point(key + ".moving")) : Optional.empty();
        double share = settings.number(key + ".share");
        if (!(share > 0)) {
            throw settings.unreadable(key + ".share");
        }
        return new Slash(
                settings.text(key + ".piece"),
                settings.point(key + ".from"),
                settings.point(key + ".to"),
                moving,
                share);
    }
}
