package easewright.draft;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
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
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;

/**
 * Straight trousers: front and back, cut in pairs, and a waistband.
 *
 * <p>Rules: "The Basic Trousers Block", a chapter of a textbook of English for clothing students,
 * m.ibooks.qq.com/read/1032011545/17 (read as far as the back's side seam; what follows there from memory). The point
 * numbers in the code are that text's. Two of its steps are replaced by truing: the back hip is measured on the real
 * seat line, and the back's side waist and fork are shifted until the seams walk true; crotch and hem meet their seams
 * square.
 *
 * @param body      needs waist, hip, thigh and knee girth, straight body rise, side waist to hip, outside leg length
 * @param hipEase   of the whole girth, mm; a quarter of it in the front, three in the back, as 0.5 and 1.5 cm there
 * @param waistEase of the whole girth at the waist seam, mm (1 cm there)
 * @param bottom    half the finished hem, mm ("trouser bottom width")
 */
public record TrouserDraft(Body body, double hipEase, double waistEase, double bottom) implements Draft {
    private static final double WAIST_ALLOWANCE = 10;
    private static final double SEAM = 15;
    private static final double CROTCH = 10;
    private static final double HEM = 40;

    /** The thigh level lies this far below the fork, where it crosses both leg seams: common practice. */
    private static final double THIGH_BELOW = 50;

    /** The back inseam is shorter than the front and stretched (thesewcialists.com, read); amount: from memory. */
    static final double INSEAM_STRETCH = 5;

