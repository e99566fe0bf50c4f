package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The tools on the table, without a window. */
class MarkerTest {
    private static final double REACH = 3;

    private static void clicks(Bare bare, Tool tool, Point... places) {
        bare.marker.take(tool);
        for (Point place : places) {
            bare.marker.hover(place, REACH);
            bare.marker.click(place, REACH);
        }
        if (bare.marker.state().tool() != Tool.NONE) {
            bare.marker.take(tool);
        }
    }

    @Test
    void aWholePieceMarkedByHandSavedAndReadAgain() throws Exception {
        Bare bare = Bare.twoPieces();
        bare.marker.go(MarkState.Step.PIECES);
        clicks(bare, Tool.SPLIT, new Point(99, 101), new Point(302, 100), new Point(300, 401), new Point(100, 399));
        clicks(bare, Tool.SPLIT, new Point(400, 100), new Point(600, 100), new Point(600, 400), new Point(400, 400));
        assertThat(bare.piece("front").edges()).hasSize(4);
        clicks(bare, Tool.DART, new Point(190, 95), new Point(210, 104), new Point(200, 190));
        clicks(bare, Tool.NOTCH, new Point(304, 260));
        clicks(bare, Tool.GRAIN, new Point(150, 150), new Point(150, 350));
        clicks(bare, Tool.SEW, new Point(299, 250), new Point(401, 250));
        assertThat(bare.session.desk().pattern().mates()).hasSize(1);
        bare.marker.tryTo(p -> LevelEdits.add(p, "hip", LevelKind.HIP));
        bare.marker.takeLevel("hip");
        bare.marker.click(new Point(200, 250), REACH);
        bare.marker.click(new Point(500, 250), REACH);
        Pattern marked = bare.session.desk().pattern();
        Piece front = marked.piece("front").orElseThrow();
        assertThat(front.darts()).hasSize(1);
        assertThat(front.notches().get(0).at()).isEqualTo(new Point(300, 260));
        assertThat(front.grain()).isPresent();
        assertThat(bare.session
                        .desk()
                        .reading()
                        .measures()
                        .girth("hip")
                        .orElseThrow()
                        .finished())
                .isCloseTo(400, within(1e-6));
        Pattern again = SvgFile.read(bare.svg.write(marked), "again.svg").pattern();
        assertThat(again).isEqualTo(marked);
        while (bare.session.desk().history().canUndo()) {
            bare.session.undo();
        }
        assertThat(bare.session.desk().pattern()).isEqualTo(bare.svg.pattern());
    }

    /** A click in the middle of a piece is drawn to the height of a notch; what it would do is shown before. */
    @Test
    void aLevelIsLaidAtTheHeightOfAMarkAndAnotherIsMeasuredFromIt() throws Exception {
        Bare bare = Bare.twoPieces();
        bare.marker.go(MarkState.Step.PIECES);
        clicks(bare, Tool.NOTCH, new Point(300, 220));
        bare.marker.go(MarkState.Step.LEVELS);
        bare.marker.tryTo(p -> LevelEdits.add(p, "bust", LevelKind.BUST));
        bare.marker.takeLevel("bust");
        bare.marker.hover(new Point(180, 221), REACH);
        var scene = MarkScenes.of(
                bare.session.desk(), bare.marker.sheet(), bare.marker.lines(), bare.marker.state(), Optional.empty());
        assertThat(scene.strong()).singleElement().satisfies(line -> {
            assertThat(line.start().y()).isEqualTo(220);
            assertThat(line.end().y()).isEqualTo(220);
            assertThat(line.length()).isEqualTo(200);
        });
        assertThat(scene.tape().orElseThrow().words()).isEqualTo("12\u00a0cm");
        bare.marker.click(new Point(180, 221), REACH);
        Point bust = bare.piece("front").level("bust").orElseThrow().through().orElseThrow();
        assertThat(bust.y()).isEqualTo(220);
        bare.marker.takeLevel("bust");
        bare.marker.tryTo(p -> LevelEdits.add(p, "waist", LevelKind.WAIST));
        bare.marker.tryTo(p -> LevelEdits.below(p, "waist", "bust", 90));
        LevelsView.Place waist = LevelsView.of(bare.session.desk()).levels().stream()
                .filter(l -> l.name().equals("waist"))
                .findFirst()
                .orElseThrow()
                .places()
                .get(0);
        assertThat(waist.distance()).isEqualTo("9\u00a0cm");
        assertThat(waist.how()).isEqualTo("below bust");
        bare.session.edit(LevelEdits.distance(bare.session.desk().pattern(), "front", "bust", 100));
        assertThat(LevelsView.of(bare.session.desk())
                        .levels()
                        .get(1)
                        .places()
                        .get(0)
                        .how())
                .as("measured from where the bust was")
                .isEqualTo("below a place of its own");
    }

    /** Whoever presses in the card of another level while one is in the hand means that press, and nothing else yet. */
    @Test
    void theLevelInTheHandStaysWhenAnotherCardGetsTheKeys() throws SvgProblem {
        Bare bare = Bare.twoPieces();
        bare.marker.tryTo(p -> LevelEdits.add(p, "bust", LevelKind.BUST));
        bare.marker.tryTo(p -> LevelEdits.add(p, "hip", LevelKind.HIP));
        bare.marker.workAt("bust");
        assertThat(bare.marker.state().level()).contains("bust");
        bare.marker.takeLevel("bust");
        bare.marker.workAt("hip");
        assertThat(bare.marker.state().level()).contains("bust");
        bare.marker.takeLevel("hip");
        assertThat(bare.marker.state().tool()).isEqualTo(Tool.LEVEL);
        assertThat(bare.marker.state().level()).contains("hip");
        bare.marker.holdLevel("hip");
        assertThat(bare.marker.state().tool()).isEqualTo(Tool.LEVEL);
        bare.marker.takeLevel("hip");
        assertThat(bare.marker.state().tool()).isEqualTo(Tool.NONE);
        bare.marker.holdLevel("bust");
        assertThat(bare.marker.state().tool()).isEqualTo(Tool.LEVEL);
        assertThat(bare.marker.state().level()).contains("bust");
    }

