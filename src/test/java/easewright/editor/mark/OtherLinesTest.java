package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.check.LinesSaid;
import easewright.editor.model.Notes;
import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.suggest.Suggestions;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A skirt front with a hand-drawn cutting line around it: what the user says of the one line or the other. */
class OtherLinesTest {
    private static final String OUTER = "shape-2";
    private static final String INNER = "shape-3";

    private final Bare bare;

    OtherLinesTest() throws Exception {
        bare = Bare.of(Files.readString(Path.of("src/test/resources/lines/dart-cut-in.svg")));
    }

    private Pattern pattern() {
        return bare.session.desk().pattern();
    }

    private List<String> notes() {
        return Notes.of(bare.session.desk()).stream().map(Notes.Note::words).toList();
    }

    /** As a user who takes matters in her own hands: the outer line is no piece, the inner one is. */
    private void innerIsThePiece() throws MarkRefused {
        bare.session.edit(PieceEdits.noPiece(pattern(), OUTER));
        bare.session.edit(OtherLines.ownPiece(bare.marker.sheet(), bare.other(INNER)));
    }

    @Test
    void theInnerLineIsSaidToBeSewn() throws MarkRefused {
        OtherLines.Other inner = bare.other(INNER);
        assertThat(inner.piece()).contains(OUTER);
        assertThat(inner.around()).isFalse();
        assertThat(notes()).anyMatch(n -> n.contains("evenly inside"));
        OtherLines.Said said = OtherLines.said(pattern(), inner, OUTER);
        Piece front = said.pattern().piece(said.piece()).orElseThrow();
        assertThat(front.id()).isEqualTo(INNER);
        assertThat(front.drawn()).isEqualTo(LineKind.STITCHING);
        assertThat(front.allowance()).isCloseTo(10, within(1.0));
        assertThat(front.riders())
                .filteredOn(r -> r.kind() == Rider.Kind.PARALLEL)
                .extracting(Rider::id)
                .containsExactly(OUTER);
        bare.session.edit(said.pattern());
        assertThat(notes()).noneMatch(n -> n.contains("evenly inside") || n.contains("lies around"));
    }

    @Test
    void theOuterLineIsSaidToBeCutAndGoesAlong() throws Exception {
        innerIsThePiece();
        assertThat(notes()).as("it is not silent").anyMatch(n -> n.contains("lies around"));
        OtherLines.Other outer = bare.other(OUTER);
        assertThat(outer.piece()).contains(INNER);
        assertThat(outer.around()).isTrue();
        OtherLines.Said said = OtherLines.said(pattern(), outer, INNER);
        Piece front = said.pattern().piece(said.piece()).orElseThrow();
        assertThat(front.id()).isEqualTo(INNER);
        assertThat(front.riders())
                .filteredOn(r -> r.kind() == Rider.Kind.PARALLEL)
                .extracting(Rider::id)
                .containsExactly(OUTER);
        bare.session.edit(said.pattern());
        assertThat(notes()).noneMatch(n -> n.contains("lies around"));
        SvgFile file = bare.session.desk().file().orElseThrow().svg();
        SvgFile saved = SvgFile.read(file.write(pattern()), "saved.svg");
        assertThat(saved.pattern()).isEqualTo(pattern());
        assertThat(LinesSaid.around(saved.pattern(), saved.looseOutlines(saved.pattern())))
                .isEmpty();
    }

