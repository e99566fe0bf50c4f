package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Notes;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What of a buttoned front lies on the other one is worn twice and counts once. */
class OverlapTest {
    private static final String FRONT = "<path id='front' d='M100,100 H300 V500 H100 Z'/>";
    private static final String CENTRE = "<path id='centre' d='M118,100 V500'/>";

    /** Two fronts 200 mm wide that open at their left edges, where a line may be drawn 18 mm from it. */
    private static Bare drawn(String lines) throws Exception {
        Bare bare = Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'"
                + " fill='none' stroke='#000'>" + FRONT + lines + "</svg>");
        Pattern p = bare.session.desk().pattern();
        for (var line : p.piece("front").orElseThrow().outline().segments()) {
            p = EdgeEdits.split(p, "front", line.start());
        }
        String opening = side(p, 100);
        p = EdgeEdits.role(p, "front", opening, EdgeRole.OPENING);
        p = p.withPiece(p.piece("front").orElseThrow().toBuilder().cut(2, false).build());
        p = LevelEdits.add(LevelEdits.add(p, "bust", LevelKind.BUST), "waist", LevelKind.WAIST);
        bare.session.edit(p);
        return bare;
    }

    private static String side(Pattern p, double x) {
        var front = p.piece("front").orElseThrow();
        return front.edges().stream()
                .filter(e -> Math.abs(e.from().x() - x) < 1e-6 && Math.abs(e.to().x() - x) < 1e-6)
                .findFirst()
                .orElseThrow()
                .name();
    }

    private static Pattern placed(Bare bare, String level, double y) {
        Pattern p = LevelEdits.place(bare.session.desk().pattern(), "front", level, new easewright.geom.Point(200, y));
        bare.session.edit(p);
        return p;
    }

    private static LevelMark mark(Bare bare, String level) {
        return bare.session
                .desk()
                .pattern()
                .piece("front")
                .orElseThrow()
                .level(level)
                .orElseThrow();
    }

    private static double girth(Bare bare, String level) {
        return bare.session
                .desk()
                .reading()
                .measures()
                .girth(level)
                .orElseThrow()
                .finished();
    }

    @Test
    void aLevelPutOnByHandCountsFromTheDrawnCentreLine() throws Exception {
        Bare bare = drawn(CENTRE);
        placed(bare, "bust", 250);
        assertThat(mark(bare, "bust").overlap()).isCloseTo(18, within(1e-6));
        assertThat(girth(bare, "bust")).isCloseTo(2 * 182, within(1e-6));
        assertThat(notes(bare)).isEmpty();
    }

    @Test
    void whereNoCentreLineIsDrawnItIsAskedUntilItIsSaid() throws Exception {
        Bare bare = drawn("");
        placed(bare, "bust", 250);
        placed(bare, "waist", 400);
        assertThat(girth(bare, "bust")).isCloseTo(400, within(1e-6));
        assertThat(place(bare, "bust").overlap()).contains("");
        assertThat(notes(bare))
                .singleElement()
                .satisfies(n -> assertThat(n.words()).contains("front", "worn twice", "bust", "waist"));
        bare.session.edit(Overlaps.say(bare.session.desk().pattern(), "front", "bust", 15));
        assertThat(girth(bare, "bust")).isCloseTo(370, within(1e-6));
        assertThat(girth(bare, "waist")).isCloseTo(400, within(1e-6));
        assertThat(place(bare, "bust").overlap()).contains("1.5\u00a0cm");
        assertThat(place(bare, "bust").unlike()).isTrue();
        bare.session.edit(Overlaps.atEveryLevel(bare.session.desk().pattern(), "front", "bust"));
        assertThat(girth(bare, "waist")).isCloseTo(370, within(1e-6));
        assertThat(place(bare, "bust").unlike()).isFalse();
        assertThat(notes(bare)).isEmpty();
    }

    /** Levels that lay there before the edge was said to open, as in a file of earlier marks. */
    @Test
    void whatTheDrawingShowsIsOfferedForLevelsThatLieThereAlready() throws Exception {
        Bare bare = drawn(CENTRE);
        for (String level : List.of("bust", "waist")) {
            placed(bare, level, level.equals("bust") ? 250 : 400);
            bare.session.edit(Overlaps.unsay(bare.session.desk().pattern(), "front", level));
        }
        assertThat(place(bare, "bust").drawn()).contains("1.8\u00a0cm");
        assertThat(notes(bare)).hasSize(1);
        bare.session.edit(Overlaps.asDrawn(bare.session.desk().pattern(), "front"));
        assertThat(place(bare, "bust").drawn()).isEmpty();
        assertThat(girth(bare, "bust")).isCloseTo(2 * 182, within(1e-6));
        assertThat(girth(bare, "waist")).isCloseTo(2 * 182, within(1e-6));
        assertThat(notes(bare)).isEmpty();
    }

    /** The edges of a zip only meet: none is an answer too, and is kept when the level moves. */
    @Test
    void noneMayBeSaid() throws Exception {
        Bare bare = drawn("");
        placed(bare, "bust", 250);
        bare.session.edit(Overlaps.say(bare.session.desk().pattern(), "front", "bust", 0));
        assertThat(notes(bare)).isEmpty();
        placed(bare, "bust", 260);
        assertThat(mark(bare, "bust").overlapSaid()).isPresent();
        assertThat(notes(bare)).isEmpty();
        bare.session.edit(Overlaps.unsay(bare.session.desk().pattern(), "front", "bust"));
        assertThat(notes(bare)).hasSize(1);
    }

    @Test
    void moreThanThePieceIsRefused() throws Exception {
        Bare bare = drawn("");
        Pattern p = placed(bare, "bust", 250);
        assertThatThrownBy(() -> Overlaps.say(p, "front", "bust", 200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Overlaps.say(p, "front", "bust", -1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** What was said of one level holds for the next that is put on the piece. */
    @Test
    void theNextLevelHasTheOverlapOfTheOneBefore() throws Exception {
        Bare bare = drawn("");
        placed(bare, "bust", 250);
        bare.session.edit(Overlaps.say(bare.session.desk().pattern(), "front", "bust", 15));
        placed(bare, "waist", 400);
        assertThat(mark(bare, "waist").overlap()).isCloseTo(15, within(1e-9));
    }

    @Test
    void aPieceOnTheFoldIsNotAsked() throws Exception {
        Bare bare = drawn("");
        Pattern p = placed(bare, "bust", 250);
        bare.session.edit(p.withPiece(
                p.piece("front").orElseThrow().toBuilder().cut(1, true).build()));
        assertThat(notes(bare)).isEmpty();
    }

    private static LevelsView.Place place(Bare bare, String level) {
        return LevelsView.of(bare.session.desk()).levels().stream()
                .filter(r -> r.name().equals(level))
                .findFirst()
                .orElseThrow()
                .places()
                .get(0);
    }

    private static List<Notes.Note> notes(Bare bare) {
        return Notes.of(bare.session.desk()).stream()
                .filter(n -> n.overlapAt().isPresent())
                .toList();
    }
}
