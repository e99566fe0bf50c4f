package easewright.draft;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Body;
import easewright.pattern.Cloth;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Map;

/**
 * A waist-length bodice with a set-in sleeve: front on the fold with shoulder and waist darts, back with a centre
 * seam and a waist dart, long sleeve. Rules and their standing: see {@link BodiceRules}.
 *
 * @param body      needs the measurements named in {@link BodiceRules}
 * @param bustEase  of the whole girth at the bust, mm
 * @param waistEase of the whole girth at the waist seam, mm
 * @param armEase   of the sleeve at the upper arm, mm
 */
public record BodiceDraft(Body body, double bustEase, double waistEase, double armEase) implements Draft {
    private static final double SEAM = 15;
    private static final double CURVE = 10;

    /** A quarter inch on a neckline: fashion-incubator.com, seam allowances (read). */
    private static final double NECK = 6;

    private static final double SLEEVE_HEM = 25;

    @Override
    public Garment draft() {
        Panel back = back();
        Panel front = front();
        double scye = scye();
        PieceDraft backPiece = new PieceDraft(
                        "bodice-back",
                        "Back",
                        back.contour(EdgeRole.CENTRE, "centre back", SEAM).reversed())
                .cut(2, false)
                .level(LevelMark.through("bust", new Point(back.bust() / 2, bustLine()))
                        .withReference(new Point(0, 0)))
                .level(LevelMark.along("waist", "waist"))
                .darts(back.waist().darts())
                .notch("back 1", back.onArmhole(back.notchAt()))
                .notch("back 2", back.onArmhole(back.notchAt() + SleeveDraft.NOTCH_STEP))
                .grain(new Point(back.bust() * 0.26, scye * 0.42), new Point(back.bust() * 0.26, bustLine() + 105))
                .label(new Point(back.bust() * 0.52, scye * 0.62));
        PieceDraft frontPiece = new PieceDraft("bodice-front", "Front", front.contour(EdgeRole.FOLD, "fold", 0))
                .cut(1, true)
                .level(LevelMark.through("bust", new Point(front.bust() / 2, bustLine()))
                        .withReference(new Point(0, 0)))
                .level(LevelMark.along("waist", "waist"))
                .darts(front.shoulderDarts())
                .darts(front.waist().darts())
                .notch("front", front.onArmhole(front.notchAt()))
                .grain(new Point(front.bust() * 0.2, scye * 0.72), new Point(front.bust() * 0.2, bustLine() + 105))
                .label(new Point(front.bust() * 0.56, scye + 14));
        PieceDraft sleeve = new SleeveDraft(
                        new SleeveDraft.Armhole(
                                back.armhole().length(), front.armhole().length(), back.notchAt(), front.notchAt()),
                        BodiceRules.CAP_EASE,
                        Wearer.measure(body, "Upper-arm girth") + armEase,
                        Wearer.measure(body, "Outer arm length"),
                        Wearer.measure(body, "Wrist girth") + BodiceRules.WRIST_EASE,
                        CURVE,
                        SLEEVE_HEM)
                .piece("bodice-sleeve")
                .level(LevelMark.along("wrist", "hem"));

        double top = Layout.HEAD + 60;
        List<PieceDraft.Face> faces = new Layout()
                .add(backPiece, false, top)
                .add(frontPiece, true, top)
                .add(sleeve, false, top - 20)
                .faces();
        Pattern pattern = new Pattern(
                faces.stream().map(PieceDraft.Face::piece).toList(),
                List.of(
                        Level.of("bust", LevelKind.BUST),
                        Level.of("waist", LevelKind.WAIST),
                        Level.of("upper arm", LevelKind.UPPER_ARM),
                        Level.of("wrist", LevelKind.WRIST)),
                List.of(
                        mate("side seam", "bodice-front/side", "bodice-back/side", 0),
                        mate("shoulder", "bodice-back/shoulder", "bodice-front/shoulder", BodiceRules.SHOULDER_EASE),
                        new Mate(
                                "sleeve in armhole",
                                List.of(EdgeRef.of("bodice-sleeve", "cap")),
                                List.of(EdgeRef.of("bodice-back", "armhole"), EdgeRef.of("bodice-front", "armhole")),
                                BodiceRules.CAP_EASE),
                        mate("sleeve seam", "bodice-sleeve/front underarm", "bodice-sleeve/back underarm", 0)),
                body,
                Cloth.WOVEN,
                Map.of("bust", bustEase, "waist", waistEase, "upper arm", armEase, "wrist", BodiceRules.WRIST_EASE),
                new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE),
                List.of());
        return new Garment(
                "bodice", "Bodice with set-in sleeve", Facts.of(body, pattern), BodiceRules.TEXT, pattern, faces);
    }

    static Mate mate(String name, String first, String second, double ease) {
        return new Mate(name, List.of(EdgeRef.parse(first)), List.of(EdgeRef.parse(second)), ease);
    }

    private double scye() {
        return Wearer.measure(body, "Scye depth length") + BodiceRules.SCYE_MORE;
    }

    private double waistLine() {
        return Wearer.measure(body, "Back neck point to waist");
    }

    /** The bust line lies at the bust point, found from the side neck point. */
    private double bustLine() {
        double across = Wearer.measure(body, "Bust point width") / 2 - frontNeck();
        double along = Wearer.measure(body, "Side neck point to bust point");
        return frontTop() + Math.sqrt(along * along - across * across);
    }

    private static double frontTop() {
        return -BodiceRules.NAPE_BELOW - BodiceRules.FRONT_RAISED;
    }

    private double fifthOfNeck() {
        return Wearer.measure(body, "Neck base girth") / 5;
    }

    private double frontNeck() {
        return fifthOfNeck() - BodiceRules.FRONT_NECK_LESS;
    }

    private double quarterBust() {
        return (Wearer.measure(body, "Bust girth") + bustEase) / 4;
    }

    private double quarterWaist() {
        return (Wearer.measure(body, "Waist girth") + waistEase) / 4;
    }

    /** What each side seam takes between bust line and waist; the same on front and back. */
    private double sideTake() {
        return BodiceRules.SIDE_SHARE * (quarterBust() - quarterWaist());
    }

    private Point waistCorner(double bust) {
        return new Point(bust - sideTake(), waistLine());
    }

    /** The underarm point: where the side seam, straight from waist to bust line, meets the armhole line. */
    private Point underarm(double bust) {
        Point corner = waistCorner(bust);
        Point atBust = new Point(bust, bustLine());
        return corner.towards(atBust, (corner.y() - scye()) / (corner.y() - atBust.y()));
    }

    private Point downSide(double bust) {
        return waistCorner(bust).minus(underarm(bust));
    }

    private Panel back() {
        double bust = quarterBust() - BodiceRules.FRONT_MORE;
        BodiceHalf half = new BodiceHalf(
                new Point(0, 0),
                new Point(fifthOfNeck() - BodiceRules.BACK_NECK_LESS, -BodiceRules.NAPE_BELOW),
                new Point(Wearer.measure(body, "Across back width") / 2 + BodiceRules.BACK_WIDTH_MORE, scye() * 0.5),
                underarm(bust));
        double slope = BodiceRules.BACK_SLOPE;
        double shoulder = Wearer.measure(body, "Shoulder length") + BodiceRules.SHOULDER_EASE;
        Point end = half.shoulderEnd(slope, shoulder);
        Curve armhole = half.armhole(end, end.minus(half.side()), BodiceRules.BACK_HOLLOW, downSide(bust));
        DartedSeam waist = waist(
                "back waist dart",
                new Point(0, waistLine()),
                bust,
                new Point(bust * 0.46, bustLine() + 12),
                quarterWaist() - BodiceRules.FRONT_MORE);
        return new Panel(
                bust,
                half.neckline(slope, BodiceRules.NECK_LEAN, 0.6),
                BodiceHalf.straight(half.side(), end),
                List.of(),
                armhole,
                waistCorner(bust),
                waist,
                0.52);
    }

    private Panel front() {
        double bust = quarterBust() + BodiceRules.FRONT_MORE;
        double fifth = fifthOfNeck();
        Point point = new Point(Wearer.measure(body, "Bust point width") / 2, bustLine());
        Point side = new Point(frontNeck(), frontTop());
        double shoulder = Wearer.measure(body, "Shoulder length");
        Point direction = new Point(1, 0).turned(Math.toRadians(BodiceRules.FRONT_SLOPE));
        Point mouth = side.plus(direction.times(shoulder * 0.45));
        DartPlan dart = shoulderDart(point, mouth);
        Affine opening = dart.opening(1);
        Curve shut = BodiceHalf.straight(side, side.plus(direction.times(shoulder)));
        DartedSeam seam = DartedSeam.open("shoulder", shut, List.of(dart), 1);
        Point pitch = opening.apply(new Point(
                Wearer.measure(body, "Across front width") / 2 + BodiceRules.FRONT_WIDTH_MORE, scye() * 0.52));
        BodiceHalf half = new BodiceHalf(
                new Point(0, frontTop() + fifth - BodiceRules.BACK_NECK_LESS), side, pitch, underarm(bust));
        Curve armhole = half.armhole(
                seam.open().end(), opening.applyToDirection(direction), BodiceRules.FRONT_HOLLOW, downSide(bust));
        DartedSeam waist = waist(
                "front waist dart",
                new Point(0, waistLine() + BodiceRules.FRONT_DIP),
                bust,
                point.plus(new Point(0, BodiceRules.WAIST_DART_BELOW)),
                quarterWaist() + BodiceRules.FRONT_MORE);
        return new Panel(
                bust,
                half.neckline(BodiceRules.FRONT_SLOPE, -BodiceRules.NECK_LEAN, 0.58),
                seam.open(),
                seam.darts(),
                armhole,
                waistCorner(bust),
                waist,
                0.48);
    }

    private DartPlan shoulderDart(Point point, Point mouth) {
        double width = BodiceRules.shoulderDart(Wearer.measure(body, "Bust girth"));
        double angle = 2 * Math.asin(width / 2 / mouth.distance(point));
        return new DartPlan("shoulder dart", point, mouth.minus(point).unit().turned(angle / 2), angle);
    }

    private DartedSeam waist(String name, Point centre, double bust, Point dartPoint, double wanted) {
        double intake = Solve.when(
                DraftLine.DART,
                w -> waistWith(name, centre, bust, dartPoint, w).closed().length(),
                wanted,
                0,
                80);
        return waistWith(name, centre, bust, dartPoint, intake);
    }

    private DartedSeam waistWith(String name, Point centre, double bust, Point dartPoint, double intake) {
        Point corner = waistCorner(bust);
        Point mouth = new Point(dartPoint.x(), corner.y());
        List<DartPlan> plans = List.of(DartPlan.of(name, mouth, dartPoint, intake));
        Point downSide = downSide(bust);
        Point square =
                DartedSeam.shutDirection(plans, -1, downSide).quarterTurned().times(-1);
        Point end = DartedSeam.shut(plans, -1, corner);
        Curve closed = new Curve(List.of(Fair.bow(centre, new Point(1, 0), end, square, 0.36)));
        return DartedSeam.open("waist", closed, plans, -1);
    }

    /** One drafted half of the body; notchShare is how far up the armhole from the underarm its notch stands. */
    private record Panel(
            double bust,
            Curve neck,
            Curve shoulder,
            List<Dart> shoulderDarts,
            Curve armhole,
            Point corner,
            DartedSeam waist,
            double notchShare) {
        double notchAt() {
            return armhole.length() * notchShare;
        }

        Point onArmhole(double fromUnderarm) {
            return armhole.reversed().pointAtLength(fromUnderarm);
        }

        Contour contour(EdgeRole centreRole, String centreName, double centreAllowance) {
            return new Contour(neck.end())
                    .edge("shoulder", EdgeRole.SHOULDER, SEAM, shoulder)
                    .edge("armhole", EdgeRole.ARMHOLE, CURVE, armhole)
                    .edge("side", EdgeRole.SEAM, SEAM, corner)
                    .edge("waist", EdgeRole.WAIST, CURVE, waist.open().reversed())
                    .edge(centreName, centreRole, centreAllowance, neck.start())
                    .edge("neck", EdgeRole.NECK, NECK, neck);
        }
    }
}