    /** Marks lie on the other line after the swap, and nothing sewn has another length. */
    @Test
    void bothLinesAreSwappedWithAllMarksAndSwappedBack() throws MarkRefused {
        Pattern marked = Suggestions.of(bare.marker.sheet(), Set.of()).outcome();
        bare.session.edit(marked);
        double waist = Measures.of(marked).girth("waist").orElseThrow().finished();
        OtherLines.Other outer = bare.other(OUTER);
        assertThat(outer.known()).isTrue();
        OtherLines.Said said = OtherLines.changed(pattern(), outer, INNER);
        Piece front = said.pattern().piece(said.piece()).orElseThrow();
        assertThat(front.id()).isEqualTo(OUTER);
        assertThat(front.drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(front.name()).isEqualTo("Skirt front");
        assertThat(front.edges())
                .extracting(Edge::role)
                .containsExactlyInAnyOrder(EdgeRole.WAIST, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.FOLD);
        Edge side = front.edges().stream()
                .filter(e -> e.role() == EdgeRole.SEAM)
                .findFirst()
                .orElseThrow();
        assertThat(List.of(side.from(), side.to())).contains(new Point(264, 37), new Point(310, 670));
        assertThat(said.pattern().mates()).hasSameSizeAs(marked.mates());
        // The lines are drawn 9.9 to 11.6 mm apart, and one allowance is kept for each edge.
        assertThat(Measures.of(said.pattern()).girth("waist").orElseThrow().finished())
                .isCloseTo(waist, within(8.0));
        bare.session.edit(said.pattern());
        OtherLines.Said back = OtherLines.changed(pattern(), bare.other(INNER), OUTER);
        Piece again = back.pattern().piece(back.piece()).orElseThrow();
        Piece before = marked.piece(INNER).orElseThrow();
        assertThat(again.outline()).isEqualTo(before.outline());
        for (Edge edge : before.edges()) {
            Edge now = again.edge(edge.name()).orElseThrow();
            assertThat(now.from().distance(edge.from())).as(edge.name()).isLessThan(1e-6);
            assertThat(now.to().distance(edge.to())).as(edge.name()).isLessThan(1e-6);
        }
        assertThat(back.pattern().mates()).isEqualTo(marked.mates());
    }

    /** Widened so far that it crosses the line that stays put, the piece is still cautioned against. */
    @Test
    void theCautionStaysAfterAChange() throws MarkRefused {
        innerIsThePiece();
        Piece drawn = pattern().piece(INNER).orElseThrow();
        Outline wider = drawn.outline().transformed(new Affine(1.1, 0, 0, 1, 40 - 1.1 * 40, 0));
        bare.session.edit(pattern()
                .withPiece(drawn.toBuilder()
                        .original(Optional.of(drawn.outline()))
                        .outline(wider)
                        .build()));
        assertThat(notes()).anyMatch(n -> n.contains("lies around"));
    }

    @Test
    void aLineOfItsOwnIsAPieceAndIsNotAskedAboutAsALine() throws MarkRefused {
        bare.session.edit(OtherLines.ownPiece(bare.marker.sheet(), bare.other(INNER)));
        assertThat(pattern().pieces()).extracting(Piece::id).contains(OUTER, INNER);
        assertThat(pattern().piece(OUTER).orElseThrow().riders())
                .extracting(Rider::id)
                .doesNotContain(INNER);
        assertThat(OtherLines.on(bare.marker.sheet()))
                .extracting(OtherLines.Other::id)
                .doesNotContain(INNER);
    }

    @Test
    void aClickMeansTheNearerLine() throws MarkRefused {
        Point onInner = new Point(40 + 130, 660);
        assertThat(bare.marker.outlineAt(onInner, 4)).contains(INNER);
        assertThat(bare.marker.outlineAt(new Point(40 + 130, 670), 12))
                .as("the outline of the piece is nearer")
                .isEmpty();
        assertThat(bare.marker.outlineAt(new Point(170, 500), 4)).isEmpty();
    }

    @Test
    void aPieceThatTakesTheOtherLineAlongIsCautionedAgainstNoMore() {
        assertThat(findings("line-inside-unsaid")).hasSize(1);
        Pattern marked = Suggestions.of(bare.marker.sheet(), Set.of()).outcome();
        bare.session.edit(marked);
        assertThat(findings("line-inside-unsaid")).isEmpty();
    }

    private List<Finding> findings(String code) {
        return bare.session.desk().reading().findings().stream()
                .filter(f -> f.code().equals(code))
                .toList();
    }

    /** What is asked for in every picture is found once, and anew for another sheet. */
    @Test
    void theLinesOfASheetAreFoundOnce() {
        AskedLines lines = bare.marker.lines();
        var first = lines.all(bare.marker.sheet());
        assertThat(first).isNotEmpty();
        assertThat(lines.all(bare.marker.sheet())).isSameAs(first);
        String id = first.get(0).id();
        assertThat(lines.drawn(bare.marker.sheet(), id))
                .isEqualTo(first.get(0).line().segments());
        bare.marker.open(true);
        bare.marker.askOutline(Optional.of(id));
        assertThat(MarkScenes.of(bare.session.desk(), bare.marker.sheet(), lines, bare.marker.state(), Optional.empty())
                        .strong())
                .containsAll(first.get(0).line().segments());
        assertThat(lines.all(bare.marker.sheet()))
                .as("the picture asked the same")
                .isSameAs(first);
        assertThat(lines.drawn(bare.marker.sheet(), "no such line")).isEmpty();
        bare.session.edit(bare.session.desk().pattern().withGarment("shirt"));
        assertThat(lines.all(bare.marker.sheet())).isNotSameAs(first);
    }
}