    @Override
    public Garment draft() {
        Frame f = new Frame(body, hipEase, bottom);
        TrouserLeg front = front(f);
        TrouserLeg back = back(f, front);
        double band =
                2 * (front.waist().closed().length() + back.waist().closed().length());
        double top = Layout.HEAD + 70;
        List<PieceDraft.Face> faces = new Layout()
                .add(
                        piece("trousers-back", "Back", back, f).notch("seat", new Point(f.x16(), f.rise() / 2)),
                        false,
                        top)
                .add(piece("trousers-front", "Front", front, f).notch("fly", new Point(f.x5(), f.hip())), true, top)
                .addBelow(Waistband.piece("trousers-band", band, 35, 40, WAIST_ALLOWANCE)
                        .notch("side left", new Point(front.waist().closed().length(), 70))
                        .notch("centre back", new Point(band / 2, 70))
                        .notch(
                                "side right",
                                new Point(band - front.waist().closed().length(), 70)))
                .faces();
        Pattern pattern = new Pattern(
                faces.stream().map(PieceDraft.Face::piece).toList(),
                List.of(
                        Level.of("waist", LevelKind.WAIST),
                        Level.of("hip", LevelKind.HIP),
                        Level.of("thigh", LevelKind.THIGH),
                        Level.of("knee", LevelKind.KNEE)),
                List.of(
                        BodiceDraft.mate("outseam", "trousers-front/outseam", "trousers-back/outseam", 0),
                        BodiceDraft.mate("inseam", "trousers-back/inseam", "trousers-front/inseam", -INSEAM_STRETCH),
                        new Mate(
                                "waistband",
                                List.of(
                                        new EdgeRef("trousers-front", "waist", 2),
                                        new EdgeRef("trousers-back", "waist", 2)),
                                List.of(EdgeRef.of("trousers-band", "seam")),
                                0)),
                body,
                Cloth.WOVEN,
                Map.of("waist", waistEase, "hip", hipEase),
                new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE),
                List.of());
        return new Garment("trousers", "Straight trousers", Facts.of(body, pattern), RULES, pattern, faces);
    }

    private PieceDraft piece(String id, String name, TrouserLeg leg, Frame f) {
        Contour contour = new Contour(leg.waist().open().start())
                .edge("waist", EdgeRole.WAIST, WAIST_ALLOWANCE, leg.waist().open())
                .edge("outseam", EdgeRole.SEAM, SEAM, leg.outseam())
                .edge("hem", EdgeRole.HEM, HEM, leg.hem())
                .edge("inseam", EdgeRole.SEAM, SEAM, leg.inseam().reversed())
                .edge("crotch", EdgeRole.CROTCH, CROTCH, leg.crotch().reversed());
        Point top = leg.waist().open().start();
        return new PieceDraft(id, name, contour)
                .cut(2, false)
                .level(LevelMark.along("waist", "waist"))
                .level(LevelMark.through("hip", new Point(0, f.hip())).withReference(top))
                .level(LevelMark.through("thigh", new Point(0, f.rise() + THIGH_BELOW))
                        .withReference(top))
                .level(LevelMark.through("knee", new Point(0, f.knee())).withReference(top))
                .darts(leg.waist().darts())
                .notch("knee outseam", new Point(leg.kneeHalf(), f.knee()))
                .notch("knee inseam", new Point(-leg.kneeHalf(), f.knee()))
                .grain(new Point(0, f.rise() + 110), new Point(0, f.length() - 90))
                .label(new Point(0, (f.hip() + f.rise()) / 2 + 4));
    }

    private TrouserLeg front(Frame f) {
        Point p6 = new Point(f.x5(), f.hip());
        Point p10 = new Point(f.x5() + 10, 0);
        Point p9 = new Point(f.x9(), f.rise());
        Point p5 = new Point(f.x5(), f.rise());
        // 6–9: a curve touching a point 3 cm from 5.
        Point p12 = new Point(bottom / 2 - 5, f.length());
        Point p13 = new Point(p12.x() + 13, f.knee());
        Point p14 = new Point(-p12.x(), f.length());
        Point p15 = new Point(-p13.x(), f.knee());
        Curve inseam = TrouserLeg.inseam(p9, p15, p14, 7.5);
        Cubic fork = Fair.rounding(
                p6,
                p6.plus(p6.minus(p10).unit().times(f.rise() - f.hip())),
                p9,
                TrouserLeg.square(p9, inseam, p5.x()),
                p5,
                new Point(-1, -1),
                f.byHip(30));
        Curve crotch = new Curve(List.of(new Line(p10, p6), fork));
        Point p8 = new Point(f.x5() + f.frontHip(), f.hip());
        DoubleFunction<Curve> outseam = x -> TrouserLeg.outseam(new Point(x, 0), p8, p13, p12);
        double wanted = (Wearer.measure(body, "Waist girth") + waistEase) / 4;
        DoubleFunction<DartedSeam> waist = x -> TrouserLeg.waist(
                p10,
                p6.minus(p10),
                outseam.apply(x),
                List.of(DartPlan.of("front dart", new Point(0, 0), new Point(0, 100), 20)));
        double x11 = Solve.when(
                DraftLine.FRONT_WAIST, x -> waist.apply(x).closed().length(), wanted, p8.x() - 75, p8.x() + 40);
        return new TrouserLeg(waist.apply(x11), outseam.apply(x11), inseam, crotch, p13.x());
    }

    private TrouserLeg back(Frame f, TrouserLeg front) {
        Point p16 = new Point(f.x16(), f.rise());
        Point p19 = new Point(f.x16(), f.rise() / 2);
        Point p21 = new Point(f.x16() + 20, -20);
        Point seat = p19.minus(p21);
        Point p26 = new Point(bottom / 2 - 5 + 10, f.length());
        Point p27 = new Point(bottom / 2 - 5 + 13 + 10, f.knee());
        Point p28 = new Point(-p26.x(), f.length());
        Point p29 = new Point(-p27.x(), f.knee());
        // 9–23 half of 5–9, then 24 below it; here as far below as makes the inseam shorter by the wanted stretch.
        double x24 = f.x9() - (f.x5() - f.x9()) / 2;
        double y24 = Solve.when(
                DraftLine.BACK_INSEAM,
                y -> TrouserLeg.inseam(new Point(x24, y), p29, p28, 12.5).length(),
                front.inseam().length() - INSEAM_STRETCH,
                f.rise() - 15,
                f.rise() + 45);
        Point p24 = new Point(x24, y24);
        Curve inseam = TrouserLeg.inseam(p24, p29, p28, 12.5);
        Point onSeat = p19.plus(seat.unit().times((f.rise() - p19.y()) * 0.9));
        Cubic fork = Fair.rounding(
                p19, onSeat, p24, TrouserLeg.square(p24, inseam, p16.x()), p16, new Point(-1, -1), f.byHip(42.5));
        Curve crotch = new Curve(List.of(new Line(p21, p19), fork));
        double seatAtHip = fork.at(
                        fork.crossings(new Point(0, f.hip()), new Point(1, 0)).get(0))
                .x();
        Point p25 = new Point(seatAtHip + f.backHip(), f.hip());
        double wanted = (Wearer.measure(body, "Waist girth") + waistEase) / 4;
        DoubleFunction<Point> corner = x ->
                new Point(x, trueSideWaist(x, p25, p27, p26, front.outseam().length()));
        DoubleFunction<DartedSeam> waist = x -> {
            Point p22 = corner.apply(x);
            Point guide = p22.minus(p21);
            Point inwards = guide.unit().quarterTurned();
            Point first = p21.towards(p22, 1 / 3.0);
            Point second = p21.towards(p22, 2 / 3.0);
            return TrouserLeg.waist(
                    p21,
                    seat,
                    TrouserLeg.outseam(p22, p25, p27, p26),
                    List.of(
                            DartPlan.of("back dart 1", first, first.plus(inwards.times(120)), 20),
                            DartPlan.of("back dart 2", second, second.plus(inwards.times(100)), 20)));
        };
        double x22 = Solve.when(
                DraftLine.BACK_WAIST, x -> waist.apply(x).closed().length(), wanted, p25.x() - 75, p25.x() + 40);
        return new TrouserLeg(
                waist.apply(x22), TrouserLeg.outseam(corner.apply(x22), p25, p27, p26), inseam, crotch, p27.x());
    }

    /** Height of the back's side waist at which its outseam is as long as the front's. */
    private static double trueSideWaist(double x, Point hip, Point knee, Point hem, double wanted) {
        return Solve.when(
                DraftLine.BACK_OUTSEAM,
                y -> TrouserLeg.outseam(new Point(x, y), hip, knee, hem).length(),
                wanted,
                -40,
                40);
    }

    /** The text's upright and level lines; the crease is x = 0, the fork on its left. */
    private record Frame(Body body, double hipEase, double bottom) {
        double girth() {
            return Wearer.measure(body, "Hip girth");
        }

        double rise() {
            return Wearer.measure(body, "Straight body rise");
        }

        double hip() {
            return Wearer.measure(body, "Side waist to hip");
        }

        double length() {
            return Wearer.measure(body, "Outside leg length");
        }

        double knee() {
            return rise() + (length() - rise()) / 2 - 50;
        }

        double x5() {
            return -(girth() / 12 + 15);
        }

        double x9() {
            return x5() - (girth() / 16 + 5);
        }

        double x16() {
            return x5() * 0.75;
        }

        double frontHip() {
            return girth() / 4 + hipEase / 8;
        }

        double backHip() {
            return girth() / 4 + hipEase * 3 / 8;
        }

        /** The text gives a little more off the corner for larger sizes; here in proportion to the hip. */
        double byHip(double atSize12) {
            return atSize12 * girth() / 960;
        }
    }

    private static final List<String> RULES = List.of(
            "The Basic Trousers Block, in a textbook of English for clothing students,"
                    + " m.ibooks.qq.com/read/1032011545/17 (read as far as the back's side seam): front fork a twelfth"
                    + " of the hip + 1.5 cm and a sixteenth + 0.5 cm; front hip a quarter + 0.5 cm and back a quarter +"
                    + " 1.5 cm (here the same shares of the wanted ease); knee, hem, darts 2 cm wide; crotch curves 3"
                    + " and 4.25 cm off their corners (here in proportion to the hip); waist 1 cm longer than the body (here as"
                    + " wished, else 2.5 cm longer: 1 to 1 1/2 in, Threads 221, at second hand).",
            "Back darts 12 and 10 cm long, back leg 1 cm wider on each side, back inside leg hollowed by 1.25 cm: from"
                    + " memory.",
            "The back inseam is shorter than the front's and stretched (thesewcialists.com, read); 0.5 cm: from"
                    + " memory. The back fork is lowered until that is exact.",
            "Truing: the back's side waist is raised or lowered until both outseams are equal, the waists are drawn"
                    + " over the folded darts and set so that the sewn waist is exact, the back hip is measured on the"
                    + " real seat line; the text's crotch curves reach the fork level and its hem is straight, here both"
                    + " meet the slanted seams square, so that they run on over them; allowances; thigh level 5 cm below the fork: common practice.");
}
