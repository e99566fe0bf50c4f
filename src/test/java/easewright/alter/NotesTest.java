package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The records of changes as they are kept in a file: read back equal, and read with care where someone has been at them. */
class NotesTest {
    private static final EdgeRef SIDE = EdgeRef.of("front", "side");
    private static final Point HERE = new Point(1.25, -3e-8);
    private static final Point THERE = new Point(120, 603);

    /** One of each way, every setting other than it usually is. */
    static List<Alteration> changes() {
        return List.of(
                new SeamChange(
                        "hip",
                        24,
                        List.of(new Share(SIDE, 1.5), new Share(EdgeRef.of("back", "side"), 2)),
                        Taper.STRAIGHT,
                        true,
                        List.of("waist", "low notch"),
                        List.of(HERE, THERE),
                        true,
                        true,
                        true),
                new CentreChange("hip", -3, EdgeRef.of("front", "fold"), true, "neck", true),
                new HingedSlash("front", HERE, THERE, 12, new Point(5, 6), true),
                new ParallelSlash("front", HERE, THERE, -12, new Point(5, 6), true),
                new SpreadSlashes(
                        "hip",
                        18,
                        List.of(
                                Slash.of("front", HERE, THERE).withWeight(2).moving(new Point(7, 8)),
                                Slash.of("back", THERE, HERE)),
                        SpreadSlashes.Opening.PARALLEL,
                        true,
                        true),
                new DartIntake("waist", 9, List.of(new DartShare("front", "dart", 3)), true),
                new DartToSeam(
                        "waist",
                        9,
                        List.of(DartShare.of("front", "dart")),
                        List.of(new Share(SIDE, 1)),
                        Taper.STRAIGHT,
                        true),
                new SleeveWidth("upper arm", 14, List.of("sleeve", "other sleeve"), true, true),
                new EdgeLength(SIDE, 6.5, EdgeLength.Manner.AT_ENDS, true),
                new Lengthen("hip", -20, 35, List.of("front", "back"), true));
    }

    @ParameterizedTest
    @MethodSource("changes")
    void aRecordMakesTheSameChange(Alteration change) throws Refusal {
        assertThat(Ways.from(change.note())).isEqualTo(change);
        Alteration other = change.withAmount(-1.5);
        assertThat(Ways.from(other.note())).isEqualTo(other).isNotEqualTo(change);
        assertThat(other.withAmount(Ways.of(change.note().method())
                        .orElseThrow()
                        .amountOf(change.note())
                        .orElseThrow()))
                .isEqualTo(change);
        Alteration back = change.opposite().orElseThrow();
        assertThat(Ways.from(back.note())).isEqualTo(back);
        assertThat(back.opposite()).contains(change);
    }

    /** What a way cannot do without is asked for by name; the rest is then as it usually is. */
    @ParameterizedTest
    @MethodSource("changes")
    void whatIsMissingIsNamed(Alteration change) throws Refusal {
        ChangeNote note = change.note();
        Way way = Ways.of(note.method()).orElseThrow();
        for (Setting setting : way.settings()) {
            Map<String, String> less = new HashMap<>(note.settings());
            less.keySet().removeIf(key -> key.equals(setting.key()) || key.startsWith(setting.key() + "."));
            if (setting.required()) {
                Refusal why = refusal(new ChangeNote(note.method(), less));
                assertThat(why.code()).as(setting.key()).isEqualTo("note-setting-missing");
                assertThat(why.values()).containsEntry("setting", setting.key());
            } else if (setting.kind() != Setting.Kind.CHOICE && setting.kind() != Setting.Kind.SIGNED_LENGTH) {
                assertThat(Ways.from(new ChangeNote(note.method(), less)))
                        .as(setting.key())
                        .isNotEqualTo(change);
            }
        }
    }

