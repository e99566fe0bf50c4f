package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Proposal;
import easewright.alter.Taper;
import easewright.alter.Truing;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is made true in a nest: the size at work and those ticked beside it. */
class TrueInSizesTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openANestThatIsUntrueInEverySize() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        session.open(Opened.of(new OpenFile(SvgFile.read(nest), Optional.of(nest), "skirt-sizes.svg")));
        session.chooseLevel("hip");
        want(w -> w.withCarry(false)
                .withTaper(Taper.STRAIGHT)
                .withAlsoIn(Set.of("12", "14"))
                .withAmount(60));
        session.keep();
        want(w -> w.withAlsoIn(Set.of()));
        assertThat(Truing.proposals(session.desk().pattern()))
                .extracting(p -> p.size().orElseThrow())
                .contains("10", "12", "14");
    }

    private void want(UnaryOperator<Wanted> step) {
        session.want(step.apply(session.desk().wanted().orElseThrow()));
    }

    private long untrue(String... sizes) {
        return Truing.proposals(session.desk().pattern()).stream()
                .map(Proposal::size)
                .filter(s -> List.of(sizes).contains(s.orElseThrow()))
                .count();
    }

    private static List<Piece> of(Pattern pattern, String size) {
        return pattern.pieces().stream()
                .filter(p -> p.size().equals(Optional.of(size)))
                .toList();
    }

    @Test
    void onlyTheSizeAtWorkAndThoseTickedAreListedAndTheOthersNamed() {
        TrueWork work = TrueWork.of(session.desk());
        assertThat(work.places()).hasSize((int) untrue("10"));
        assertThat(work.others()).containsExactly("12", "14");
        assertThat(Notes.untrue(session.desk())).isEqualTo(untrue("10"));
        want(w -> w.withAlsoIn(Set.of("14")));
        work = TrueWork.of(session.desk());
        assertThat(work.places()).hasSize((int) untrue("10", "14"));
        assertThat(work.others()).containsExactly("12");
        assertThat(Notes.untrue(session.desk())).isEqualTo(untrue("10", "14"));
        session.chooseSize("12");
        assertThat(TrueWork.of(session.desk()).places())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.pointed()
                                .flatMap(at -> session.desk().pattern().piece(at.piece()))
                                .flatMap(Piece::size)
                                .orElseThrow())
                        .isIn("12", "14"));
    }

    @Test
    void trueAllLeavesTheOtherSizesAsTheyAreInThePatternAndInTheFile() throws Exception {
        want(w -> w.withAlsoIn(Set.of("14")));
        Pattern before = session.desk().pattern();
        Pattern made = TrueWork.all(before, session.desk().sizesTaking(), true);
        for (String size : List.of("10", "14")) {
            assertThat(of(made, size)).isNotEqualTo(of(before, size));
        }
        List<Piece> left = of(before, "12");
        for (int i = 0; i < left.size(); i++) {
            assertThat(of(made, "12").get(i)).isSameAs(left.get(i));
        }
        SvgFile file = session.desk().file().orElseThrow().svg();
        byte[] was = file.write(before, "was.svg");
        byte[] is = file.write(made, "is.svg");
        for (Piece piece : before.pieces()) {
            boolean same = made.pieces().contains(piece);
            assertThat(drawn(is, piece).equals(drawn(was, piece)))
                    .as(piece.name())
                    .isEqualTo(same);
        }
    }

    /** The tag of the line in a file, from its first sign to its last. */
    private static String drawn(byte[] svg, Piece piece) {
        Matcher tag = java.util.regex.Pattern.compile("<path[^>]*\\bid=\"" + piece.id() + "\"[^>]*>")
                .matcher(new String(svg, StandardCharsets.UTF_8));
        assertThat(tag.find()).as(piece.id()).isTrue();
        return tag.group();
    }
}
