package easewright.alter;

import static easewright.alter.Cloths.girth;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is called otherwise after a change does not stand in the way of making the change otherwise, or of taking it back. */
class RenamingTest {
    private static SvgFile sample(String name) throws Exception {
        return SvgFile.read(Samples.files().get(name + ".svg").getBytes(StandardCharsets.UTF_8), name + ".svg");
    }

    private static Pattern reopened(SvgFile file, Pattern pattern) throws Exception {
        return SvgFile.read(file.write(pattern), file.name()).pattern();
    }

    private static Pattern recast(Pattern pattern, List<Pattern> known, Step first) throws Exception {
        List<Step> course = new ArrayList<>(Step.course(pattern));
        course.set(0, first);
        return new Replay(pattern, known).to(course);
    }

    private static Pattern off(Pattern pattern, List<Pattern> known) throws Exception {
        return recast(pattern, known, Step.course(pattern).get(0).switched(false));
    }

    /** Every edge of a pattern under another name, in one go. */
    static Pattern allOtherwise(Pattern pattern) {
        Pattern now = pattern;
        for (Piece piece : pattern.pieces()) {
            for (var edge : piece.edges()) {
                Piece is = now.piece(piece.id()).orElseThrow();
                if (is.edge(edge.name()).isPresent()) {
                    now = Renaming.edge(now, is, edge.name(), "my " + edge.name());
                }
            }
        }
        for (Mate mate : pattern.mates()) {
            now = Renaming.seam(now, mate.name(), "our " + mate.name());
        }
        return now;
    }

    private static Share share(String piece) {
        return new Share(EdgeRef.of(piece, "side"), 1);
    }

    @Test
    void aChangeIsMadeByAnotherAmountAtTheEdgeWithItsNewName() throws Exception {
        SvgFile file = sample("skirt");
        Pattern drawn = file.pattern();
        List<String> ids = drawn.pieces().stream()
                .filter(p -> p.edge("side").isPresent())
                .map(Piece::id)
                .toList();
        SeamChange change = SeamChange.at("hip", 20)
                .withShares(ids.stream().map(RenamingTest::share).toArray(Share[]::new))
                .carriedToHem();
        Pattern wide = change.apply(drawn).pattern();
        Pattern wider = change.withAmount(33).apply(drawn).pattern();
        Pattern renamed = allOtherwise(wide);
        assertThat(renamed.changes().get(0).settings()).containsEntry("edge.1", ids.get(0) + "/my side");
        Step more = Step.course(renamed).get(0).withAmount(33);
        Pattern known = recast(renamed, List.of(drawn, wide, renamed), more);
        assertThat(known.pieces()).isEqualTo(allOtherwise(wider).pieces());
        assertThat(known.changes()).isEqualTo(allOtherwise(wider).changes());
        Pattern unknown = recast(reopened(file, renamed), List.of(), more);
        assertThat(girth(unknown, "hip")).isCloseTo(girth(drawn, "hip") + 33, within(0.01));
        Pattern back = off(renamed, List.of(drawn, wide, renamed));
        assertThat(back.pieces()).isEqualTo(allOtherwise(drawn).pieces());
        assertThat(back.mates()).isEqualTo(allOtherwise(drawn).mates());
        assertThat(back.aside().get(0).note()).isEqualTo(renamed.changes().get(0));
    }

    @Test
    void dartsNotchesAndSeamsAreFollowedToo() throws Exception {
        Pattern skirt = sample("skirt").pattern();
        Piece front = skirt.pieces().stream()
                .filter(p -> !p.darts().isEmpty())
                .findFirst()
                .orElseThrow();
        String dart = front.darts().get(0).name();
        Pattern taken = DartIntake.at("waist", 6, new DartShare(front.id(), dart, 1))
                .apply(skirt)
                .pattern();
        Pattern other = Renaming.dart(taken, taken.piece(front.id()).orElseThrow(), dart, "long dart");
        assertThat(Ways.from(other.changes().get(0))
                        .apply(off(other, List.of()))
                        .pattern()
                        .changes())
                .hasSize(1);
        Pattern known = off(other, List.of(skirt, taken, other));
        assertThat(known.piece(front.id()).orElseThrow().darts().get(0).name()).isEqualTo("long dart");
        assertThat(known.piece(front.id()).orElseThrow().outline()).isEqualTo(front.outline());

        Mate mate = skirt.mates().get(0);
        Pattern trued = skirt.withChange(Trued.join(mate.name(), true).note())
                .withChange(Trued.notch(mate.name(), "A", front.id()).note());
        Pattern seam = Renaming.seam(trued, mate.name(), "flank");
        assertThat(seam.changes()).extracting(n -> n.settings().get("mate")).containsExactly("flank", "flank");
        Pattern notch = Renaming.notch(seam, front, "A", "top");
        assertThat(notch.changes().get(1).settings()).containsEntry("notch", "top");
        assertThat(notch.changes().get(0)).isEqualTo(seam.changes().get(0));
    }

