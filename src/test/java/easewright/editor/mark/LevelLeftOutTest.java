package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.editor.model.Notes;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.geom.Point;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A girth of a nest that leaves out a piece, and the press that puts the level there. */
class LevelLeftOutTest {
    private final Session session = new Session(LengthUnit.CM, false);
    private Pattern drafted;

    @BeforeEach
    void openTheNestAndChooseTheHip() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        session.open(Opened.of(new OpenFile(SvgFile.read(nest), Optional.of(nest), "skirt-sizes.svg")));
        session.chooseLevel("hip");
        drafted = session.desk().pattern();
    }

    private void without(String... pieces) {
        Pattern now = drafted;
        for (String piece : pieces) {
            now = LevelEdits.takeOff(now, piece, "hip");
        }
        session.edit(now);
    }

    private EaseRow hip() {
        return EasePage.of(session.desk()).rows().stream()
                .filter(r -> r.name().equals("hip"))
                .findFirst()
                .orElseThrow();
    }

    private double height(Pattern pattern, String piece) {
        return pattern.piece(piece)
                .flatMap(p -> p.level("hip"))
                .flatMap(LevelMark::through)
                .map(Point::y)
                .orElseThrow();
    }

    @Test
    void theGirthSaysWhichPieceItLeavesOutUntilTheLevelIsPutThere() {
        assertThat(hip().verdict()).doesNotContain("Without");
        without("skirt-back-10");
        assertThat(hip().verdict()).isEqualTo("Without Back 10: see Marks, Levels.");
        assertThat(hip().standing()).isEqualTo(EaseRow.Standing.UNKNOWN);
        assertThat(hip().missing()).isEmpty();
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        assertThat(hip().verdict()).as("also in a trial").contains("Without Back 10");
        session.leave();
        Notes.Note note = Notes.of(session.desk()).stream()
                .filter(n -> n.level().isPresent())
                .findFirst()
                .orElseThrow();
        assertThat(note.level()).contains("hip");
        assertThat(note.piece()).contains("skirt-back-10");
        session.edit(LevelLeftOut.filled(session.desk().pattern(), "hip"));
        assertThat(hip().verdict()).doesNotContain("Without");
        assertThat(leftOut().isAny()).isFalse();
        // The draft has it there, 205 mm below the side of the waist on both.
        assertThat(height(session.desk().pattern(), "skirt-back-10"))
                .isCloseTo(height(drafted, "skirt-back-10"), within(1.5));
    }

    private LevelLeftOut leftOut() {
        return LevelElsewhere.of(session.desk()).get("hip").leftOut();
    }

    @Test
    void whatIsSewnToNothingIsToldByTheOtherSizes() {
        session.edit(drafted.withMates(List.of()));
        drafted = session.desk().pattern();
        without("skirt-back-12", "skirt-front-14", "skirt-back-14");
        assertThat(leftOut().pieces()).containsExactly("Back 12");
        assertThat(hip().verdict()).as("of size 10").doesNotContain("Without");
        session.chooseSize("12");
        assertThat(hip().verdict()).contains("Without Back 12");
        Pattern filled = LevelLeftOut.filled(session.desk().pattern(), "hip");
        assertThat(height(filled, "skirt-back-12")).isCloseTo(height(drafted, "skirt-back-12"), within(1e-6));
        assertThat(filled.pieces().stream().filter(p -> p.size().equals(Optional.of("14"))))
                .extracting(Piece::levels)
                .isEqualTo(session.desk().pattern().pieces().stream()
                        .filter(p -> p.size().equals(Optional.of("14")))
                        .map(Piece::levels)
                        .toList());
        GarmentMeasures measures = Measures.of(filled);
        assertThat(measures.inSize("12").girth("hip").orElseThrow().finished())
                .isCloseTo(
                        Measures.of(drafted)
                                .inSize("12")
                                .girth("hip")
                                .orElseThrow()
                                .finished(),
                        within(0.01));
    }
}
