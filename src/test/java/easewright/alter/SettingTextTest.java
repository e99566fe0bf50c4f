package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingTextTest {
    private static final LengthReader<NumberFormatException> MM =
            text -> Double.parseDouble(text.replace("mm", "").strip());

    private static final Piece FRONT = Cloths.curvedSkirt("p1").toBuilder()
            .name("Front")
            .notches(List.of(new Notch("Hip notch", new Point(240, 200))))
            .build();
    private static final Pattern SKIRT =
            Cloths.pattern(List.of(Cloths.WAIST, Cloths.HIP), FRONT, Cloths.curvedSkirt("back"));

    private static Point place(String text) throws Refusal {
        return PlaceText.read(SKIRT, text, MM);
    }

    @Test
    void placesByName() throws Refusal {
        assertThat(place("front/side/start")).isEqualTo(new Point(190, -6));
        assertThat(place(" Front / SIDE / end ")).isEqualTo(new Point(240, 600));
        assertThat(place("front/hip notch")).isEqualTo(new Point(240, 200));
        assertThat(place("back/side@hip").distance(new Point(240, 200))).isLessThan(1e-9);
        assertThat(place("12.5,-3")).isEqualTo(new Point(12.5, -3));
    }

    @Test
    void placesAlongAnEdge() throws Refusal {
        assertThat(place("p1/fold@100mm").distance(new Point(0, 504))).isLessThan(1e-9);
        assertThat(place("p1/fold@25%").distance(new Point(0, 455))).isLessThan(1e-9);
        double side = FRONT.edge("side").orElseThrow().on(FRONT.outline()).length();
        assertThat(place("front/side@" + (side - 50) + "mm").distance(new Point(240, 550)))
                .isLessThan(1e-9);
        assertThat(place("front/side@100%")).isEqualTo(new Point(240, 600));
    }

    @Test
    void placesAreWrittenAsTheyAreRead() throws Refusal {
        for (String text : List.of("Front/side/start", "Front/Hip notch", "Front/fold@100mm", "1000,-20.5")) {
            String written = PlaceText.write(SKIRT, place(text));
            assertThat(place(written).distance(place(text))).as(written).isLessThan(0.1);
        }
        assertThat(PlaceText.write(SKIRT, new Point(240, 200))).isEqualTo("Front/Hip notch");
        assertThat(PlaceText.write(SKIRT, new Point(0, 503.97))).isEqualTo("Front/fold@100mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sleeve/side/start|piece-not-known",
                "front/sides/start|edge-not-known",
                "front/side|notch-not-known",
                "front/fold@900mm|place-off-edge",
                "front/fold@-1%|place-off-edge",
                "front/fold@x%|place-form",
                "front/hem@hip|edge-not-at-level",
                "1,2,3|place-form",
                "front|place-form"
            })
    void whatIsNoPlaceIsRefused(String text, String code) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> place(text));
        assertThat(refusal.code()).isEqualTo(code);
    }

    @Test
    void settingsMakeTheChange() throws Refusal {
        Map<String, List<String>> texts = Map.of(
                "level", List.of("Hip"),
                "amount", List.of("+24 mm"),
                "edge", List.of("front/side=60%", "back/side = 2/5"),
                "taper", List.of("Straight"),
                "carry-to-hem", List.of("yes"),
                "keep", List.of("waist; hip NOTCH"),
                "fixed", List.of("front/side/start"));
        Alteration made = Ways.from(SettingText.read(SeamChange.WAY, texts, SKIRT, MM));
        assertThat(made)
                .isEqualTo(SeamChange.at("hip", 24)
                        .withShares(new Share(EdgeRef.of("p1", "side"), 60), new Share(EdgeRef.of("back", "side"), 0.4))
                        .withTaper(Taper.STRAIGHT)
                        .carriedToHem()
                        .keeping("waist", "Hip notch")
                        .fixedAt(new Point(190, -6)));
    }

    @Test
    void whatIsLeftOutIsAsUsual() throws Refusal {
        Map<String, List<String>> few = Map.of("level", List.of("hip"), "amount", List.of("-3"));
        assertThat(Ways.from(SettingText.read(SeamChange.WAY, few, SKIRT, MM))).isEqualTo(SeamChange.at("hip", -3));
        assertThat(Ways.from(SettingText.read(Lengthen.WAY, few, SKIRT, MM))).isEqualTo(Lengthen.below("hip", 0, -3));
        Map<String, List<String>> no = new HashMap<>(few);
        List.of("carry-to-hem", "even", "one-side").forEach(flag -> no.put(flag, List.of("No")));
        assertThat(Ways.from(SettingText.read(SeamChange.WAY, no, SKIRT, MM))).isEqualTo(SeamChange.at("hip", -3));
    }

    @ParameterizedTest
    @CsvSource({
        "colour, red, setting-unknown",
        "level, '', setting-needed",
        "level, knee, level-not-known",
        "taper, wavy, setting-choice",
        "one-side, perhaps, setting-flag",
        "edge, side, edge-form",
        "edge, front/side=0, share-not-a-number",
        "edge, front/side=a, share-not-a-number",
        "keep, moon, keep-not-known"
    })
    void whatIsNotUnderstoodIsRefused(String key, String text, String code) {
        Map<String, List<String>> texts = new HashMap<>(Map.of("level", List.of("hip"), "amount", List.of("1")));
        texts.put(key, List.of(text));
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> SettingText.read(SeamChange.WAY, texts, SKIRT, MM));
        assertThat(refusal.code()).isEqualTo(code);
        Map<String, List<String>> twice = Map.of("level", List.of("hip", "waist"), "amount", List.of("1"));
        assertThat(catchThrowableOfType(Refusal.class, () -> SettingText.read(SeamChange.WAY, twice, SKIRT, MM))
                        .code())
                .isEqualTo("setting-once");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "front/hem@40%|slash-form",
                "front/hem@40% > front/waist@40% > front/side@hip > front/fold@40%|slash-form",
                "front/hem@40% > front/waist@40% = 0|share-not-a-number",
                "front/hem@40% > front/waist@40% = 1/0|share-not-a-number",
                "front/hem@40% > front/collar@40%|edge-not-known"
            })
    void slashesThatAreNotUnderstood(String text, String code) {
        assertThat(refused(SpreadSlashes.WAY, "slash", text).code()).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({"dart, dart-form", "/dart, dart-form", "front/pleat, dart-not-known", "sleeve/dart, piece-not-known"})
    void dartsThatAreNotUnderstood(String text, String code) {
        assertThat(refused(DartIntake.WAY, "dart", text).code()).isEqualTo(code);
    }

    private static Refusal refused(Way way, String key, String text) {
        Map<String, List<String>> texts = new HashMap<>(Map.of("level", List.of("hip"), "amount", List.of("1")));
        texts.put(key, List.of(text));
        return catchThrowableOfType(Refusal.class, () -> SettingText.read(way, texts, SKIRT, MM));
    }

    /** Whoever is told that a name is unknown is told which are known. */
    @Test
    void namesThatAreKnownAreListed() throws Refusal {
        assertThat(refused(Lengthen.WAY, "level", "knee").values()).containsEntry("known", List.of("waist", "hip"));
        assertThat(refused(Lengthen.WAY, "piece", "sleeve").values()).containsEntry("known", List.of("Front", "back"));
        assertThat(refused(SeamChange.WAY, "edge", "front/collar").values())
                .containsEntry("known", List.of("waist", "side", "hem", "fold"));
        assertThat(refused(DartIntake.WAY, "dart", "front/pleat").values()).containsEntry("known", List.of("dart"));
        assertThat(refused(SeamChange.WAY, "keep", "moon").values())
                .containsEntry("known", List.of("waist", "hip", "Hip notch", "side", "hem", "fold"));
        assertThat(refused(SeamChange.WAY, "taper", "wavy").values())
                .containsEntry("known", List.of("straight", "smooth"));
        Pattern bare = Cloths.pattern(List.of(), FRONT);
        Map<String, List<String>> texts = Map.of("level", List.of("hip"), "amount", List.of("1"));
        Refusal none = catchThrowableOfType(Refusal.class, () -> SettingText.read(Lengthen.WAY, texts, bare, MM));
        assertThat(none.code()).isEqualTo("no-level-marked");
        assertThat(none.values()).containsEntry("level", "hip");
    }

    /** The very name goes before one that differs in its capitals; a name without its size will do where it is one piece's. */
    @Test
    void theVeryNameGoesFirst() throws Refusal {
        Level upper = Level.of("HIP", LevelKind.OTHER);
        Pattern both = Cloths.pattern(List.of(upper, Cloths.HIP), FRONT);
        assertThat(KnownNames.level(both, "hip")).isEqualTo(Cloths.HIP);
        assertThat(KnownNames.level(both, "HIP")).isEqualTo(upper);
        assertThat(KnownNames.level(both, "Hip")).isEqualTo(upper);
        Piece sized = FRONT.toBuilder().name("Front 12").size(Optional.of("12")).build();
        Pattern one = Cloths.pattern(List.of(Cloths.HIP), sized, Cloths.curvedSkirt("back"));
        assertThat(KnownNames.piece(one, "front")).isEqualTo(sized);
        Piece other = Cloths.curvedSkirt("p2").toBuilder()
                .name("Front 14")
                .size(Optional.of("14"))
                .build();
        Pattern two = Cloths.pattern(List.of(Cloths.HIP), sized, other);
        assertThat(catchThrowableOfType(Refusal.class, () -> KnownNames.piece(two, "front"))
                        .code())
                .isEqualTo("piece-not-known");
    }

    @Test
    void cornersAreWrittenByTheEdgeThatStartsOrEndsThere() throws Refusal {
        assertThat(PlaceText.write(SKIRT, new Point(190, -6))).isEqualTo("Front/waist/end");
        Pattern sideOnly = Cloths.pattern(
                List.of(), FRONT.withEdges(List.of(FRONT.edge("side").orElseThrow())));
        assertThat(PlaceText.write(sideOnly, new Point(190, -6))).isEqualTo("Front/side/start");
        assertThat(PlaceText.write(sideOnly, new Point(50, 300))).isEqualTo("50,300");
        assertThat(PlaceText.write(sideOnly, new Point(0.04, -0.04))).isEqualTo("0,0");
    }

    /** A slash written by places only belongs to the piece on whose outline they lie. */
    @Test
    void aSlashByPlacesFindsItsPiece() throws Refusal {
        Piece apart = Cloths.curvedSkirt("apart");
        Affine aside = Affine.translation(500, 0);
        Pattern two = Cloths.pattern(
                List.of(Cloths.HIP),
                FRONT,
                apart.withOutline(apart.outline().transformed(aside)).withEdges(List.of()));
        Map<String, List<String>> texts = Map.of(
                "level", List.of("hip"),
                "amount", List.of("1"),
                "slash", List.of("620,603 > 560,7; 120,603 > 60,7=25%"));
        SpreadSlashes change = (SpreadSlashes) Ways.from(SettingText.read(SpreadSlashes.WAY, texts, two, MM));
        assertThat(change.slashes())
                .containsExactly(
                        Slash.of("apart", new Point(620, 603), new Point(560, 7)),
                        Slash.of("p1", new Point(120, 603), new Point(60, 7)).withWeight(25));
    }

    @Test
    void anotherAmountIsTheSameChangeOtherwise() throws Refusal {
        SeamChange change = SeamChange.at("hip", 24).carriedToHem();
        assertThat(Ways.from(SeamChange.WAY.withAmount(change.note(), -7.5))).isEqualTo(change.withAmount(-7.5));
        assertThat(SeamChange.WAY.amountOf(change.note()).orElseThrow()).isCloseTo(24, within(0.0));
    }
}
