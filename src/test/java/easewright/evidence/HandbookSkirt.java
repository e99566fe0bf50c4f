package easewright.evidence;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;

/**
 * A skirt block drawn step by step as "Handout for drafting skirt block"
 * (wikieducator.org/Handout_for_drafting_skirt_block/Handout, read whole) has it. The numbers are the handout's points,
 * its centimetres are kept. Where it says "slight curve" the curve is ours; the rest is as it stands there.
 *
 * @param size  in the size table
 * @param waist waist girth, mm
 * @param hips  hip girth, mm
 */
record HandbookSkirt(String size, double waist, double hips) {
    static final double CM = 10;

    /** Waist to hip: 7–9 in (NMSU Guide C-227, second-hand); skirt length our own. */
    static final double WAIST_TO_HIP = 20.5 * CM;

    static final double LENGTH = 60 * CM;

    Pattern pattern() {
        return Pattern.bare(List.of(back(), front()), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(Level.of("waist", LevelKind.WAIST), Level.of("hip", LevelKind.HIP)))
                .withMates(List.of(new Mate(
                        "side", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0)));
    }

    /** 1–2: half the hips + 2.5 cm. */
    private double halfWidth() {
        return hips / 2 + 2.5 * CM;
    }

    /** 5–6: half of 1–2 + 0.75 cm. */
    private double toSide() {
        return halfWidth() / 2 + 0.75 * CM;
    }

    private Piece back() {
        // 1–7: a quarter of the waist + 2 cm for the dart + 1.2 cm of ease; 8 lies 1 cm above it.
        double seven = waist / 4 + 2 * CM + 1.2 * CM;
        // 1–9: half of 1–5 + 1 cm; the dart there is 12 cm long and 2 cm wide.
        double nine = WAIST_TO_HIP / 2 + CM;
        return piece("back", toSide(), seven, nine, 12 * CM).toBuilder()
                .cut(2, false)
                .build();
    }

    private Piece front() {
        // 2–10: a quarter of the waist + 2 cm for the dart; 11 lies 1 cm above it.
        double ten = waist / 4 + 2 * CM;
        // 2–12: half of 2–10 + 1 cm; the dart there is 10 cm long and 2 cm wide.
        double twelve = ten / 2 + CM;
        return piece("front", halfWidth() - toSide(), ten, twelve, 10 * CM).toBuilder()
                .cut(1, true)
                .build();
    }

    /** One half, its centre line at x = 0 and its side on the right. */
    private static Piece piece(String id, double hipWidth, double waistWidth, double dartAt, double dartLength) {
        Point centre = new Point(0, 0);
        Point corner = new Point(waistWidth, -CM);
        Point hip = new Point(hipWidth, WAIST_TO_HIP);
        Point hemSide = new Point(hipWidth, LENGTH);
        Point hemCentre = new Point(0, LENGTH);
        Cubic waist = new Cubic(centre, new Point(waistWidth * 0.4, 0), new Point(waistWidth * 0.7, -4), corner);
        Cubic side = new Cubic(
                corner, corner.plus(new Point((hipWidth - waistWidth) * 0.6, 60)), hip.minus(new Point(0, 70)), hip);
        Outline outline = new Outline(List.of(
                waist, side, new Line(hip, hemSide), new Line(hemSide, hemCentre), new Line(hemCentre, centre)));
        boolean fold = id.equals("front");
        return Piece.bare(id, outline).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, centre, corner),
                        Edge.of("side", EdgeRole.SEAM, corner, hemSide),
                        Edge.of("hem", EdgeRole.HEM, hemSide, hemCentre),
                        Edge.of("centre", fold ? EdgeRole.FOLD : EdgeRole.CENTRE, hemCentre, centre)))
                .levels(List.of(
                        LevelMark.along("waist", "waist"), LevelMark.through("hip", new Point(20, WAIST_TO_HIP))))
                .darts(List.of(new Dart(
                        "dart",
                        on(waist, dartAt - CM),
                        on(waist, dartAt + CM),
                        new Point(dartAt, dartLength),
                        Optional.empty(),
                        Optional.of("waist"))))
                .build();
    }

    private static Point on(Cubic waist, double x) {
        return waist.at(waist.crossings(new Point(x, 0), new Point(0, 1)).get(0));
    }
}
