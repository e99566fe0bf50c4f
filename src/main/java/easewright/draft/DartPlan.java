package easewright.draft;

import easewright.geom.Affine;
import easewright.geom.Point;

/**
 * A dart before it is opened: its point, the direction from the point to the middle of its mouth, and the angle
 * between its legs, radians.
 */
record DartPlan(String name, Point point, Point towardsMouth, double angle) {
    /** A dart whose mouth of the given width lies at the end of a middle line of the given length. */
    static DartPlan of(String name, Point middleOfMouth, Point point, double width) {
        Point middle = middleOfMouth.minus(point);
        return new DartPlan(name, point, middle.unit(), 2 * Math.atan(width / 2 / middle.norm()));
    }

    /** Direction of the leg on the centre's side, for a dart that opens with the given sense of turn. */
    Point firstLeg(int sense) {
        return towardsMouth.turned(-sense * angle / 2);
    }

    /** The turn that opens the dart, moving what lies beyond it away from the centre. */
    Affine opening(int sense) {
        return Affine.rotation(sense * angle, point);
    }
}
