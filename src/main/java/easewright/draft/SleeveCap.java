package easewright.draft;

import easewright.geom.Curve;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A sleeve cap drawn over two guide lines from the underarm corners to the crown, and raised or lowered until its
 * length is the armhole's plus the wanted cap ease.
 *
 * <p>Each guide line is quartered: hollowed at the quarter next to the underarm, raised at the quarter next to the
 * crown (lessonotes.com, "Drafting of basic sleeve block": back 0.5–1 cm down and 1.5–2 cm up, front 1 cm down; read.
 * The front is raised here nearly as much as the back: from memory). The back is the flatter hollow.
 *
 * @param height  crown above the line from underarm to underarm, mm
 * @param width   from underarm corner to underarm corner, mm
 * @param curve   from the back underarm over the crown at (0, 0) to the front underarm
 */
record SleeveCap(double height, double width, Curve curve) {
    /** Heights of the curve over its guide line, as shares of the guide's length, at its quarters from the underarm. */
    private static final double[] BACK = {-0.022, 0.030, 0.092};

    private static final double[] FRONT = {-0.048, 0.006, 0.086};

    /** The back leaves the underarm flatter than the front by twice this, degrees: from memory. */
    private static final double FLATTER = 1.1;

    /** How wide the sleeve must be at the underarm for a cap of a given height. */
    interface Width {
        double at(double height);
    }

    /** By how much the underarm seams slant for a cap of a given height and width, degrees. */
    interface Slant {
        double at(double height, double width);
    }

    /**
     * @param slant the cap leaves both seams so that it runs on smoothly over the joined seam
     */
    static SleeveCap of(double length, Width width, Slant slant) {
        double height = Solve.when(
                DraftLine.SLEEVE_CAP, h -> curve(h, width.at(h), slant).length(), length, length * 0.04, length * 0.48);
        return new SleeveCap(height, width.at(height), curve(height, width.at(height), slant));
    }

    private static Curve curve(double height, double width, Slant slant) {
        Point crown = new Point(0, 0);
        Point back = new Point(-width / 2, height);
        Point front = new Point(width / 2, height);
        List<Point> places = new ArrayList<>();
        places.add(back);
        Point backUp = crown.minus(back).quarterTurned().times(-1);
        for (int i = 0; i < 3; i++) {
            places.add(back.towards(crown, (i + 1) / 4.0).plus(backUp.times(BACK[i])));
        }
        places.add(crown);
        Point frontUp = crown.minus(front).quarterTurned();
        for (int i = 2; i >= 0; i--) {
            places.add(front.towards(crown, (i + 1) / 4.0).plus(frontUp.times(FRONT[i])));
        }
        places.add(front);
        double own = slant.at(height, width);
        return Fair.through(
                places,
                new Point(1, 0).turned(-Math.toRadians(own + FLATTER)),
                new Point(1, 0).turned(Math.toRadians(own - FLATTER)));
    }
}
