package easewright.alter;

import static easewright.alter.Panels.DART;
import static easewright.alter.Panels.dart;
import static easewright.alter.Panels.kept;
import static easewright.alter.Panels.only;
import static easewright.alter.Panels.panel;
import static easewright.alter.Panels.sewn;
import static easewright.alter.Panels.slanted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a truing cannot find or may not do it refuses by name, and how it is written down. */
class TruingRefusedTest {
    private static final Pattern PATTERN = sewn(panel("front", 600), panel("back", 600));
    private static final EdgeRef WAIST = EdgeRef.of("front", "waist");

    private static void assertRefused(Trued truing, Pattern pattern, String code, String... keysAndValues) {
        Refusal refusal = Cloths.refusal(truing, pattern);
        assertThat(refusal).as(code).isNotNull();
        assertThat(refusal.code()).isEqualTo(code);
        for (int i = 0; i < keysAndValues.length; i += 2) {
            assertThat(refusal.values()).containsEntry(keysAndValues[i], keysAndValues[i + 1]);
        }
    }

    @Test
    void placesThatAreNotThere() {
        assertRefused(Trued.join("hem seam", true), PATTERN, "mate-unknown", "mate", "hem seam");
        Pattern lost = PATTERN.withPieces(PATTERN.pieces().subList(0, 1));
        assertRefused(Trued.join("seam", true), lost, "joint-unknown", "mate", "seam");
        assertRefused(Trued.square(EdgeRef.of("sleeve", "hem"), true), PATTERN, "piece-unknown", "piece", "sleeve");
        assertRefused(
                Trued.square(EdgeRef.of("front", "side"), true),
                PATTERN,
                "corner-unknown",
                "piece",
                "front",
                "edge",
                "side");
        assertRefused(Trued.square(WAIST, true), PATTERN, "corner-unknown", "edge", "waist");
        assertRefused(Trued.square(EdgeRef.of("front", "hem"), false), PATTERN, "corner-unknown", "edge", "hem");
        assertRefused(Trued.cap("sleeve", "d"), PATTERN, "piece-unknown", "piece", "sleeve");
        assertRefused(Trued.cap("front", "d"), PATTERN, "dart-unknown", "piece", "front", "dart", "d");
        assertRefused(
                Trued.blend(EdgeRef.of("sleeve", "side"), new Point(0, 0)),
                PATTERN,
                "piece-unknown",
                "piece",
                "sleeve");
        assertRefused(
                Trued.blend(EdgeRef.of("front", "top"), new Point(0, 0)),
                PATTERN,
                "edge-unknown",
                "piece",
                "front",
                "edge",
                "top");
        assertRefused(
                Trued.blend(WAIST, new Point(100, 0)), PATTERN, "corner-unknown", "piece", "front", "edge", "waist");
        assertRefused(Trued.notch("seam", "n", "back"), PATTERN, "notch-unpaired", "notch", "n", "mate", "seam");
        assertRefused(Trued.cut("sleeve"), PATTERN, "piece-unknown", "piece", "sleeve");
        assertRefused(Trued.cut("front"), PATTERN, "line-beside-missing", "piece", "front");
    }

    /** Only the notch, the seam and the piece that are named. */
    @Test
    void otherNotchesAreNotMeant() {
        Pattern apart =
                sewn(Panels.notched(panel("front", 600), "n", 200), Panels.notched(panel("back", 600), "n", 210));
        assertThat(Cloths.refusal(Trued.notch("seam", "n", "back"), apart)).isNull();
        assertRefused(Trued.notch("seam", "n", "front"), apart, "notch-unpaired");
        assertRefused(Trued.notch("seam", "m", "back"), apart, "notch-unpaired");
        assertRefused(Trued.notch("hem", "n", "back"), apart, "notch-unpaired");
    }

    @ParameterizedTest
    @EnumSource(Trued.Matter.class)
    void placesThatAreNotToldAndRecordsOfThem(Trued.Matter matter) throws Refusal {
        Trued nowhere = new Trued(matter, Map.of(), false, List.of(), false);
        assertRefused(nowhere, PATTERN, "note-setting-missing");
        ChangeNote note = nowhere.note();
        assertThat(Ways.from(note)).isEqualTo(nowhere);
        Trued leave = nowhere.acceptingProtected();
        assertThat(leave.acceptProtected()).isTrue();
        assertThat(Ways.from(leave.note())).isEqualTo(leave);
        Trued drawn = new Trued(matter, Map.of("mate", "a", "dart", "b"), true, List.of("cut 0 0 1 a b", "x"), true);
        assertThat(Ways.from(drawn.note())).isEqualTo(drawn);
        assertThat(drawn.acceptingProtected()).isEqualTo(drawn);
        assertThat(drawn.withAmount(5)).isSameAs(drawn);
        assertThat(nowhere.opposite()).as("nothing was drawn").isEmpty();
        assertThat(drawn.opposite()).as("cannot be read").isEmpty();
    }

    @Test
    void unreadablePlaces() {
        Trued square =
                new Trued(Trued.Matter.SQUARE_CORNER, Map.of("edge", "waist", "end", "end"), false, List.of(), false);
        assertRefused(square, PATTERN, "note-setting-unreadable", "setting", "edge", "text", "waist");
        Trued blend = new Trued(
                Trued.Matter.BLENDED_CORNER, Map.of("edge", "front/waist", "at", "1 far"), false, List.of(), false);
        assertRefused(blend, PATTERN, "note-setting-unreadable", "setting", "stroke", "text", "1 far");
    }

