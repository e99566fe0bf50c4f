package easewright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DraftTest {
    /** Bust and waist of ASTM D5585-11e1 misses 2, 8 (curvy), 12 (straight) and 18, docs/sources.md 2.2; hips ours. */
    private static final double[][] SIZES = {
        {838.2, 644.5, 908}, {920.75, 711.2, 978}, {984.25, 819.15, 1041}, {1117.6, 933.45, 1170}
    };

    static Stream<Draft> drafts() {
        List<Draft> drafts = new ArrayList<>(Samples.drafts());
        for (double[] size : SIZES) {
            Body body = body(size[0], size[1], size[2]);
            drafts.add(new SkirtDraft(body, 50, 25, 580));
            drafts.add(new BodiceDraft(body, 90, 40, 50));
            drafts.add(new TrouserDraft(body, 50, 10, 225));
            drafts.add(new KnitTopDraft(body, -30, 60, -10, 35));
        }
        return drafts.stream();
    }

    /** A body whose other measurements go with its girths. */
    private static Body body(double bust, double waist, double hip) {
        double by = bust / 940;
        List<BodyMeasure> m = new ArrayList<>();
        m.add(new BodyMeasure("Bust girth", "bust", bust, ""));
        m.add(new BodyMeasure("Waist girth", "waist", waist, ""));
        m.add(new BodyMeasure("Hip girth", "hip", hip, ""));
        m.add(new BodyMeasure("Upper-arm girth", "upper arm", 290 * by, ""));
        m.add(new BodyMeasure("Wrist girth", "wrist", 160 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Thigh girth", "thigh", hip * 0.6, ""));
        m.add(new BodyMeasure("Knee girth", "knee", hip * 0.38, ""));
        m.add(new BodyMeasure("Neck base girth", "", 380 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Shoulder length", "", 125 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Across back width", "", 352 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Across front width", "", 330 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Scye depth length", "", 208 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Back neck point to waist", "", 412, ""));
        m.add(new BodyMeasure("Bust point width", "", 190 * by, ""));
        m.add(new BodyMeasure("Side neck point to bust point", "", 275 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Side waist to hip", "", 205, ""));
        m.add(new BodyMeasure("Outer arm length", "", 590, ""));
        m.add(new BodyMeasure("Straight body rise", "", 280 * Math.sqrt(by), ""));
        m.add(new BodyMeasure("Outside leg length", "", 1045, ""));
        return new Body("Someone", m);
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void girthsAreBodyPlusEase(Draft draft) {
        Pattern pattern = draft.draft().pattern();
        assertThat(pattern.wishes()).isNotEmpty();
        pattern.wishes()
                .forEach((level, ease) -> assertThat(Sewn.girth(pattern, level))
                        .as(level)
                        .isCloseTo(draft.body().girth(level).orElseThrow() + ease.mm(), within(0.005)));
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void matesWalkTrue(Draft draft) {
        Pattern pattern = draft.draft().pattern();
        assertThat(pattern.mates()).isNotEmpty();
        for (Mate mate : pattern.mates()) {
            assertThat(Sewn.drift(pattern, mate)).as(mate.name()).isCloseTo(0, within(0.002));
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void outlinesAndCuttingLinesAreSimple(Draft draft) {
        for (Piece piece : draft.draft().pattern().pieces()) {
            assertThat(Sewn.simple(piece.outline())).as(piece.id()).isTrue();
            Rider parallel = piece.riders().get(0);
            Outline other = new Outline(parallel.segments());
            assertThat(parallel.kind()).isEqualTo(Rider.Kind.PARALLEL);
            assertThat(Sewn.simple(other)).as(parallel.id()).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void cuttingLineKeepsItsDistance(Draft draft) {
        for (Piece piece : draft.draft().pattern().pieces()) {
            Outline other = new Outline(piece.riders().get(0).segments());
            for (Edge edge : piece.edges()) {
                Curve run = edge.on(piece.outline());
                double allowance = edge.allowance().orElseThrow();
                // A cutting line runs on past the corners of the stitching line: there only the middle is compared.
                double[] shares = piece.drawn() == LineKind.CUTTING ? new double[] {0.5} : new double[] {0.2, 0.5, 0.8};
                for (double share : shares) {
                    Point p = run.pointAtLength(run.length() * share);
                    boolean dartCap = piece.darts().stream()
                            .anyMatch(d -> p.distance(d.mouth1()) + p.distance(d.mouth2()) < 2.5 * d.intake());
                    if (!dartCap) {
                        assertThat(other.nearest(p).distance())
                                .as(piece.id() + " " + edge.name())
                                .isCloseTo(allowance, within(0.02));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void dartLegsAreEqual(Draft draft) {
        // docs/sources.md 4.5: dart legs must be equal.
        for (Piece piece : draft.draft().pattern().pieces()) {
            for (Dart dart : piece.darts()) {
                assertThat(dart.mouth1().distance(dart.point()))
                        .isCloseTo(dart.mouth2().distance(dart.point()), within(0.001));
                assertThat(dart.intake()).as(piece.id() + " " + dart.name()).isBetween(3.0, 120.0);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void edgesMeetAFoldSquarely(Draft draft) {
        // docs/sources.md 4.5: a centre cut on the fold must start square to the fold, or a peak or dip appears.
        for (Piece piece : draft.draft().pattern().pieces()) {
            for (Edge fold : piece.edges()) {
                if (fold.role() == EdgeRole.FOLD) {
                    List<Segment> segments = piece.outline().segments();
                    for (int i = 0; i < segments.size(); i++) {
                        if (segments.get(i).end().equals(fold.from())) {
                            assertThat(segments.get(i).tangent(1).y()).isCloseTo(0, within(1e-4));
                        }
                        if (segments.get(i).start().equals(fold.to())) {
                            assertThat(segments.get(i).tangent(0).y()).isCloseTo(0, within(1e-4));
                        }
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void marksLieOnTheOutline(Draft draft) {
        for (Piece piece : draft.draft().pattern().pieces()) {
            assertThat(piece.grain()).isPresent();
            for (Edge edge : piece.edges()) {
                assertThat(piece.outline().nearest(edge.from()).distance()).isLessThan(1e-9);
            }
            for (Notch notch : piece.notches()) {
                assertThat(piece.outline().nearest(notch.at()).distance())
                        .as(notch.name())
                        .isLessThan(1e-3);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void piecesDoNotOverlapOnTheSheet(Draft draft) {
        List<PieceDraft.Face> faces = draft.draft().faces();
        for (int i = 0; i < faces.size(); i++) {
            for (int j = i + 1; j < faces.size(); j++) {
                var a = faces.get(i).piece().outline().box();
                var b = faces.get(j).piece().outline().box();
                boolean apart =
                        a.maxX() < b.minX() || b.maxX() < a.minX() || a.maxY() < b.minY() || b.maxY() < a.minY();
                assertThat(apart).isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void joinedLinesRunOnSmoothly(Draft draft) {
        // docs/sources.md 4.5: what must be smooth is the joined line; the two corners together make 180 degrees.
        Pattern pattern = draft.draft().pattern();
        for (Mate mate : pattern.mates()) {
            if (mate.name().equals("shoulder")) {
                double neck = 0;
                double armhole = 0;
                for (var ref : List.of(mate.first().get(0), mate.second().get(0))) {
                    Piece piece = pattern.piece(ref.piece()).orElseThrow();
                    Edge shoulder = pattern.edge(ref).orElseThrow();
                    Edge neckline = piece.edge("neck").orElseThrow();
                    boolean startsAtNeck = shoulder.from().equals(neckline.to());
                    neck += corner(piece, startsAtNeck ? shoulder.from() : shoulder.to());
                    armhole += corner(piece, startsAtNeck ? shoulder.to() : shoulder.from());
                }
                assertThat(neck).isCloseTo(180, within(0.5));
                assertThat(armhole).isCloseTo(180, within(0.5));
            }
        }
    }

    /** The angle of cloth at a corner of the outline, degrees. */
    private static double corner(Piece piece, Point at) {
        List<Segment> segments = piece.outline().segments();
        for (int i = 0; i < segments.size(); i++) {
            Segment next = segments.get((i + 1) % segments.size());
            if (next.start().equals(at)) {
                Point back = segments.get(i).tangent(1).times(-1);
                return Math.toDegrees(Math.acos(back.dot(next.tangent(0))));
            }
        }
        throw new AssertionError("No corner there");
    }

    @Test
    void aMissingMeasurementIsNamed() {
        Body noHip = new Body("Someone", List.of(new BodyMeasure("Waist girth", "waist", 740, "")));
        assertThatThrownBy(() -> new SkirtDraft(noHip, 50, 25, 600).draft())
                .isInstanceOf(DraftRefused.class)
                .hasMessageContaining("Hip girth");
    }

    @Test
    void measurementsThatCannotBeDrawnAreRefused() {
        assertThatThrownBy(() -> new SkirtDraft(body(940, 1190, 1000), 50, 25, 600).draft())
                .isInstanceOfSatisfying(
                        DraftRefused.class,
                        e -> assertThat(Words.english(LengthUnit.CM).problem(e.code(), e.values()))
                                .startsWith(
                                        "With these measurements no dart of the width that is needed can be drawn."));
        for (DraftLine line : DraftLine.values()) {
            DraftRefused refused = DraftRefused.line(line);
            assertThat(Words.english(LengthUnit.CM).problem(refused.code(), refused.values()))
                    .as(line.name())
                    .doesNotContain("{");
            assertThat(Words.english(LengthUnit.CM).name("draft-line", line)).doesNotContain("draft-line");
        }
    }
}
