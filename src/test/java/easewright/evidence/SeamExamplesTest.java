package easewright.evidence;

import static easewright.alter.Cloths.HIP;
import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.curvedSkirt;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.polygon;
import static easewright.alter.Cloths.skirtHalf;

import easewright.alter.Cloths;
import easewright.alter.SeamChange;
import easewright.alter.Taper;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/** The seam method, by the worked examples and the rules of the handbooks. */
class SeamExamplesTest extends Topic {
    private static final Level BETWEEN = Level.of("between", LevelKind.OTHER);
    private static final Level LOW = Level.of("low", LevelKind.OTHER);
    private static final Level BUST = Level.of("bust", LevelKind.BUST);

    private final List<Check> checks = new ArrayList<>();

    @Override
    String title() {
        return "Changes at seams";
    }

    @Override
    String words() {
        return "A skirt of straight seams, 8 in from waist to hip and 14 in from there to the hem, made 2 in wider at"
                + " the hip; the same with slanted seams; and the shares that the handbooks prescribe.";
    }

    @Override
    List<Check> checks() throws Exception {
        checks.clear();
        straight();
        slanted();
        square();
        steep();
        shares();
        thereAndBack();
        return List.copyOf(checks);
    }

    private static Source worked(String example) {
        return Source.calculated("worked example " + example + ", docs/sources.md 4.6");
    }

    private void add(String subject, Source source, String unit, double expected, double got, double allowed) {
        checks.add(Check.number(subject, source, unit, expected, got, allowed));
    }

    private static double side(Piece piece) {
        return Measures.of(piece, List.of()).edge("side").orElseThrow().mm() / INCH;
    }

    private void straight() throws Exception {
        Pattern before =
                pattern(List.of(WAIST, HIP, BETWEEN, LOW), Cloths.straightSkirt("front"), Cloths.straightSkirt("back"));
        SeamChange change = SeamChange.at("hip", 2 * INCH).carriedToHem();
        Pattern even = change.withTaper(Taper.STRAIGHT).apply(before).pattern();
        Source w3 = worked("W3");
        add("hip girth, 39 in made 2 in wider", w3, "in", 41, girth(even, "hip") / INCH, 1e-6);
        add("waist girth, to stay", w3, "in", 39, girth(even, "waist") / INCH, 1e-9);
        add("girth half way, straight taper", w3, "in", 40, girth(even, "between") / INCH, 1e-6);
        add("girth at the hem", w3, "in", 41, girth(even, "low") / INCH, 1e-6);
        Piece front = even.piece("front").orElseThrow();
        add("side seam from waist to hip, straight taper", w3, "in", 8.015610, side(front) - 14, 5e-7);
        double gained =
                (front.outline().signedArea() - before.pieces().get(0).outline().signedArea()) / INCH / INCH;
        add("cloth added to one edge, 2 + 7", w3, "in²", 9, gained, 1e-6);
        Pattern smooth = change.apply(before).pattern();
        add(
                "side seam gains by a smooth taper",
                w3,
                "in",
                0.018719,
                side(smooth.pieces().get(0)) - 22,
                5e-7);
    }

    private void slanted() throws Exception {
        Piece front = skirtHalf("front", 8, 9.5, 8, 22);
        Piece back = skirtHalf("back", 8, 8.75, 8, 22);
        Pattern after = SeamChange.at("hip", 2 * INCH)
                .withTaper(Taper.STRAIGHT)
                .carriedToHem()
                .apply(pattern(List.of(HIP), front, back))
                .pattern();
        double frontMore = side(after.pieces().get(0)) - side(front);
        double backMore = side(after.pieces().get(1)) - side(back);
        Source w4 = worked("W4");
        add("front seam, slant 1 1/2 in 8, gains", w4, "in", 0.106801, frontMore, 5e-7);
        add("back seam, slant 3/4 in 8, gains", w4, "in", 0.061988, backMore, 5e-7);
        add("they drift apart by", w4, "mm", 1.138, (frontMore - backMore) * INCH, 5e-4);
    }

    /** An allowance of half an inch, square to a seam that slants, takes more than half an inch off the level. */
    private void square() {
        Piece slanted = skirtHalf("front", 8, 9.5, 8, 22).toBuilder()
                .drawn(LineKind.CUTTING, 0.5 * INCH)
                .levels(List.of(LevelMark.through("between", in(1, 4))))
                .build();
        double width = Measures.width(slanted, BETWEEN).orElseThrow().net() / INCH;
        add(
                "half an inch square to the slanted seam, along the level",
                worked("W4"),
                "in",
                0.508713,
                8.75 - width,
                5e-7);
    }