    /** A number, a place, a share or a choice that cannot be read is named, with what stands there. */
    @ParameterizedTest
    @MethodSource("changes")
    void whatIsUnreadableIsNamed(Alteration change) {
        ChangeNote note = change.note();
        for (Map.Entry<String, String> entry : note.settings().entrySet()) {
            boolean measured = entry.getValue().matches("-?[0-9.]+( -?[0-9.]+)?");
            boolean chosen = entry.getValue().matches("straight|parallel|at-ends");
            if (measured || chosen) {
                for (String bad : List.of("NaN", "1 2 3", "")) {
                    Map<String, String> spoilt = new HashMap<>(note.settings());
                    spoilt.put(entry.getKey(), bad);
                    Refusal why = refusal(new ChangeNote(note.method(), spoilt));
                    assertThat(why.code()).as("%s=%s", entry.getKey(), bad).isEqualTo("note-setting-unreadable");
                    assertThat(why.values())
                            .containsEntry("setting", entry.getKey())
                            .containsEntry("text", bad);
                }
            }
        }
    }

    /** Each way is listed once, under the name in its records, with each of its settings under its key. */
    @Test
    void everyWayIsListed() {
        assertThat(Ways.all())
                .extracting(Way::method)
                .doesNotHaveDuplicates()
                .containsAll(changes().stream().map(c -> c.note().method()).toList());
        for (Way way : Ways.all()) {
            assertThat(Ways.of(way.method())).contains(way);
            way.settings().forEach(s -> assertThat(way.setting(s.key())).contains(s));
            assertThat(way.setting("colour")).isEmpty();
        }
    }

    /** A step of the course by another amount, switched off, and of a kind that this program does not know. */
    @Test
    void aStepKnowsItsAmount() {
        Step longer = new Step(Lengthen.below("hip", 50, 12).note(), true);
        assertThat(longer.amount()).hasValue(12);
        assertThat(longer.withAmount(-7).note())
                .isEqualTo(Lengthen.below("hip", 50, -7).note());
        assertThat(longer.withAmount(-7).on()).isTrue();
        assertThat(longer.switched(false)).isEqualTo(new Step(longer.note(), false));
        assertThat(longer.isLength()).isTrue();
        assertThat(new Step(SeamChange.at("hip", 12).note(), true).isLength()).isFalse();
        Step unknown = new Step(new ChangeNote("melt", Map.of("amount", "3")), true);
        assertThat(unknown.amount()).isEmpty();
        assertThat(unknown.withAmount(5)).isEqualTo(unknown);
        assertThat(unknown.isLength()).isFalse();
        assertThat(new Step(new ChangeNote("lengthen", Map.of("amount", "three")), true).amount())
                .isEmpty();
    }

    @Test
    void edgesAndDartsThatCannotBeReadAreNamed() {
        assertUnreadable(changes().get(0), "edge.1", "side");
        assertUnreadable(changes().get(1), "edge", "fold");
        assertUnreadable(changes().get(5), "dart.1", "dart");
        assertUnreadable(changes().get(5), "dart.1", "/dart");
        assertUnreadable(changes().get(8), "edge", "");
        for (int i : new int[] {0, 4, 5}) {
            ChangeNote note = changes().get(i).note();
            Map<String, String> none = new HashMap<>(note.settings());
            none.replaceAll((key, value) -> key.contains("weight.") || key.endsWith(".share") ? "0" : value);
            assertThat(refusal(new ChangeNote(note.method(), none)).code()).isEqualTo("note-setting-unreadable");
        }
    }

    private static void assertUnreadable(Alteration change, String key, String text) {
        Map<String, String> spoilt = new HashMap<>(change.note().settings());
        spoilt.put(key, text);
        Refusal why = refusal(new ChangeNote(change.note().method(), spoilt));
        assertThat(why.code()).isEqualTo("note-setting-unreadable");
        assertThat(why.values()).containsEntry("setting", key).containsEntry("text", text);
    }

    private static Refusal refusal(ChangeNote note) {
        return catchThrowableOfType(Refusal.class, () -> Ways.from(note));
    }
}