    @Test
    void protectedEdgesNeedLeave() throws Refusal {
        Pattern first = sewn(kept(slanted("front", 600, 87, 90), "waist"), panel("back", 600));
        Pattern second = sewn(panel("front", 600), kept(slanted("back", 600, 87, 90), "waist"));
        assertRefused(Trued.join("seam", false), first, "edge-protected", "piece", "front", "edge", "waist");
        assertRefused(Trued.join("seam", false), second, "edge-protected", "piece", "back", "edge", "waist");
        assertRefused(Trued.square(WAIST, false), first, "edge-protected", "piece", "front", "edge", "waist");
        for (Pattern pattern : List.of(first, second)) {
            Proposal proposal = only(pattern, "joined-line-bends");
            assertThat(TrueUp.one(pattern, proposal, false)
                            .refusal()
                            .orElseThrow()
                            .code())
                    .isEqualTo("truing-needs-leave");
            assertThat(TrueUp.one(pattern, proposal, false)
                            .refusal()
                            .orElseThrow()
                            .values())
                    .containsEntry("known", proposal.protectedEdges());
            assertThat(TrueUp.one(pattern, proposal, false).done()).isEmpty();
            TrueUp.Tried tried = TrueUp.one(pattern, proposal, true);
            assertThat(tried.refusal()).isEmpty();
            assertThat(tried.proposal()).isEqualTo(proposal);
            assertThat(tried.done().orElseThrow().pattern().changes()).hasSize(1);
        }
        Piece bent = kept(bent(10), "side");
        Pattern cornered = Cloths.pattern(List.of(), bent);
        Trued blend = Trued.blend(EdgeRef.of("front", "side"), new Point(210, 300));
        assertRefused(blend, cornered, "edge-protected", "piece", "front", "edge", "side");
        assertThat(only(cornered, "corner-within-edge").protectedEdges()).containsExactly("front/side");
        Pattern darted = Cloths.pattern(List.of(), kept(darted(DART), "waist"));
        assertRefused(Trued.cap("front", "d"), darted, "edge-protected", "piece", "front", "edge", "waist");
    }

    /** The side bent outwards half way down, which it was not at first. */
    private static Piece bent(double out) {
        Piece plain = panel("front", 600);
        return plain.toBuilder()
                .original(Optional.of(plain.outline()))
                .outline(Outline.polygon(List.of(
                        new Point(0, 0),
                        new Point(200, 0),
                        new Point(200 + out, 300),
                        new Point(200, 600),
                        new Point(0, 600))))
                .build();
    }

    private static Piece darted(Dart dart) {
        return panel("front", 600).toBuilder().darts(List.of(dart)).build();
    }

    @Test
    void dartsThatAreNotOnAnEdgeAreLeft() {
        Point one = DART.mouth1();
        Point two = DART.mouth2();
        Point point = DART.point();
        assertThat(ClosedDart.all(List.of(darted(DART)))).hasSize(1);
        Dart without = new Dart("d", one, two, point, Optional.empty(), Optional.empty());
        assertThat(ClosedDart.all(List.of(darted(without)))).isEmpty();
        for (Dart dart : List.of(
                new Dart("d", one, two, point, Optional.of(new Point(100, -9)), Optional.of("waist")),
                dart(new Point(90, 5), new Point(110, 5), point),
                dart(one, two, new Point(90, 0.9)),
                dart(one, two, new Point(110, 0.9)))) {
            Piece piece = darted(dart);
            assertThat(ClosedDart.all(List.of(piece))).isEmpty();
            assertRefused(
                    Trued.cap("front", "d"),
                    Cloths.pattern(List.of(), piece),
                    "dart-off-outline",
                    "piece",
                    "front",
                    "dart",
                    "d");
        }
    }

    /** Everything is tried once, what is refused is left, and what becomes untrue on the way is found as well. */
    @Test
    void allAtOnce() {
        Pattern before = sewn(kept(slanted("front", 600, 87, 93), "waist"), panel("back", 600));
        List<TrueUp.Tried> without = TrueUp.all(before, false);
        assertThat(without.stream()
                        .filter(t -> t.refusal().isPresent())
                        .map(t -> t.refusal().get().code()))
                .isNotEmpty()
                .containsOnly("truing-needs-leave");
        assertThat(without.stream().filter(t -> t.done().isPresent())).isNotEmpty();
        List<TrueUp.Tried> with = TrueUp.all(before, true);
        assertThat(with).allMatch(t -> t.refusal().isEmpty());
        Pattern after = with.get(with.size() - 1).done().orElseThrow().pattern();
        assertThat(after.changes()).hasSize(with.size());
        assertThat(Truing.proposals(after)).isEmpty();
        assertThat(TrueUp.all(after, true)).isEmpty();
        assertThat(with.stream()
                        .map(t -> List.of(
                                t.proposal().truing().matter(),
                                t.proposal().truing().target())))
                .doesNotHaveDuplicates();
    }

    @Test
    void unreadableStrokesAreNotTakenBack() {
        Trued back = new Trued(
                Trued.Matter.CUTTING_LINE, Map.of("piece", "front"), false, List.of("cut 0 0 3 cut sleeve"), true);
        assertRefused(back, PATTERN, "piece-unknown", "piece", "sleeve");
        Refusal unreadable = catchThrowableOfType(
                Refusal.class,
                () -> new Trued(Trued.Matter.CUTTING_LINE, Map.of("piece", "front"), false, List.of("scribble"), true)
                        .apply(PATTERN));
        assertThat(unreadable.code()).isEqualTo("note-setting-unreadable");
    }
}
