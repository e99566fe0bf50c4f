package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Seams sewn, eased and forgotten, and what they say of halves. */
class MateEditsTest {
    /** Half a neck in front and half at the back, and a band that is cut whole and a little shorter. */
    @Test
    void halvesSewnToAWholePieceCountForBothHalves() throws Exception {
        Bare bare =
                Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='front' d='M100,100 H232 V400 H100 Z'/><path id='back' d='M400,100 H486 V400 H400 Z'/>"
                        + "<path id='band' d='M100,500 H484 V540 H100 Z'/></svg>");
        for (String piece : List.of("front", "back", "band")) {
            for (Segment line : bare.piece(piece).outline().segments()) {
                bare.session.edit(EdgeEdits.split(bare.session.desk().pattern(), piece, line.start()));
            }
        }
        Pattern whole = bare.session.desk().pattern();
        EdgeRef front = EdgeRef.of("front", Bare.top(whole, "front", 160));
        EdgeRef back = EdgeRef.of("back", Bare.top(whole, "back", 440));
        EdgeRef band = EdgeRef.of(
                "band",
                EdgeEdits.at(whole.piece("band").orElseThrow(), new Point(300, 494))
                        .orElseThrow()
                        .name());
        Pattern wholes = MateEdits.sew(whole, band, front);
        assertThat(wholes.mates().get(0).second()).as("both are whole").containsExactly(front);
        Pattern folded = wholes.withPieces(wholes.pieces().stream()
                .map(p -> p.id().equals("band") ? p : p.toBuilder().cut(1, true).build())
                .toList());
        bare.session.edit(folded);
        SeamsView.Seam asked = SeamsView.of(bare.session.desk()).seams().get(0);
        assertThat(asked.count()).isTrue();
        assertThat(asked.halves()).contains("should count for both halves");
        Pattern counted = MateEdits.countHalves(folded, asked.name());
        assertThat(counted.mates().get(0).second()).containsExactly(new EdgeRef("front", front.edge(), 2));
        Pattern sewn = MateEdits.sew(MateEdits.remove(folded, asked.name()), band, front);
        assertThat(sewn.mates()).as("and so when it is sewn").isEqualTo(counted.mates());
        Pattern both = MateEdits.addEdge(sewn, asked.name(), false, back);
        assertThat(Measures.of(both).mate(asked.name()).orElseThrow().drift())
                .isCloseTo(384 - 2 * (132 + 86), within(1e-6));
        assertThat(MateEdits.addEdge(both, asked.name(), false, back))
                .as("it is there already")
                .isEqualTo(both);
        bare.session.edit(both);
        SeamsView view = SeamsView.of(bare.session.desk());
        assertThat(view.seams().get(0).count()).isFalse();
        assertThat(view.seams().get(0).halves()).contains("counts for both halves");
        assertThat(view.edges().stream()
                        .filter(e -> !view.seams().get(0).has(e))
                        .map(SeamsView.EdgeChoice::ref))
                .hasSize(view.edges().size() - 3)
                .doesNotContain(front, back, band);
        assertThat(MateEdits.sew(folded, front, back).mates().get(1).first())
                .as("half on half")
                .containsExactly(front);
    }

    /** Both layers of a yoke lie on each other: sewn to half a back it is one whole piece, although it is cut twice. */
    @Test
    void aYokeLinedWithItselfIsOneWholePiece() throws Exception {
        Bare bare = Bare.of(
                "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='back' d='M100,100 H300 V500 H100 Z'/><path id='yoke' d='M350,100 H750 V200 H350 Z'/></svg>");
        for (String piece : List.of("back", "yoke")) {
            for (Segment line : bare.piece(piece).outline().segments()) {
                bare.session.edit(EdgeEdits.split(bare.session.desk().pattern(), piece, line.start()));
            }
        }
        Pattern drawn = bare.session.desk().pattern();
        Pattern lined = drawn.withPieces(drawn.pieces().stream()
                .map(p -> p.id().equals("back")
                        ? p.toBuilder().cut(1, true).build()
                        : p.toBuilder().cut(2, false).layers(2).build())
                .toList());
        EdgeRef back = EdgeRef.of("back", Bare.top(lined, "back", 200));
        EdgeRef yoke = EdgeRef.of(
                "yoke",
                EdgeEdits.at(lined.piece("yoke").orElseThrow(), new Point(550, 194))
                        .orElseThrow()
                        .name());
        bare.session.edit(MateEdits.sew(lined, yoke, back));
        SeamsView.Seam seam = SeamsView.of(bare.session.desk()).seams().get(0);
        assertThat(bare.session.desk().pattern().mates().get(0).second())
                .containsExactly(new EdgeRef("back", back.edge(), 2));
        assertThat(seam.verdict().replace('\u00a0', ' ')).isEqualTo("\u2713 40 cm on 40 cm");
        assertThat(seam.halves()).startsWith("back: drawn as a half and sewn to a whole piece");
    }

    /** 30 cm on 29 cm with 3 cm to ease in: it is the longer side that lacks something, not the shorter one too long. */
    @Test
    void aSeamThatMissesItsEaseIsToldByTheEase() throws Exception {
        Bare bare = Bare.of(
                "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='front' d='M100,100 H300 V400 H100 Z'/><path id='back' d='M400,100 H600 V390 H400 Z'/></svg>");
        for (String piece : List.of("front", "back")) {
            for (Segment line : bare.piece(piece).outline().segments()) {
                bare.session.edit(EdgeEdits.split(bare.session.desk().pattern(), piece, line.start()));
            }
        }
        Pattern whole = bare.session.desk().pattern();
        EdgeRef front = side(whole, "front", new Point(300, 250));
        EdgeRef back = side(whole, "back", new Point(400, 250));
        assertThat(verdict(bare, new Mate("side", List.of(front), List.of(back), 0)))
                .isEqualTo("30 cm on 29 cm: the first side is 1 cm too long.");
        assertThat(verdict(bare, new Mate("side", List.of(back), List.of(front), 0)))
                .isEqualTo("29 cm on 30 cm: the second side is 1 cm too long.");
        assertThat(verdict(bare, new Mate("side", List.of(front), List.of(back), 30)))
                .isEqualTo("30 cm on 29 cm. It is 1 cm longer on front; 3 cm is to be eased in, 2 cm is missing.");
        assertThat(verdict(bare, new Mate("side", List.of(front), List.of(back), 10)))
                .isEqualTo("\u2713 30 cm on 29 cm");
    }

    private static EdgeRef side(Pattern pattern, String piece, Point at) {
        return EdgeRef.of(
                piece,
                EdgeEdits.at(pattern.piece(piece).orElseThrow(), at)
                        .orElseThrow()
                        .name());
    }

    private static String verdict(Bare bare, Mate seam) {
        bare.session.edit(bare.session.desk().pattern().withMates(List.of(seam)));
        return SeamsView.of(bare.session.desk()).seams().get(0).verdict().replace('\u00a0', ' ');
    }

    @Test
    void seamsAreSewnEasedAndForgotten() throws Exception {
        Pattern pattern = Bare.marked();
        String front = pattern.piece("Front").orElseThrow().id();
        String back = pattern.piece("Back").orElseThrow().id();
        assertThatThrownBy(() -> MateEdits.sew(pattern, EdgeRef.of(back, "side"), EdgeRef.of("Front", "side")))
                .hasMessageStartingWith("sewn-already ");
        assertThatThrownBy(() -> MateEdits.sew(pattern, EdgeRef.of(front, "hem"), EdgeRef.of(front, "hem")))
                .hasMessageStartingWith("edge-to-itself ");
        Pattern sewn = MateEdits.sew(pattern, EdgeRef.of(front, "hem"), EdgeRef.of(back, "hem"));
        assertThat(sewn.mates().get(sewn.mates().size() - 1).name()).isEqualTo("hem");
        Pattern eased = MateEdits.ease(sewn, "hem", -15);
        assertThat(Measures.of(eased).mate("hem").orElseThrow().drift()).isCloseTo(0, within(0.5));
        Pattern twice = MateEdits.times(eased, "hem", EdgeRef.of(front, "hem"), 2);
        assertThat(twice.mates().get(twice.mates().size() - 1).first().get(0).times())
                .isEqualTo(2);
        Pattern both = MateEdits.addEdge(eased, "hem", true, EdgeRef.of(front, "side"));
        assertThat(MateEdits.removeEdge(both, "hem", true, EdgeRef.of(front, "side")))
                .isEqualTo(eased);
        assertThatThrownBy(() -> MateEdits.removeEdge(eased, "hem", true, EdgeRef.of(front, "hem")))
                .hasMessageStartingWith("last-edge-of-seam ");
        assertThat(MateEdits.remove(eased, "hem")).isEqualTo(pattern);
        assertThatThrownBy(() -> MateEdits.rename(eased, "hem", "side seam")).hasMessageStartingWith("name-taken ");
    }
}
