package easewright.print.report;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.SeamChange;
import easewright.ease.EaseTables;
import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.print.Reading;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sketch of a changed piece shows its levels as they are measured. */
class PieceSketchTest {
    private static List<Mark> marks(String sample, String level, String piece) throws Exception {
        Pattern pattern =
                SvgFile.read(Path.of("sample-pieces", sample + ".svg")).pattern();
        Pattern changed = SeamChange.at(level, 20).apply(pattern).pattern();
        Reading before = Reading.of(pattern, EaseTables.standard());
        Reading after = Reading.of(changed, EaseTables.standard());
        Piece now = changed.pieces().stream()
                .filter(p -> p.name().equals(piece))
                .findFirst()
                .orElseThrow();
        return new PieceSketch(before, after, Words.english(LengthUnit.CM))
                .of(now, PieceSketch.HEIGHT)
                .orElseThrow()
                .picture()
                .marks();
    }

    private static List<Mark.Stroke> measured(List<Mark> marks) {
        return marks.stream()
                .filter(Mark.Stroke.class::isInstance)
                .map(Mark.Stroke.class::cast)
                .filter(s -> s.pen() == Pen.MEASURE)
                .toList();
    }

    private static Mark.Writing words(List<Mark> marks, String level) {
        return marks.stream()
                .filter(Mark.Writing.class::isInstance)
                .map(Mark.Writing.class::cast)
                .filter(w -> w.text().startsWith(level))
                .findFirst()
                .orElseThrow();
    }

    /** A waist lies along its edge, with a gap where a dart is closed, and a hip straight across. */
    @Test
    void aLevelAlongAnEdgeIsDrawnAlongIt() throws Exception {
        List<Mark.Stroke> lines = measured(marks("skirt", "hip", "Back"));
        assertThat(lines)
                .filteredOn(s -> s.run().stream().anyMatch(Cubic.class::isInstance))
                .as("the waist between two darts")
                .hasSize(3);
    }

    /** At the foot of a piece it is told below the piece, at its head above it, and across it on it. */
    @Test
    void whatALevelMeasuresIsToldOffThePaperWhereItIsAnEdge() throws Exception {
        List<Mark> bodice = marks("bodice", "bust", "Back");
        Box paper = paper(bodice);
        assertThat(words(bodice, "waist").at().y()).isGreaterThan(paper.maxY() - 1);
        assertThat(words(bodice, "bust").at().y()).isBetween(paper.minY(), paper.maxY());
        List<Mark> skirt = marks("skirt", "hip", "Front");
        assertThat(words(skirt, "waist").at().y()).isLessThan(paper(skirt).minY() + 4);
    }

    private static Box paper(List<Mark> marks) {
        return marks.stream()
                .filter(Mark.Fill.class::isInstance)
                .map(m -> ((Mark.Fill) m)
                        .loop().stream().map(Segment::box).reduce(Box::union).orElseThrow())
                .findFirst()
                .orElseThrow();
    }
}