    /** A name that is kept on several pieces goes on to be kept where it stays. */
    @Test
    void aKeptNameIsFollowedWhereverItIs() throws Exception {
        Pattern skirt = sample("skirt").pattern();
        Piece one = skirt.pieces().get(0);
        Piece two = skirt.pieces().get(1);
        ChangeNote note =
                new ChangeNote("seam", Map.of("level", "hip", "amount", "10", "keep.1", "waist", "keep.2", "side"));
        Pattern changed = skirt.withChange(note);
        Pattern first = Renaming.edge(changed, one, "side", "flank");
        assertThat(first.changes().get(0).settings().values())
                .containsExactlyInAnyOrder("hip", "10", "waist", "side", "flank");
        Pattern both = Renaming.edge(first, first.piece(two.id()).orElseThrow(), "side", "flank");
        assertThat(both.changes().get(0).settings().values()).containsExactlyInAnyOrder("hip", "10", "waist", "flank");
    }

    private static Alteration oneSided(Side side) {
        return Within.of(new Scope(Optional.empty(), side), SeamChange.at("hip", 12));
    }

    /** Pieces that a change parted are one again when it is switched off, whatever they and their seams are called since. */
    @Test
    void whatWasPartedIsOneAgainThoughItIsCalledOtherwise() throws Exception {
        int cases = 0;
        for (String name : List.of("skirt", "trousers")) {
            SvgFile file = sample(name);
            Pattern drawn = file.pattern();
            for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                Pattern parted = oneSided(side).apply(drawn).pattern();
                assertThat(parted.pieces()).hasSizeGreaterThan(drawn.pieces().size());
                for (Mate mate : parted.mates()) {
                    Pattern renamed = Renaming.seam(parted, mate.name(), "the seam");
                    holds(file, drawn, parted, renamed, name + " " + side + " " + mate.name());
                    boolean sided = mate.name().endsWith(" left") || mate.name().endsWith(" right");
                    if (sided) {
                        assertThat(off(renamed, List.of(drawn, parted, renamed)).mates())
                                .extracting(Mate::name)
                                .contains("the seam")
                                .doesNotHaveDuplicates();
                    }
                    cases++;
                }
                holds(file, drawn, parted, allOtherwise(parted), name + " " + side + " all edges and seams");
                // What is one again is called as the one that was drawn, whose copy goes.
                Piece own = parted.pieces().stream()
                        .filter(p -> p.side() != Side.BOTH)
                        .filter(p -> drawn.piece(p.id()).isPresent())
                        .findFirst()
                        .orElseThrow();
                Pattern called = parted.withPiece(
                        own.withName("Panel " + own.side().name().toLowerCase(Locale.ROOT)));
                holds(file, drawn, parted, called, name + " " + side + " a piece");
                assertThat(off(called, List.of(drawn, parted, called)).pieces())
                        .extracting(Piece::name)
                        .contains("Panel");
            }
        }
        assertThat(cases).isGreaterThan(15);
    }

    private static void holds(SvgFile file, Pattern drawn, Pattern parted, Pattern renamed, String what)
            throws Exception {
        for (Pattern back :
                List.of(off(renamed, List.of(drawn, parted, renamed)), off(reopened(file, renamed), List.of()))) {
            assertThat(back.pieces())
                    .as(what)
                    .extracting(Piece::id)
                    .containsExactlyElementsOf(
                            drawn.pieces().stream().map(Piece::id).toList());
            assertThat(back.mates()).as(what).hasSameSizeAs(drawn.mates());
            for (Piece was : drawn.pieces()) {
                assertThat(back.piece(was.id()).orElseThrow().outline())
                        .as(what)
                        .isEqualTo(was.outline());
            }
        }
    }
}
