package easewright.draft;

import java.util.List;

/**
 * The figures of the bodice draft, mm, each with its source and standing. Needed of the body: bust, waist, neck base,
 * upper-arm and wrist girth; back neck point to waist; scye depth; across back and across front width; shoulder
 * length; bust point width; side neck point to bust point; outer arm length.
 */
final class BodiceRules {
    /** Armhole line 0.5 cm below the scye depth: from memory. */
    static final double SCYE_MORE = 5;

    /** Nape 1.8 cm below the side neck point: common practice (1.5–2.5 cm). */
    static final double NAPE_BELOW = 18;

    /** The bust lifts the front's side neck point 0.8 cm above the back's: common practice. */
    static final double FRONT_RAISED = 8;

    /**
     * Back neck width a fifth of the neck less 0.2 cm, front 0.7 cm: from memory; the shirt block of a Chinese
     * textbook, inet.qq.com/read/1032011545/18 (read), takes a fifth less 0.5 and 1 cm.
     */
    static final double BACK_NECK_LESS = 2;

    static final double FRONT_NECK_LESS = 7;

    /** Half across back plus 0.5 cm: from memory. Front likewise, a little less: common practice. */
    static final double BACK_WIDTH_MORE = 5;

    static final double FRONT_WIDTH_MORE = 2;

    /** The back neckline meets the shoulder this much flatter than square, the front steeper: common practice. */
    static final double NECK_LEAN = 14;

    /** Shoulder slopes below level, degrees: common practice. */
    static final double BACK_SLOPE = 21;

    static final double FRONT_SLOPE = 21;

    /** Back shoulder longer than the front and eased in, 1/4–1/2 in: from memory (clothingpatterns101.com has it). */
    static final double SHOULDER_EASE = 8;

    /** The armhole passes its corner at this distance, back and front: from memory. */
    static final double BACK_HOLLOW = 28;

    static final double FRONT_HOLLOW = 23;

    /** Front quarter 0.5 cm more, back quarter 0.5 cm less: common practice. */
    static final double FRONT_MORE = 5;

    /** Share of what a quarter loses from bust to waist that the side seam takes: common practice. */
    static final double SIDE_SHARE = 0.4;

    /** Front waist 1 cm lower at the centre: common practice. */
    static final double FRONT_DIP = 10;

    /** Front waist dart ends 2.5 cm below the bust point: common practice. */
    static final double WAIST_DART_BELOW = 25;

    /** Cap ease 1.25–1.75 in, 1.5 in on average (read, docs/sources.md 3); 3/4 in in others. Between the two. */
    static final double CAP_EASE = 30;

    /** Wrist ease: common practice for a sleeve without an opening. */
    static final double WRIST_EASE = 60;

    private BodiceRules() {}

    /** The shoulder dart, 7 cm wide for a bust of 88 cm and 0.6 cm more for each 4 cm of bust: from memory. */
    static double shoulderDart(double bust) {
        return 70 + (bust - 880) * 0.15;
    }

    static final List<String> TEXT = List.of(
            "Ease at the bust 3–4 in for a fitted garment: NMSU Guide C-228, Table 1 (read).",
            "Upper arm + 2 in: Threads, set-in sleeve solutions; dresspatternmaking.com, sleeve block (both read)."
                    + " Cap ease 3 cm, between 3/4 in (McCunn, read in class notes) and 1 1/2 in (Armstrong, read at"
                    + " second hand); rather more than half of it at the back (sfdlearningcenter.com, read).",
            "Sleeve cap over two quartered guide lines, hollowed next to the underarm and raised next to the crown;"
                    + " the front the deeper hollow: Drafting of basic sleeve block, lessonotes.com (read). The height"
                    + " is then solved so that cap − armhole is the declared ease.",
            "A fifth of the neck girth for the neck's width and depth: shirt block in a textbook of English for"
                    + " clothing students, inet.qq.com/read/1032011545/18 (read); the small deductions from memory.",
            "Armhole 0.5 cm below the scye depth, half the across back + 0.5 cm, armhole 2.8 and 2.3 cm off its"
                    + " corner, shoulder dart 7 cm for an 88 cm bust ± 0.6 cm for each 4 cm: from memory. Back shoulder"
                    + " eased by 0.8 cm: clothingpatterns101.com has the rule (read), the amount is from memory.",
            "Shoulder slopes 21°, nape 1.8 cm below the side neck point, the front's side neck point 0.8 cm higher, front quarter 0.5 cm more than the"
                    + " back, side seam 40 % of the waist shaping and darts the rest (solved so that the sewn waist is"
                    + " exact), wrist + 6 cm, all allowances: common practice.",
            "Truing: the sources draw the armhole and the hem level and the cap alike at both underarms; here the armhole"
                    + " meets the slanted side seam square, the sleeve's hem meets its slanted seams square, which lets it"
                    + " dip there, and the cap meets them so that it runs on over the seam: common practice.");
}
