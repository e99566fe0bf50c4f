package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What another size would change, beside what a change at one place does. */
class SizeUpSessionTest extends SkirtSession {
    @Test
    void aSizeUpChangesWhatTheLocalChangeLeavesAlone() {
        assertThat(SizeWords.of(session.desk()).lines()).isEmpty();
        session.want(wanted().withAmount(40));
        List<SizeWords.Line> lines = SizeWords.of(session.desk()).lines();
        SizeWords.Line waist = lines.stream()
                .filter(l -> l.name().contains("waist"))
                .findFirst()
                .orElseThrow();
        assertThat(waist.here().same()).isTrue();
        assertThat(waist.size().same()).isFalse();
        assertThat(lines).allSatisfy(l -> assertThat(l.name()).doesNotContain("editor."));
    }

    /** Of several changes none is left out: the person chooses the level, and what was asked for is no drift anywhere. */
    @Test
    void aSizeUpIsComparedAtTheLevelThatIsChosen() {
        session.setUnit(LengthUnit.INCH);
        session.want(wanted().withAmount(48));
        session.keep();
        session.chooseLevel("waist");
        session.want(wanted().withAmount(12));
        session.keep();
        SizeWords atWork = SizeWords.of(session.desk());
        assertThat(atWork.levels()).containsExactly("waist", "hip");
        assertThat(atWork.level()).contains("waist");
        SizeWords hip = SizeWords.of(session.desk(), Optional.of("hip"));
        assertThat(hip.intro()).contains("to a hip girth of");
        for (SizeWords shown : List.of(atWork, hip)) {
            assertThat(shown.lines())
                    .filteredOn(SizeWords.Line::asked)
                    .extracting(SizeWords.Line::name)
                    .containsExactly("waist girth", "hip girth");
            assertThat(shown.lines())
                    .as("in inches all end at the right")
                    .allMatch(l -> l.here().words().matches(".*\\w")
                            && l.size().words().matches(".*\\w"));
        }
        session.want(Wanted.at("knee", LevelKind.OTHER));
        assertThat(SizeWords.of(session.desk()).level()).as("changed most").contains("hip");
        assertThat(SizeWords.of(session.desk(), Optional.of("knee")).level())
                .as("not changed")
                .contains("hip");
    }

    /** The two ways are told as what they are: larger or smaller, and nothing where no girth was asked for. */
    @Test
    void theOtherSizeIsLargerOrSmallerAsTheChangeIs() {
        session.want(wanted().withAmount(40));
        SizeWords wider = SizeWords.of(session.desk());
        assertThat(wider.larger()).isTrue();
        assertThat(wider.other()).isEqualTo("Size up");
        assertThat(wider.lines()).allMatch(l -> l.said().contains(" Size up: "));
        assertThat(wider.intro()).contains("larger").doesNotContain("smaller", "\u2212");
        session.want(wanted().withAmount(-20));
        SizeWords tighter = SizeWords.of(session.desk());
        assertThat(tighter.larger()).isFalse();
        assertThat(tighter.other()).isEqualTo("Size down");
        assertThat(tighter.intro()).contains("smaller").doesNotContain("larger", "\u2212");
        assertThat(tighter.lines()).hasSameSizeAs(wider.lines());
    }

    /** What was opened may know nothing of the level yet: it is marked first, and then changed. */
    @Test
    void aSizeUpIsComparedWithTheMarksThatWereMadeFirst() {
        Pattern pattern = session.desk().pattern();
        List<Level> levels = new ArrayList<>(pattern.levels());
        levels.add(Level.of("low hip", LevelKind.HIP));
        Pattern marked = pattern.withLevels(levels);
        for (Piece piece : pattern.pieces()) {
            Optional<Point> hip = piece.level("hip").flatMap(LevelMark::through);
            if (hip.isPresent()) {
                List<LevelMark> marks = new ArrayList<>(piece.levels());
                marks.add(LevelMark.through("low hip", hip.get().plus(new Point(0, 30))));
                marked = marked.withPiece(piece.withLevels(marks));
            }
        }
        session.edit(marked);
        session.chooseLevel("low hip");
        session.want(wanted().withAmount(20));
        session.keep();
        assertThat(SizeWords.of(session.desk()).lines()).isNotEmpty();
    }
}
