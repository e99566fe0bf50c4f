package easewright.editor.paint;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import java.util.ArrayList;
import java.util.List;

/** The paper that a dart folds away: as far as the line of the piece goes, which over a mouth is mostly a cap. */
final class DartPaper {
    /** So far from the line a mouth lies on it, mm. */
    private static final double ON_LINE = 0.5;

    /** A line that is longer by more than this goes into the dart, which is cut out of the piece, and is no cap. */
    private static final double CAP = 1.4;

    /** Into so many straight lines a part of the cap is broken. */
    private static final int PARTS = 8;

    private DartPaper() {}

    /** Its corners, mm. */
    static List<Point> of(Dart dart, Outline outline) {
        boolean onLine = dart.otherPoint().isEmpty()
                && outline.comesWithin(dart.mouth1(), ON_LINE)
                && outline.comesWithin(dart.mouth2(), ON_LINE);
        if (!onLine) {
            return dart.corners();
        }
        Place one = outline.nearest(dart.mouth1()).place();
        Place other = outline.nearest(dart.mouth2()).place();
        boolean forth = !one.equals(other) && outline.length(one, other) <= outline.length(other, one);
        double over = one.equals(other) ? 0 : forth ? outline.length(one, other) : outline.length(other, one);
        if (over == 0 || over > CAP * dart.intake()) {
            return dart.corners();
        }
        List<Point> corners = new ArrayList<>(List.of(dart.point()));
        for (Segment segment : (forth ? outline.run(one, other) : outline.run(other, one)).segments()) {
            for (int i = 0; i <= PARTS; i++) {
                corners.add(segment.at((double) i / PARTS));
            }
        }
        return corners;
    }
}
