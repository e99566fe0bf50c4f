package easewright.draft;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Body;
import easewright.pattern.Cloth;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A close knit top without darts: front and back on the fold, short sleeve.
 *
 * <p>Rules. S: stitchpaperscissors.com, "Draft a T-shirt bodice block" (read in part): no wearing ease, up to 10 %
 * off across. L: letslearntosew.com, "How to draft sleeves for a knit shirt" (read in part): cap two thirds of the
 * armhole's height. T: thelondonpatterncutter.co.uk, "T shirt draft" (read): no cap ease generally needed.
 *
 * @param body      needs bust, waist, hip, neck base and upper-arm girth, back neck point to waist, side waist to
 *                  hip, scye depth, across back width, shoulder length
 * @param bustEase  of the whole girth, mm; negative for a top that stretches
 * @param waistEase of the whole girth, mm
 * @param hipEase   of the whole girth, mm
 * @param armEase   of the sleeve, mm
 */
public record KnitTopDraft(Body body, double bustEase, double waistEase, double hipEase, double armEase)
        implements Draft {
    /** Overlocked seams 0.7 cm, hems 2 cm: docs/sources.md 6 (factory 1/4 in on curves, 3/4–1 in knit hem). */
    private static final double SEAM = 7;

    private static final double HEM = 20;

    /** Common practice: the underarm 1.2 cm above the scye depth, the bust line 3 cm below it. */
    private static final double SCYE_LESS = 12;

    private static final double BUST_BELOW = 30;

    /** Neck opened 1.5 cm at the shoulder, 1 cm at the back and 3 cm at the front for a bound neck: common practice. */
    private static final double NECK_WIDER = 15;

    private static final double BACK_NECK_LOWER = 10;
    private static final double FRONT_NECK_LOWER = 30;

    /** The front 0.5 cm narrower between the armholes, on each side: common practice. */
    private static final double FRONT_NARROWER = 5;

    private static final double SLOPE = 20;
    private static final double SLEEVE_LENGTH = 205;
    private static final double CAP_EASE = 4;

    @Override
    public Garment draft() {
        Panel back = panel(0, BACK_NECK_LOWER, 24);
        double fifth = Wearer.measure(body, "Neck base girth") / 5;
        Panel front = panel(FRONT_NARROWER, fifth - 22 + FRONT_NECK_LOWER, 20);
        double arm = Wearer.measure(body, "Upper-arm girth") + armEase;
        PieceDraft sleeve = new SleeveDraft(
                        new SleeveDraft.Armhole(
                                back.armhole().length(), front.armhole().length(), back.notchAt(), front.notchAt()),
                        CAP_EASE,
                        arm,
                        SLEEVE_LENGTH,
                        arm - 12,
                        SEAM,
                        HEM)
                .piece("top-sleeve");
        double top = Layout.HEAD + 50;
        List<PieceDraft.Face> faces = new Layout()
                .add(
                        piece("top-back", "Back", back, true)
                                .notch("back 1", back.onArmhole(back.notchAt()))
                                .notch("back 2", back.onArmhole(back.notchAt() + SleeveDraft.NOTCH_STEP)),
                        false,
                        top)
                .add(
                        piece("top-front", "Front", front, false).notch("front", front.onArmhole(front.notchAt())),
                        true,
                        top)
                .add(sleeve, false, top)
                .faces();
        Pattern pattern = new Pattern(
                faces.stream().map(PieceDraft.Face::piece).toList(),
                List.of(
                        Level.of("bust", LevelKind.BUST),
                        Level.of("waist", LevelKind.WAIST),
                        Level.of("hip", LevelKind.HIP),
                        Level.of("upper arm", LevelKind.UPPER_ARM)),
                List.of(
                        BodiceDraft.mate("side seam", "top-front/side", "top-back/side", 0),
                        BodiceDraft.mate("shoulder", "top-back/shoulder", "top-front/shoulder", 0),
                        new Mate(
                                "sleeve in armhole",
                                List.of(EdgeRef.of("top-sleeve", "cap")),
                                List.of(EdgeRef.of("top-back", "armhole"), EdgeRef.of("top-front", "armhole")),
                                CAP_EASE),
                        BodiceDraft.mate("sleeve seam", "top-sleeve/front underarm", "top-sleeve/back underarm", 0)),
                body,
                new Cloth(
                        true,
                        OptionalDouble.of(50),
                        OptionalDouble.of(20),
                        OptionalDouble.of(95),
                        OptionalDouble.of(5)),
                Map.of("bust", bustEase, "waist", waistEase, "hip", hipEase, "upper arm", armEase),
                new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE),
                List.of());
        return new Garment("knit-top", "Knit top", Facts.of(body, pattern), RULES, pattern, faces);
    }

    private PieceDraft piece(String id, String name, Panel panel, boolean otherWay) {
        double bust = quarter("Bust girth", bustEase);
        Contour contour = new Contour(panel.neck().end())
                .edge("shoulder", EdgeRole.SHOULDER, SEAM, panel.shoulder())
                .edge("armhole", EdgeRole.ARMHOLE, SEAM, panel.armhole())
                .edge("side", EdgeRole.SEAM, SEAM, side())
                .edge("hem", EdgeRole.HEM, HEM, new Point(0, hem()))
                .edge("fold", EdgeRole.FOLD, 0, panel.neck().start())
                .edge("neck", EdgeRole.NECK, SEAM, panel.neck());
        Point nape = new Point(0, 0);
        return new PieceDraft(id, name, otherWay ? contour.reversed() : contour)
                .cut(1, true)
                .level(LevelMark.through("bust", new Point(bust / 2, bustLine()))
                        .withReference(nape))
                .level(LevelMark.through("waist", new Point(bust / 2, waistLine()))
                        .withReference(nape))
                .level(LevelMark.through("hip", new Point(bust / 2, hipLine())).withReference(nape))
                .notch("waist", new Point(quarter("Waist girth", waistEase), waistLine()))
                .grain(new Point(bust * 0.36, bustLine() + 30), new Point(bust * 0.36, hipLine() - 30))
                .label(new Point(bust * 0.52, scye() * 0.72));
    }

    private double quarter(String girth, double ease) {
        return (Wearer.measure(body, girth) + ease) / 4;
    }

    private double scye() {
        return Wearer.measure(body, "Scye depth length") - SCYE_LESS;
    }

    private double bustLine() {
        return scye() + BUST_BELOW;
    }

    private double waistLine() {
        return Wearer.measure(body, "Back neck point to waist");
    }

    private double hipLine() {
        return waistLine() + Wearer.measure(body, "Side waist to hip");
    }

    private double hem() {
        return hipLine() + 15;
    }

    private Point under() {
        return new Point(quarter("Bust girth", bustEase) + 1.5, scye());
    }

    /** One side seam for front and back: through the bust, waist and hip points, straight down at the hip. */
    private Curve side() {
        Point bust = new Point(quarter("Bust girth", bustEase), bustLine());
        Point waist = new Point(quarter("Waist girth", waistEase), waistLine());
        Point hip = new Point(quarter("Hip girth", hipEase), hipLine());
        Curve shaped = Fair.through(List.of(under(), bust, waist, hip), bust.minus(under()), new Point(0, 1));
        List<Segment> segments = new ArrayList<>(shaped.segments());
        segments.add(new Line(hip, new Point(hip.x(), hem())));
        return new Curve(segments);
    }

    private Panel panel(double narrower, double neckLower, double offCorner) {
        double fifth = Wearer.measure(body, "Neck base girth") / 5;
        double across = (Wearer.measure(body, "Bust girth") + bustEase) / Wearer.measure(body, "Bust girth");
        BodiceHalf half = new BodiceHalf(
                new Point(0, neckLower),
                new Point(
                        fifth - 2 + NECK_WIDER, -BodiceRules.NAPE_BELOW + NECK_WIDER * Math.tan(Math.toRadians(SLOPE))),
                new Point(Wearer.measure(body, "Across back width") / 2 * across - narrower, scye() * 0.5),
                under());
        Point end = half.shoulderEnd(SLOPE, Wearer.measure(body, "Shoulder length") - NECK_WIDER);
        return new Panel(
                half.neckline(SLOPE, narrower > 0 ? -BodiceRules.NECK_LEAN : BodiceRules.NECK_LEAN, 0.6),
                BodiceHalf.straight(half.side(), end),
                half.armhole(
                        end,
                        end.minus(half.side()),
                        offCorner,
                        side().segments().get(0).tangent(0)));
    }

    private record Panel(Curve neck, Curve shoulder, Curve armhole) {
        double notchAt() {
            return armhole.length() * 0.5;
        }

        Point onArmhole(double fromUnderarm) {
            return armhole.reversed().pointAtLength(fromUnderarm);
        }
    }

    private static final List<String> RULES = List.of(
            "No wearing ease, or up to 10 % less than the body across: Draft a T-shirt bodice block,"
                    + " stitchpaperscissors.com (read in part).",
            "Sleeve cap about two thirds of the armhole's height: How to draft sleeves for a knit shirt,"
                    + " letslearntosew.com (read in part); here the height is solved so that cap − armhole is 0.4 cm."
                    + " No cap ease generally needed: T shirt draft, thelondonpatterncutter.co.uk (read).",
            "A fifth of the neck girth for the neck, as for the bodice: textbook shirt block,"
                    + " inet.qq.com/read/1032011545/18 (read), deductions from memory.",
            "Neck opened for a binding, front 0.5 cm narrower than the back between armhole and centre, shoulder slope 20°, underarm 1.2 cm above the scye depth, shaped side seam"
                    + " through bust, waist and hip, allowances 0.7 and 2 cm: common practice. Armhole, cap and sleeve hem"
                    + " leave their seams so that they run on over them: common practice. Stretch 50 % across and"
                    + " 20 % along, recovery 95 %, shrinkage 5 %: our own assumption for the sample's jersey.");
}
