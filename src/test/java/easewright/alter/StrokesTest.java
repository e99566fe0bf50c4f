package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.alter.LaidStroke.Lay;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Strokes are read as they were written, do what they say and are taken back. */
class StrokesTest {
    private static final Piece PANEL = Panels.panel("a panel", 600);
    private static final Line OLD = new Line(new Point(200, 100), new Point(200, 300));
    private static final Cubic NEW = new Cubic(OLD.start(), new Point(206.5, 160), new Point(206.5, 240), OLD.end());

    static Stream<Stroke> strokes() {
        return Stream.of(
                new NotchStroke("a panel", "left one", new Point(1.5, -2), new Point(3, 4)),
                new CutStroke("a panel", "cut line", List.of(OLD), List.of(NEW)),
                new RunStroke("a panel", List.of(OLD), List.of(NEW), List.of()),
                new RunStroke(
                        "a panel",
                        List.of(OLD),
                        List.of(NEW),
                        List.of(
                                new RunStroke.Mark(new Point(200, 150), new Point(203, 150)),
                                new RunStroke.Mark(new Point(200, 200), new Point(204, 200)))),
                new LaidStroke(
                        "a panel",
                        new Point(1, 0),
                        List.of(
                                Lay.cubic(OLD.start(), new Point(200, 200), 0, 0.5, 3, -0.25),
                                Lay.stretch(new Point(200, 600), new Point(0, 600), 2, 1),
                                Lay.even(new Point(200, 200), OLD.end(), 3, 0))));
    }

    @ParameterizedTest
    @MethodSource("strokes")
    void isReadAsWritten(Stroke stroke) throws Refusal {
        assertThat(Stroke.parse(stroke.text())).isEqualTo(stroke);
        assertThat(stroke.piece()).isEqualTo("a panel");
        assertThat(stroke.opposite().orElseThrow()).isNotEqualTo(stroke);
        assertThat(stroke.opposite().orElseThrow().opposite()).contains(stroke);
    }

    @Test
    void severalAreTakenBackLastFirst() {
        List<Stroke> all = strokes().toList();
        List<Stroke> back = new ArrayList<>();
        all.forEach(s -> back.add(s.opposite().orElseThrow()));
        Collections.reverse(back);
        assertThat(Stroke.opposite(all)).contains(back);
    }

