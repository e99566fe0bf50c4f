package easewright.draft;

import easewright.geom.Point;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;

/** A straight folded waistband with an underlap, drawn with its cutting line as the outline. */
final class Waistband {
    private Waistband() {}

    /**
     * The band, from its end at the opening (x = 0) to the end of its underlap.
     *
     * @param seam      length sewn to the waist, mm
     * @param finished  finished width, mm; the band is cut twice as wide and folded
     * @param underlap  length beyond the opening, mm
     */
    static PieceDraft piece(String id, double seam, double finished, double underlap, double allowance) {
        double wide = 2 * finished;
        Contour contour = new Contour(new Point(0, 0))
                .edge("inner seam", EdgeRole.SEAM, allowance, new Point(seam + underlap, 0))
                .edge("underlap end", EdgeRole.OPENING, allowance, new Point(seam + underlap, wide))
                .edge("underlap", EdgeRole.OPENING, allowance, new Point(seam, wide))
                .edge("seam", EdgeRole.WAIST, allowance, new Point(0, wide))
                .edge("end", EdgeRole.OPENING, allowance, new Point(0, 0));
        return new PieceDraft(id, "Waistband", contour)
                .outlineIsCuttingLine()
                .level(LevelMark.along("waist", "seam").notCounted())
                .innerLine(new Point(0, finished), new Point(seam + underlap, finished))
                .notch("underlap", new Point(seam, wide))
                .grain(new Point(seam * 0.06, finished * 0.5), new Point(seam * 0.3, finished * 0.5))
                .label(new Point(seam * 0.66, finished * 0.47));
    }
}
