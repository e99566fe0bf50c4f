package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Any way of changing, on one side of the garment only. */
class OneSideTest {
    private static final Map<String, SvgFile> FILES = new LinkedHashMap<>();

    private static final LengthReader<RuntimeException> MM = Double::parseDouble;

    @BeforeAll
    static void draft() throws Exception {
        for (String name : List.of("skirt", "bodice", "trousers", "knit-top", "skirt-sizes")) {
            byte[] svg = Samples.files().get(name + ".svg").getBytes(StandardCharsets.UTF_8);
            FILES.put(name, SvgFile.read(svg, name));
        }
    }

    static Pattern sample(String name) {
        return FILES.get(name).pattern();
    }

    static Alteration on(Side side, Alteration change) {
        return Within.of(new Scope(Optional.empty(), side), change);
    }

    /** One side of a girth: of a limb that limb's own, else what lies on that side of the body. */
    static double side(Pattern pattern, String level, Side side) {
        List<Girth> girths = Measures.of(pattern).girths().stream()
                .filter(g -> g.level().name().equals(level) && g.side().belongsTo(side))
                .toList();
        assertThat(girths).hasSize(1);
        Girth girth = girths.get(0);
        return girth.level().limb() ? girth.finished() : girth.on(side);
    }

    /** A change, the garment and level at which it is seen, with the amount left open. */
    record Case(String garment, String level, String method, Map<String, List<String>> texts) {
        Alteration by(double amount) throws Refusal {
            Way way = Ways.of(method).orElseThrow();
            Map<String, List<String>> all = new LinkedHashMap<>(texts);
            all.put(way.amount(), List.of(String.valueOf(amount)));
            return way.from(SettingText.read(way, all, sample(garment), MM));
        }
    }