    private static void assertUnreadable(String text) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> Stroke.parse(text));
        assertThat(refusal).as(text).isNotNull();
        assertThat(refusal.code()).isEqualTo("note-setting-unreadable");
        assertThat(refusal.values()).containsEntry("setting", "stroke").containsEntry("text", text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "scribble 1 2",
                "notch 1 2 3",
                "notch 1 2 3 x 4 back n",
                "notch 1 2 3 4 4 back",
                "notch 1 2 3 4 4 back ",
                "notch 1 2 3 4 -1 back n",
                "notch 1 2 3 4 1.5 back n",
                "notch 1 2 3 Infinity 4 back n",
                "notch 1 2 3 4 100001 back n",
                "cut 0 0 5 tight",
                "cut 1 Q 1 2 3 4 0 1 a b",
                "cap 0 1 L 0 0 1 1 panel",
                "cap 1 L 0 0 1 1 0 panel",
                "cap 1 L 0 0 1 1 1 L 0 0 1 1",
                "run 1 L 0 0 1 1 1 L 0 0 1 1 2 0 0 1 1 panel",
                "lay 1 0 1 wavy 0 0 1 1 0 0 0 0 panel",
                "lay 1 0 1 cubic 0 0 1 1 0 0 0 panel",
                "lay 1 0 2 even 0 0 1 1 0 0 0 0 panel"
            })
    void whatIsNoStrokeIsRefused(String text) {
        assertUnreadable(text);
    }

    @Test
    void nothingMayBeMissingAtTheEnd() throws Refusal {
        for (Stroke stroke : strokes().toList()) {
            String[] words = stroke.text().split(" ");
            int name = stroke instanceof NotchStroke ? 4 : 2;
            for (int i = 1; i <= words.length - name; i++) {
                assertUnreadable(String.join(" ", List.of(words).subList(0, i)));
            }
        }
    }

    @Test
    void runIsDrawnAnewAndTheRestStaysTheSame() throws Refusal {
        RunStroke stroke = new RunStroke("a panel", List.of(OLD), List.of(NEW), List.of());
        Piece done = stroke.on(PANEL);
        assertThat(done.outline().segments()).contains(NEW).hasSize(6);
        for (int i : new int[] {0, 2, 3}) {
            Segment untouched = PANEL.outline().segments().get(i);
            assertThat(done.outline().segments()).anyMatch(s -> s == untouched);
        }
        assertThat(done.original()).contains(PANEL.outline());
        assertThat(stroke.moved(PANEL)).singleElement().satisfies(m -> {
            assertThat(m.pieceId()).isEqualTo("a panel");
            assertThat(m.before().segments()).containsExactly(OLD);
            assertThat(m.after().segments()).containsExactly(NEW);
        });
        Piece back = stroke.opposite().orElseThrow().on(done);
        assertThat(back.outline().segments()).contains(OLD);
        assertThat(back.original()).as("still the first").contains(PANEL.outline());
    }

    /** The run goes over the start of the outline. */
    @Test
    void runOverTheStartOfTheOutline() throws Refusal {
        List<Segment> old =
                List.of(new Line(new Point(0, 60), new Point(0, 0)), new Line(new Point(0, 0), new Point(50, 0)));
        List<Segment> cut = List.of(new Line(new Point(0, 60), new Point(50, 0)));
        Piece corner =
                PANEL.withEdges(List.of(PANEL.edges().get(1), PANEL.edges().get(2)));
        Piece done = new RunStroke("a panel", old, cut, List.of()).on(corner);
        assertThat(Math.abs(done.outline().signedArea())).isEqualTo(200 * 600 - 50 * 60 / 2.0);
        assertThat(done.outline().segments()).hasSize(5);
    }

    @Test
    void marksOnTheRunGoAlong() throws Refusal {
        Piece notched = Panels.notched(PANEL, "n", 200.015);
        Point now = new Point(204.875, 200);
        Piece done = new RunStroke(
                        "a panel",
                        List.of(OLD),
                        List.of(NEW),
                        List.of(
                                new RunStroke.Mark(new Point(200, 200), now),
                                new RunStroke.Mark(new Point(200, 199.99), new Point(7, 7)),
                                new RunStroke.Mark(new Point(200, 250), new Point(8, 8))))
                .on(notched);
        assertThat(done.notches().get(0).at()).isEqualTo(now);
        assertThat(done.edges()).isEqualTo(PANEL.edges());
    }

    @Test
    void placesThatAreNoLongerThereAreRefused() {
        Point off = new Point(205, 150);
        assertLost(() -> new NotchStroke("a panel", "n", off, off).on(PANEL));
        assertLost(() -> new NotchStroke("a panel", "n", new Point(200, 151), off).on(Panels.notched(PANEL, "n", 150)));
        assertLost(() -> new NotchStroke("a panel", "m", new Point(200, 150), off).on(Panels.notched(PANEL, "n", 150)));
        assertLost(() -> new CutStroke("a panel", "cut", List.of(OLD), List.of(NEW)).on(PANEL));
        assertLost(() -> new RunStroke(
                        "a panel", List.of(new Line(off, OLD.end())), List.of(new Line(off, OLD.end())), List.of())
                .on(PANEL));
        assertLost(() -> new LaidStroke("a panel", new Point(1, 0), List.of(Lay.even(off, OLD.end(), 0, 1))).on(PANEL));
    }

    private static void assertLost(ThrowingCallable call) {
        Refusal refusal = catchThrowableOfType(Refusal.class, call);
        assertThat(refusal).isNotNull();
        assertThat(refusal.code()).isEqualTo("truing-lost");
        assertThat(refusal.values()).containsEntry("piece", PANEL.name());
    }

    @Test
    void onlyTheLineThatIsMeantIsCutAnew() throws Refusal {
        Rider cut = new Rider("cut", Rider.Kind.PARALLEL, List.of(OLD));
        Rider other = new Rider("other", Rider.Kind.PARALLEL, List.of(OLD));
        CutStroke stroke = new CutStroke("a panel", "cut", List.of(OLD), List.of(NEW));
        Piece done = stroke.on(PANEL.toBuilder().riders(List.of(other, cut)).build());
        assertThat(done.riders()).containsExactly(other, cut.changed(List.of(NEW)));
        assertThat(done.riders().get(1).asDrawn()).isEqualTo(cut);
        assertThat(done.riders().get(0)).isSameAs(other);
        assertThat(stroke.moved(PANEL)).isEmpty();
    }

    /** A hump 4 mm high on the side: what lies beside it stays where it was. */
    @Test
    void layMovesItsRunAsFarAsItSays() throws Refusal {
        Point top = new Point(200, 200);
        LaidStroke stroke = new LaidStroke(
                "a panel",
                new Point(1, 0),
                List.of(Lay.cubic(OLD.start(), top, 0, 0, 4, 0), Lay.cubic(top, OLD.end(), 4, 0, 0, 0)));
        Piece done = stroke.on(PANEL);
        assertThat(done.outline().nearest(new Point(204, 200)).distance()).isLessThan(1e-9);
        assertThat(done.outline().nearest(new Point(202, 150)).distance())
                .as("half way")
                .isLessThan(1e-9);
        assertThat(done.outline().segments())
                .anyMatch(s -> s == PANEL.outline().segments().get(0));
        assertThat(stroke.moved(PANEL)).isNotEmpty().allMatch(m -> m.pieceId().equals("a panel"));
        Piece back = stroke.opposite().orElseThrow().on(done);
        assertThat(Math.abs(back.outline().signedArea())).isEqualTo(200 * 600);
    }
}