    @Test
    void theHandIsDrawnToCornersThenToLines() throws SvgProblem {
        Bare bare = Bare.twoPieces();
        bare.marker.take(Tool.TAPE);
        bare.marker.hover(new Point(301.5, 98.5), REACH);
        assertThat(bare.marker.state().over().orElseThrow().kind()).isEqualTo(Snap.Kind.CORNER);
        bare.marker.hover(new Point(298.5, 250), REACH);
        Snap onLine = bare.marker.state().over().orElseThrow();
        assertThat(onLine.kind()).isEqualTo(Snap.Kind.OUTLINE);
        assertThat(onLine.at()).isEqualTo(new Point(300, 250));
        bare.marker.hover(new Point(200, 250), REACH);
        assertThat(bare.marker.state().over().orElseThrow().kind()).isEqualTo(Snap.Kind.FREE);
    }

    @Test
    void aClickInTheWrongPlaceIsExplainedAndLosesNothing() throws SvgProblem {
        Bare bare = Bare.twoPieces();
        Pattern before = bare.session.desk().pattern();
        bare.marker.take(Tool.SPLIT);
        bare.marker.click(new Point(200, 250), REACH);
        assertThat(bare.session.desk().notice().orElseThrow().key()).isEqualTo("problem.not-on-edge");
        bare.marker.take(Tool.DART);
        bare.marker.click(new Point(190, 100), REACH);
        bare.marker.click(new Point(420, 100), REACH);
        bare.marker.click(new Point(200, 200), REACH);
        assertThat(bare.session.desk().notice().orElseThrow().key()).isEqualTo("problem.not-one-piece");
        assertThat(bare.session.desk().pattern()).isEqualTo(before);
        assertThat(bare.marker.state().picks()).isEmpty();
        assertThat(bare.marker.state().tool()).isEqualTo(Tool.DART);
    }

    @Test
    void escapeTakesBackOneClickThenTheTool() throws SvgProblem {
        Bare bare = Bare.twoPieces();
        bare.marker.take(Tool.DART);
        bare.marker.click(new Point(190, 100), REACH);
        bare.marker.back();
        assertThat(bare.marker.state().picks()).isEmpty();
        assertThat(bare.marker.state().tool()).isEqualTo(Tool.DART);
        bare.marker.back();
        assertThat(bare.marker.state().tool()).isEqualTo(Tool.NONE);
    }

    @Test
    void aLevelIsDraggedAndDrawnToANotch() throws SvgProblem {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept();
        bare.marker.go(MarkState.Step.LEVELS);
        Piece front = bare.piece("Front");
        double start = LevelEdits.distance(front, "hip").orElseThrow();
        Point on = front.level("hip").orElseThrow().through().orElseThrow();
        assertThat(bare.marker.levelHand().grab(on.plus(new Point(20, 1)), REACH))
                .isTrue();
        bare.marker.levelHand().drag(on.plus(new Point(20, 41)), REACH, true);
        Pattern shown = bare.marker.state().moving().orElseThrow().shown();
        assertThat(LevelEdits.distance(shown.piece("Front").orElseThrow(), "hip")
                        .orElseThrow())
                .isCloseTo(start + 41, within(1e-6));
        assertThat(bare.session.desk().pattern()).isNotEqualTo(shown);
        // Back near the notch at the side seam, which lies where the level was.
        bare.marker.levelHand().drag(on.plus(new Point(20, 2)), REACH, false);
        bare.marker.levelHand().drop();
        assertThat(LevelEdits.distance(bare.piece("Front"), "hip").orElseThrow())
                .isCloseTo(start, within(0.01));
        bare.marker.levelHand().grab(on, REACH);
        bare.marker.levelHand().drag(on.plus(new Point(0, 30)), REACH, true);
        bare.marker.levelHand().drop();
        assertThat(LevelEdits.distance(bare.piece("Front"), "hip").orElseThrow())
                .isCloseTo(start + 30, within(1e-6));
        bare.session.undo();
        assertThat(LevelEdits.distance(bare.piece("Front"), "hip").orElseThrow())
                .isCloseTo(start, within(0.01));
    }

    @Test
    void everyClickOfEveryToolIsExplained() throws SvgProblem {
        Words words = Bare.twoPieces().session.desk().words();
        for (Tool tool : Tool.values()) {
            for (int click = 1; click <= tool.clicks(); click++) {
                String key = "editor.tool." + tool.key() + "." + click;
                assertThat(words.of(key)).isNotEqualTo(key);
            }
        }
    }

    @Test
    void theTapeMeasuresStraightAndAlongAnEdge() throws SvgProblem {
        Bare bare = Bare.twoPieces();
        bare.marker.take(Tool.TAPE);
        bare.marker.click(new Point(100, 100), REACH);
        bare.marker.click(new Point(300, 400), REACH);
        Line line = bare.marker.state().line().orElseThrow();
        assertThat(line.length()).isCloseTo(Math.hypot(200, 300), within(1e-9));
        Optional<List<Segment>> run = Tape.along(bare.session.desk().pattern(), line);
        assertThat(run.orElseThrow().stream().mapToDouble(Segment::length).sum())
                .isCloseTo(500, within(1e-9));
        assertThat(Tape.words(bare.session.desk(), line)).contains("36.05").contains("50\u00a0cm");
    }
}