    static Case at(String garment, String level, String method, String... keysAndValues) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        if (Ways.of(method).orElseThrow().setting("level").isPresent()) {
            texts.put("level", List.of(level));
        }
        for (int i = 0; i < keysAndValues.length; i += 2) {
            texts.merge(keysAndValues[i], List.of(keysAndValues[i + 1]), (a, b) -> {
                List<String> both = new ArrayList<>(a);
                both.addAll(b);
                return both;
            });
        }
        return new Case(garment, level, method, texts);
    }

    static final List<Case> CASES = List.of(
            at("skirt", "hip", "seam", "carry-to-hem", "yes"),
            at("trousers", "hip", "seam"),
            at("trousers", "thigh", "seam"),
            at("bodice", "bust", "slash", "slash", "front/waist@30% > front/shoulder@90%"),
            at(
                    "knit-top",
                    "bust",
                    "slash",
                    "open",
                    "parallel",
                    "slash",
                    "front/hem@50% > front/shoulder@50%",
                    "accept-protected",
                    "yes"),
            at("skirt", "waist", "dart"),
            at("bodice", "upper arm", "sleeve"));

    /** Exact on the one side, nothing on the other, and the same the other way round. */
    @Test
    void everyWayIsExactOnOneSideAndLeavesTheOther() throws Exception {
        Random random = new Random(11);
        double worst = 0;
        double worstMirror = 0;
        int made = 0;
        for (Case each : CASES) {
            Pattern before = sample(each.garment());
            for (int i = 0; i < 2; i++) {
                double amount = (random.nextDouble() * 20 + 2) * (i % 2 == 0 ? 1 : -1);
                Map<Side, Altered> done = new LinkedHashMap<>();
                for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                    Altered altered = on(side, each.by(amount)).apply(before);
                    Pattern after = altered.pattern();
                    done.put(side, altered);
                    made++;
                    worst = Math.max(
                            worst,
                            Math.abs(side(after, each.level(), side) - side(before, each.level(), side) - amount));
                    assertThat(side(after, each.level(), side.other()))
                            .as("%s %s", each, side)
                            .isCloseTo(side(before, each.level(), side.other()), within(1e-9));
                    assertThat(altered.moved())
                            .allMatch(m -> after.piece(m.pieceId())
                                    .map(Piece::side)
                                    .filter(side::equals)
                                    .isPresent());
                    assertOtherSideUntouched(before, after, side);
                }
                worstMirror = Math.max(worstMirror, mirrored(done));
            }
        }
        assertThat(made).isEqualTo(4 * CASES.size());
        assertThat(worst).isLessThan(0.01);
        assertThat(worstMirror).isLessThan(1e-6);
    }

    /** A drawn piece of the other side is the very line it was; so is whatever belongs to both. */
    private static void assertOtherSideUntouched(Pattern before, Pattern after, Side side) {
        for (Piece was : before.pieces()) {
            Piece is = after.piece(was.id()).orElseThrow();
            if (is.side() != side) {
                assertThat(is.outline()).isSameAs(was.outline());
            }
        }
    }

    /** By how much the perimeters and areas of what was made on the left and on the right differ. */
    private static double mirrored(Map<Side, Altered> done) {
        double worst = 0;
        for (Piece left : done.get(Side.LEFT).pattern().pieces()) {
            if (left.side() == Side.LEFT) {
                Piece right = done.get(Side.RIGHT).pattern().pieces().stream()
                        .filter(p -> p.side() == Side.RIGHT && p.plainName().equals(left.plainName()))
                        .findFirst()
                        .orElseThrow();
                double one = left.outline().segments().stream()
                        .mapToDouble(s -> s.length())
                        .sum();
                double other = right.outline().segments().stream()
                        .mapToDouble(s -> s.length())
                        .sum();
                worst = Math.max(worst, Math.abs(one - other));
                worst = Math.max(
                        worst,
                        Math.abs(Math.abs(left.outline().signedArea())
                                        - Math.abs(right.outline().signedArea()))
                                / 1000);
            }
        }
        return worst;
    }

    @Test
    void lengthsAndEdgesChangeOnOneSideToo() throws Exception {
        Pattern trousers = sample("trousers");
        Pattern longer = on(
                        Side.RIGHT,
                        at("trousers", "knee", "lengthen", "below", "60").by(15))
                .apply(trousers)
                .pattern();
        assertThat(longer.pieces()).filteredOn(p -> p.side() == Side.RIGHT).isNotEmpty();
        for (Piece piece : longer.pieces()) {
            if (piece.side() == Side.RIGHT) {
                Piece twin = longer.pieces().stream()
                        .filter(p -> p.side() == Side.LEFT && p.plainName().equals(piece.plainName()))
                        .findFirst()
                        .orElseThrow();
                assertThat(piece.outline().box().height() - twin.outline().box().height())
                        .isCloseTo(15, within(1e-6));
            }
        }
        Pattern bodice = sample("bodice");
        Pattern armhole = on(
                        Side.LEFT,
                        at("bodice", "bust", "edge-length", "edge", "front/armhole", "how", "at-ends")
                                .by(8))
                .apply(bodice)
                .pattern();
        double left = edge(armhole, Side.LEFT);
        assertThat(left - edge(armhole, Side.RIGHT)).isCloseTo(8, within(0.01));
    }

    private static double edge(Pattern pattern, Side side) {
        Piece front = pattern.pieces().stream()
                .filter(p -> p.side() == side && p.plainName().equals("Front"))
                .findFirst()
                .orElseThrow();
        return Measures.of(front, List.of()).edge("armhole").orElseThrow().mm();
    }

    /** Worked example W3 on one side: 1 in more at the hip over its two seam edges is 1/2 in on each. */
    @Test
    void anInchOnOneHip() throws Exception {
        Pattern before = sample("skirt");
        Pattern after = on(Side.LEFT, SeamChange.at("hip", 25.4).carriedToHem())
                .apply(before)
                .pattern();
        assertThat(side(after, "hip", Side.LEFT) - side(before, "hip", Side.LEFT))
                .isCloseTo(25.4, within(1e-6));
        assertThat(side(after, "waist", Side.LEFT)).isCloseTo(side(before, "waist", Side.LEFT), within(1e-9));
        double front = Measures.of(after)
                .piece("skirt-front-left")
                .orElseThrow()
                .level("hip")
                .orElseThrow()
                .net();
        double was = Measures.of(before)
                .piece("skirt-front")
                .orElseThrow()
                .level("hip")
                .orElseThrow()
                .net();
        assertThat(front - was).isCloseTo(12.7, within(1e-6));
        assertThat(Measures.of(after).mates())
                .extracting(m -> m.mate().name())
                .containsExactly("side seam left", "side seam right", "waistband", "Front fold");
        assertThat(Measures.of(after).mates()).allMatch(m -> Math.abs(m.drift()) < 0.1);
    }

    @Test
    void theNewPiecesAreDrawnAndEverythingElseStaysByteForByte() throws Exception {
        for (Case each : CASES) {
            SvgFile file = FILES.get(each.garment());
            Pattern after = on(Side.LEFT, each.by(6)).apply(file.pattern()).pattern();
            byte[] written = file.write(after);
            SvgFile again = SvgFile.read(written, "again.svg");
            assertThat(again.findings()).isEmpty();
            assertThat(again.pattern().pieces()).hasSameSizeAs(after.pieces());
            assertThat(side(again.pattern(), each.level(), Side.LEFT))
                    .isCloseTo(side(after, each.level(), Side.LEFT), within(1e-4));
            assertThat(again.write(again.pattern())).isEqualTo(written);
            List<String> lines = List.of(new String(written, StandardCharsets.UTF_8).split("\n"));
            for (String line : new String(file.bytes(), StandardCharsets.UTF_8).split("\n")) {
                boolean ofRight = after.pieces().stream()
                        .anyMatch(p -> p.side() != Side.LEFT && line.contains("<path id=\"" + p.id() + "\""));
                if (ofRight) {
                    assertThat(lines).contains(line);
                }
            }
        }
    }
}
