package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.Notes;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.svg.SvgFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Pieces named, counted, left out and taken up. */
class PieceEditsTest {
    @Test
    void aPieceIsNamedAndCounted() throws Exception {
        Pattern pattern = PieceEdits.rename(Bare.unmarked(), "front", " Skirt front ");
        assertThat(pattern.piece("front").orElseThrow().name()).isEqualTo("Skirt front");
        assertThatThrownBy(() -> PieceEdits.rename(pattern, "back", "Skirt front"))
                .hasMessageStartingWith("name-taken ");
        assertThatThrownBy(() -> PieceEdits.rename(pattern, "back", "")).hasMessageStartingWith("name-empty ");
        Piece cut = PieceEdits.cut(pattern, "front", " 2 ", true).piece("front").orElseThrow();
        assertThat(cut.times()).isEqualTo(2);
        assertThat(cut.onFold()).isTrue();
        for (String wrong : List.of("two", "0", "-1", "1.5", "", "100")) {
            assertThatThrownBy(() -> PieceEdits.cut(pattern, "front", wrong, false))
                    .hasMessageStartingWith("count-wrong ");
        }
        Piece line = PieceEdits.line(pattern, "front", LineKind.CUTTING, OptionalDouble.of(10))
                .piece("front")
                .orElseThrow();
        assertThat(line.drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(line.allowance()).isEqualTo(10);
    }

    @Test
    void aPieceThatComesOnTheFoldHasItsCentreLineThere() throws Exception {
        Pattern pattern = Bare.marked();
        Piece back = pattern.piece("Back").orElseThrow();
        String centre = back.edges().stream()
                .filter(e -> e.role() == EdgeRole.CENTRE)
                .findFirst()
                .orElseThrow()
                .name();
        Pattern folded = PieceEdits.cut(pattern, back.id(), "1", true);
        assertThat(folded.piece("Back").flatMap(p -> p.edge(centre)).map(Edge::role))
                .contains(EdgeRole.FOLD);
        assertThat(PieceEdits.cut(folded, back.id(), "2", true).piece("Back").flatMap(p -> p.edge(centre)))
                .as("only the number changes")
                .map(Edge::role)
                .contains(EdgeRole.FOLD);
        assertThat(PieceEdits.cut(folded, back.id(), String.valueOf(back.times()), false))
                .isEqualTo(pattern);
    }

    @Test
    void anEdgeCalledFoldIsCalledCentreOnceItIsNoFold() throws Exception {
        Pattern pattern = Bare.marked();
        Piece front = pattern.piece("Front").orElseThrow();
        assertThat(front.onFold()).isTrue();
        Piece cut =
                PieceEdits.cut(pattern, front.id(), "2", false).piece("Front").orElseThrow();
        assertThat(front.edge("fold").map(Edge::role)).contains(EdgeRole.FOLD);
        assertThat(cut.edge("fold")).isEmpty();
        assertThat(cut.edge("centre").map(Edge::role)).contains(EdgeRole.CENTRE);
    }

    @Test
    void seamsThatNamedAPieceByNameStillMeanIt() throws Exception {
        Pattern pattern = Bare.marked();
        Piece front = pattern.piece("Front").orElseThrow();
        Pattern byName = pattern.withMates(
                List.of(new Mate("m", List.of(EdgeRef.of("Front", "side")), List.of(EdgeRef.of("Back", "side")), 0)));
        Pattern renamed = PieceEdits.rename(byName, front.id(), "Vorn");
        assertThat(Measures.of(renamed).mate("m")).isPresent();
    }

    @Test
    void leavingAPieceOutTakesItsSeamsAway() throws Exception {
        Pattern pattern = Bare.marked();
        Piece front = pattern.piece("Front").orElseThrow();
        Pattern without = PieceEdits.leaveOut(pattern, front.id());
        assertThat(without.pieces()).hasSize(2);
        assertThat(without.mates()).noneMatch(m -> m.name().equals("side seam"));
        Pattern changed = pattern.withChange(new ChangeNote("seam", Map.of()));
        assertThatThrownBy(() -> PieceEdits.leaveOut(changed, front.id())).hasMessageStartingWith("piece-in-changes ");
    }

    @Test
    void whatWasLeftOutCanBecomeAPieceAgain() throws Exception {
        Bare bare = Bare.twoPieces();
        Pattern both = bare.session.desk().pattern();
        assertThat(LoosePieces.on(bare.marker.sheet())).isEmpty();
        bare.marker.tryTo(p -> PieceEdits.noPiece(p, "back"));
        assertThat(bare.session.desk().pattern().noPieces()).containsExactly("back");
        assertThat(LoosePieces.on(bare.marker.sheet())).extracting(Piece::id).containsExactly("back");
        bare.session.edit(LoosePieces.with(
                bare.marker.sheet(), LoosePieces.on(bare.marker.sheet()).get(0)));
        assertThat(bare.session.desk().pattern()).isEqualTo(both);
    }

    /** Closing a line that was left open is one step, takes along what lies inside, and changes what the notes say. */
    @Test
    void aLineLeftOpenIsClosedWhenTheUserSaysSo() throws Exception {
        Bare bare =
                Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='front' d='M100,100 H300 V400 H100 V130'/><path id='grain' d='M200 150V350'/>"
                        + "<path id='back' d='M400,100 H600 V400 H400 Z'/></svg>");
        Pattern before = bare.session.desk().pattern();
        assertThat(notes(bare)).anyMatch(n -> n.open().equals(Optional.of("front")) && n.severity() == Severity.FAULT);
        List<OpenPieces.Open> open = OpenPieces.on(bare.session.desk(), bare.marker.sheet());
        assertThat(open).hasSize(1);
        assertThat(open.get(0).gap().length()).isCloseTo(30, within(1e-9));
        assertThat(open.get(0).pointed().around().orElseThrow().contains(new Point(100, 115)))
                .isTrue();
        bare.session.edit(LoosePieces.with(bare.marker.sheet(), open.get(0).closed()));
        Piece front = bare.piece("front");
        assertThat(front.riders()).extracting(Rider::id).containsExactly("grain");
        assertThat(OpenPieces.on(bare.session.desk(), bare.marker.sheet())).isEmpty();
        assertThat(notes(bare))
                .noneMatch(n -> n.open().isPresent())
                .anyMatch(n -> n.words().contains("closed it with a straight line"));
        SvgFile saved = SvgFile.read(bare.svg.write(bare.session.desk().pattern()), "saved.svg");
        assertThat(saved.pattern().piece("front").orElseThrow().outline()).isEqualTo(front.outline());
        bare.session.undo();
        assertThat(bare.session.desk().pattern()).isEqualTo(before);
        assertThat(OpenPieces.on(bare.session.desk(), bare.marker.sheet())).hasSize(1);
    }

    private static List<Notes.Note> notes(Bare bare) {
        return Notes.of(bare.session.desk());
    }
}
