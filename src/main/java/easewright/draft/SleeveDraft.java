package easewright.draft;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import java.util.List;

/**
 * A one-piece set-in sleeve for a given armhole.
 *
 * @param armhole   the two halves it is sewn to
 * @param capEase   by how much the cap is longer than the armhole, mm
 * @param upperArm  finished width at the upper-arm level, mm
 * @param length    from crown to hem, mm
 * @param hem       finished width of the hem, mm
 * @param allowance of the seams, mm
 * @param hemAllowance mm
 */
record SleeveDraft(
        Armhole armhole,
        double capEase,
        double upperArm,
        double length,
        double hem,
        double allowance,
        double hemAllowance) {
    /** The upper-arm level lies this far below the underarm, so that the level crosses both underarm seams. */
    private static final double LEVEL_BELOW = 20;

    /** Rather more than half of the cap ease belongs to the back (sfdlearningcenter.com/SleeveFacts, read). */
    private static final double BACK_SHARE = 0.55;

    /** Two notches mark the back (taylorfrancis sleeve chapter, docs/sources.md 6), this far apart. */
    static final double NOTCH_STEP = 10;

    /**
     * The armhole a sleeve is drafted for, along its stitching lines, mm.
     *
     * @param backToNotch  from the underarm to the back's lower notch
     * @param frontToNotch from the underarm to the front notch
     */
    record Armhole(double back, double front, double backToNotch, double frontToNotch) {}

    /** The hem bends towards its seams with handles this long, as a share of its width. */
    private static final double HEM_REACH = 0.18;

    private static final double EXACT = 1e-10;

    /** Half the way from one end of the hem to the other: the hem dips to its seams, and is as long as wanted along itself. */
    private double halfHem() {
        double half = hem / 2;
        for (int i = 0; i < 60; i++) {
            double at = half;
            SleeveCap cap = cap(at);
            double longer = hemLine(at, slant(at, cap.height(), cap.width())).length() - hem;
            half -= longer / 2;
            if (Math.abs(longer) < EXACT) {
                break;
            }
        }
        return half;
    }

    private SleeveCap cap(double halfHem) {
        return SleeveCap.of(
                armhole.back() + armhole.front() + capEase, h -> width(h, halfHem), (h, w) -> slant(halfHem, h, w));
    }

    /** By how much the underarm seams slant, degrees. */
    private double slant(double halfHem, double capHeight, double width) {
        return Math.toDegrees(Math.atan2(width / 2 - halfHem, length - capHeight));
    }

    /** Square to both seams, so that it runs on over the joined seam. */
    private Curve hemLine(double half, double slant) {
        Point front = new Point(half, length);
        Point leaving = new Point(-1, 0).turned(Math.toRadians(slant));
        Point arriving = new Point(-1, 0).turned(-Math.toRadians(slant));
        return new Curve(List.of(Fair.bow(front, leaving, new Point(-half, length), arriving, HEM_REACH)));
    }

    PieceDraft piece(String id) {
        double halfHem = halfHem();
        SleeveCap cap = cap(halfHem);
        Curve hemLine = hemLine(halfHem, slant(halfHem, cap.height(), cap.width()));
        Curve curve = cap.curve();
        Point back = curve.start();
        Point front = curve.end();
        double level = cap.height() + LEVEL_BELOW;
        Contour contour = new Contour(back)
                .edge("cap", EdgeRole.CAP, allowance, curve)
                .edge("front underarm", EdgeRole.SEAM, allowance, hemLine.start())
                .edge("hem", EdgeRole.HEM, hemAllowance, hemLine)
                .edge("back underarm", EdgeRole.SEAM, allowance, back);
        double free = length - cap.height();
        return new PieceDraft(id, "Sleeve", contour)
                .cut(2, false)
                .level(LevelMark.through("upper arm", new Point(0, level)).withReference(new Point(0, 0)))
                .notch("crown", curve.pointAtLength(armhole.back() + capEase * BACK_SHARE))
                .notch("back 1", curve.pointAtLength(armhole.backToNotch()))
                .notch("back 2", curve.pointAtLength(armhole.backToNotch() + NOTCH_STEP))
                .notch("front", curve.reversed().pointAtLength(armhole.frontToNotch()))
                .grain(
                        new Point(-cap.width() * 0.2, cap.height() * 0.8),
                        new Point(-cap.width() * 0.2, length - free * 0.15))
                .label(new Point(cap.width() * 0.02, cap.height() * 0.72));
    }

    /** Width at the underarm for which the upper-arm level is as wide as wanted. */
    private double width(double capHeight, double halfHem) {
        double share = LEVEL_BELOW / (length - capHeight);
        return (upperArm - 2 * halfHem * share) / (1 - share);
    }
}