    private void steep() throws Exception {
        Source w14 = worked("W14");
        add("bust line 1 in below the armhole, 3/8 in out: swing", w14, "°", 20.56, swing(1), 5e-3);
        add("bust line 3 in below the armhole, 3/8 in out: swing", w14, "°", 7.13, swing(3), 5e-3);
    }

    private static double swing(double below) throws Exception {
        Piece front = Cloths.lowBust("front", below);
        Pattern before = pattern(List.of(BUST), front, Cloths.lowBust("back", below));
        return SeamChange.at("bust", 1.5 * INCH).apply(before).findings().stream()
                .map(Finding::values)
                .filter(v -> v.containsKey("slope.degrees"))
                .mapToDouble(v -> (Double) v.get("slope.degrees"))
                .findFirst()
                .orElseThrow();
    }

    /** How much each edge gets of a whole. */
    private void shares() throws Exception {
        Pattern skirt = pattern(List.of(WAIST, HIP), Cloths.straightSkirt("front"), Cloths.straightSkirt("back"));
        Source trousers = Source.secondHand("NMSU Guide C-227: a quarter at each side seam");
        for (double total : new double[] {1.5, -1}) {
            Pattern after = SeamChange.at("waist", total * INCH)
                    .keeping("hip")
                    .apply(skirt)
                    .pattern();
            double own =
                    Measures.width(after.pieces().get(0), WAIST).orElseThrow().net() / INCH - 9.75;
            add("waist " + total + " in: front's side seam takes", trousers, "in", total / 4, own, 1e-6);
        }
        Level thigh = Level.of("thigh", LevelKind.THIGH);
        Piece leg = polygon(
                        "front",
                        List.of(in(0, 0), in(12, 0), in(10.5, 30), in(1.5, 30)),
                        "fork OTHER, out SEAM, hem HEM, in SEAM")
                .withLevels(List.of(LevelMark.through("thigh", in(5, 6))))
                .toBuilder()
                .cut(2, false)
                .build();
        Pattern legs = pattern(List.of(thigh), leg, copy("back", leg));
        Pattern wider = SeamChange.at("thigh", 2 * INCH).apply(legs).pattern();
        Source inseam = Source.secondHand("NMSU Guide C-227: a quarter to inseam and outer seam of front and back");
        for (int i = 0; i < 2; i++) {
            var was = Measures.width(legs.pieces().get(i), thigh)
                    .orElseThrow()
                    .spans()
                    .get(0);
            var is = Measures.width(wider.pieces().get(i), thigh)
                    .orElseThrow()
                    .spans()
                    .get(0);
            String piece = i == 0 ? "front" : "back";
            add(
                    piece + " of a leg made 2 in wider: outer seam",
                    inseam,
                    "in",
                    0.5,
                    Math.abs(is.to().x() - was.to().x()) / INCH,
                    1e-6);
            add(
                    piece + " of a leg made 2 in wider: inseam",
                    inseam,
                    "in",
                    0.5,
                    Math.abs(is.from().x() - was.from().x()) / INCH,
                    1e-6);
        }
        Pattern bodice = pattern(List.of(BUST), Cloths.lowBust("front", 3), Cloths.lowBust("back", 3));
        Pattern arm = SeamChange.at("bust", 2 * INCH).apply(bodice).pattern();
        add(
                "underarm seam of a bodice made 2 in wider for a cap 1 in longer",
                Source.secondHand("NMSU Guide C-228: half the difference to the underarm seams (W12)"),
                "in",
                0.5,
                Measures.width(arm.pieces().get(0), BUST).orElseThrow().net() / INCH
                        - Measures.width(bodice.pieces().get(0), BUST)
                                        .orElseThrow()
                                        .net()
                                / INCH,
                1e-6);
    }

    private static Piece copy(String id, Piece piece) {
        return Piece.bare(id, piece.outline()).toBuilder()
                .cut(piece.times(), piece.onFold())
                .edges(piece.edges())
                .levels(piece.levels())
                .build();
    }

    private void thereAndBack() throws Exception {
        Pattern before = pattern(List.of(WAIST, HIP), curvedSkirt("front"), curvedSkirt("back"));
        Outline was = before.pieces().get(0).outline();
        for (Taper taper : Taper.values()) {
            SeamChange plus = SeamChange.at("hip", 31).withTaper(taper);
            Pattern back =
                    plus.withAmount(-31).apply(plus.apply(before).pattern()).pattern();
            double most = 0;
            for (Segment s : back.pieces().get(0).outline().segments()) {
                for (double t = 0; t <= 1; t += 0.125) {
                    most = Math.max(most, was.nearest(s.at(t)).distance());
                }
            }
            String name = taper == Taper.SMOOTH ? "smooth" : "straight";
            add("31 mm wider and narrower again, " + name + " taper: left over", worked("W18"), "mm", 0, most, 1e-6);
        }
    }
}
