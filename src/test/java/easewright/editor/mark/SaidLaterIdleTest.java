package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.alter.Alteration;
import easewright.alter.Cloths;
import easewright.alter.Proposal;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.alter.Step;
import easewright.alter.Taper;
import easewright.alter.Trued;
import easewright.alter.Truing;
import easewright.alter.Within;
import easewright.editor.model.Recasting;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.SetAside;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is said only after pieces were changed, where a later change has nothing left to do without an earlier one. */
class SaidLaterIdleTest {
    private Bare bare;

    /** Front, back and a gore of straight lines, each 200 mm wide; a line lies where the front has its mirror image. */
    @BeforeEach
    void threePiecesAndALine() throws Exception {
        bare = Bare.of(
                "<svg xmlns='http://www.w3.org/2000/svg' width='1400mm' height='600mm' viewBox='0 0 1400 600'>"
                        + "<path id='front' d='M300,100 H500 V500 H300 Z'/><path id='back' d='M600,100 H800 V500 H600 Z'/>"
                        + "<path id='gore' d='M900,100 H1100 V500 H900 Z'/><path id='line' d='M120,120 H280 V480 H120 Z'/></svg>");
        Pattern drawn = PieceEdits.noPiece(pattern(), "line");
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : drawn.pieces()) {
            double left = piece.outline().box().minX();
            boolean onFold = piece.id().equals("front");
            pieces.add(piece.toBuilder()
                    .edges(Cloths.polygon(
                                    piece.id(),
                                    List.of(
                                            new Point(left, 100),
                                            new Point(left + 200, 100),
                                            new Point(left + 200, 500),
                                            new Point(left, 500)),
                                    "waist WAIST, side SEAM, hem HEM, other " + (onFold ? "FOLD" : "SEAM"))
                            .edges())
                    .cut(1, onFold)
                    .levels(List.of(
                            LevelMark.along("waist", "waist"), LevelMark.through("hip", new Point(left + 50, 300))))
                    .build());
        }
        bare.session.edit(drawn.withPieces(pieces)
                .withLevels(List.of(Cloths.WAIST, Cloths.HIP))
                .withMates(List.of(new Mate(
                        "side seam", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0))));
    }

    private Pattern pattern() {
        return bare.session.desk().pattern();
    }

    private double girth() {
        return Measures.of(pattern()).girth("hip").orElseThrow().finished();
    }

    private static SeamChange hip(double mm, String... edges) {
        SeamChange change = SeamChange.at("hip", mm).withTaper(Taper.STRAIGHT);
        return change.withShares(
                List.of(edges).stream().map(e -> new Share(EdgeRef.parse(e), 1)).toArray(Share[]::new));
    }

    private ChangeNote make(Alteration change) throws Exception {
        bare.session.edit(change.apply(pattern()).pattern());
        return pattern().changes().get(pattern().changes().size() - 1);
    }

    /** The waist is trued at the side seam, which a change at the hip has made slant. */
    private ChangeNote trueWaist() throws Exception {
        Proposal joined = Truing.proposals(pattern()).stream()
                .filter(p -> p.truing().matter() == Trued.Matter.JOINED_LINE)
                .findFirst()
                .orElseThrow();
        bare.session.edit(joined.apply(pattern()).pattern());
        return pattern().changes().get(pattern().changes().size() - 1);
    }

    private SaidLater goreIsNone() throws MarkRefused {
        SaidLater said = SaidLater.noPiece(bare.session.desk(), bare.marker.sheet(), "gore");
        said.edit(bare.session);
        return said;
    }

    @Test
    void whatHasNothingLeftToDoIsSetAside() throws Exception {
        ChangeNote hip = make(hip(20, "front/side", "gore/side"));
        ChangeNote truing = trueWaist();
        SaidLater said = goreIsNone();
        assertThat(pattern().changes()).isEmpty();
        assertThat(pattern().aside()).extracting(SetAside::note).containsExactly(hip, truing);
        assertThat(said.again()).isZero();
        assertThat(said.off()).as("in one sentence").hasSize(2).noneMatch(o -> o.endsWith("."));
        bare.session.undo();
        assertThat(pattern().changes()).containsExactly(hip, truing);
    }

    @Test
    void whatIsSetAsideBehindItKeepsItsPlace() throws Exception {
        ChangeNote hip = make(hip(20, "front/side", "gore/side"));
        ChangeNote truing = trueWaist();
        ChangeNote later = make(hip(8, "back/other"));
        Recasting.on(bare.session, List.of(new Step(hip, true), new Step(truing, true), new Step(later, false)));
        assertThat(pattern().aside()).containsExactly(new SetAside(2, later));
        goreIsNone();
        assertThat(pattern().changes()).isEmpty();
        assertThat(pattern().aside()).extracting(SetAside::note).containsExactly(hip, truing, later);
    }

    @Test
    void theChangesAfterItAreMadeAgain() throws Exception {
        ChangeNote hip = make(hip(20, "front/side", "gore/side"));
        ChangeNote truing = trueWaist();
        ChangeNote one = make(hip(8, "back/other"));
        ChangeNote two = make(hip(4, "back/side"));
        ChangeNote off = make(hip(2, "back/other"));
        Recasting.on(
                bare.session,
                List.of(
                        new Step(hip, true),
                        new Step(truing, true),
                        new Step(one, true),
                        new Step(two, true),
                        new Step(off, false)));
        double wide = girth();
        SaidLater said = goreIsNone();
        assertThat(pattern().changes()).containsExactly(one, two);
        assertThat(pattern().aside())
                .containsExactly(new SetAside(0, hip), new SetAside(0, truing), new SetAside(2, off));
        assertThat(said.again()).isEqualTo(2);
        assertThat(wide - girth())
                .as("without the gore and what was changed with it")
                .isGreaterThan(200);
    }

    /** A line that lies in a copy for the other side only lies in no piece that is drawn. */
    @Test
    void aLineInACopyIsRefusedPolitely() throws Exception {
        make(Within.of(new Scope(Optional.empty(), Side.RIGHT), hip(10, "front/side")));
        OtherLines.Other line = bare.other("line");
        assertThat(line.piece()).hasValueSatisfying(id -> assertThat(id).startsWith("front-"));
        assertThatThrownBy(() -> SaidLater.line(bare.session.desk(), bare.marker.sheet(), line, false))
                .isInstanceOfSatisfying(
                        MarkRefused.class, e -> assertThat(e.code()).isEqualTo("line-gone"));
    }
}
