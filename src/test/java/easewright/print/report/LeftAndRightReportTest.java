package easewright.print.report;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.ease.EaseTables;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import easewright.print.MovedBy;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The report on a skirt that was made wider on one side. */
class LeftAndRightReportTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 17);

    private static Pattern skirt() throws Exception {
        return SvgFile.read(Path.of("sample-pieces", "skirt.svg")).pattern();
    }

    private static Pattern wider(Pattern pattern) throws Exception {
        return Within.of(new Scope(Optional.empty(), Side.RIGHT), SeamChange.at("hip", 20))
                .apply(pattern)
                .pattern();
    }

    private static String text(Pattern pattern) {
        Reading after = Reading.of(pattern, EaseTables.standard());
        Optional<Reading> before = Past.of(pattern).map(p -> Reading.of(p, EaseTables.standard()));
        ReportContent content = ReportContent.of(
                ReportOrder.of("Skirt", DAY), before, after, after.findings(), List.of(), Words.english(LengthUnit.CM));
        return HtmlReport.of(content)
                .replaceAll("(?s)<style>.*</style>|<[^>]*>", " ")
                .replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void theOldFoldIsNoSeamAndTheSidesAreTold() throws Exception {
        String text = text(wider(skirt()));
        String seams =
                text.substring(text.indexOf("Seams that are sewn together"), text.indexOf("What stayed unchanged"));
        assertThat(seams).contains("side seam left", "side seam right").doesNotContain("Front fold");
        assertThat(seams)
                .as("which pieces each side is of")
                .containsPattern(
                        "side seam left (Front|Back) left: [\\d.]+ cm( \u2192 [\\d.]+ cm)? (Front|Back) left: [\\d.]+ cm");
        assertThat(text).containsPattern("left 51 cm, right 53 cm|left [\\d.]+ cm, right [\\d.]+ cm");
        assertThat(text).contains("Tape Front left and Front right together at the fold");
        assertThat(text).contains("Front right, about", "Back right, about").doesNotContain("Front left, about");
        assertThat(text(skirt())).doesNotContainPattern("left [\\d.]+ cm, right");
    }

    /** Which of the sides was drawn makes no difference to what stayed. */
    @Test
    void whatStayedOfEitherSideIsTold() throws Exception {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Pattern changed = Within.of(new Scope(Optional.empty(), side), SeamChange.at("hip", 20))
                    .apply(skirt())
                    .pattern();
            String text = text(changed);
            String stayed = text.substring(text.indexOf("What stayed unchanged"));
            String name = "Front " + side.name().toLowerCase(Locale.ROOT);
            assertThat(stayed).contains(name + ": waist 19.25 cm, hem 25.5 cm, fold 60 cm ");
        }
    }

    @Test
    void allowancesAreCountedWhereTheyAreKnown() throws Exception {
        Pattern skirt = skirt();
        assertThat(text(skirt)).contains("Allowances are counted. Linings");
        Pattern bare = skirt.withPieces(skirt.pieces().stream()
                .map(p -> p.toBuilder()
                        .drawn(LineKind.STITCHING, 0)
                        .riders(List.of())
                        .edges(p.edges().stream()
                                .map(e -> new easewright.pattern.Edge(
                                        e.name(),
                                        e.role(),
                                        e.from(),
                                        e.to(),
                                        e.isProtected(),
                                        java.util.OptionalDouble.empty()))
                                .toList())
                        .build())
                .toList());
        assertThat(text(bare)).contains("No allowance is known").doesNotContain("Allowances are counted");
        Pattern some = bare.withPiece(skirt.pieces().get(0));
        assertThat(text(some)).contains("Allowances are counted where they are known. None is known of ");
    }

    /** A misfit is what the two lengths shown beside it leave, in the table as in the notes: here 2.15 mm. */
    @Test
    void theTableAndTheNoteTellOneMisfit() throws Exception {
        Words words = Words.english(LengthUnit.CM);
        String shown = words.of(
                "report.drift",
                java.util.Map.of("first", 615.56, "second", 617.71, "ease.signed", 0.0, "drift.signed", -2.15));
        assertThat(shown.replace('\u00a0', ' ')).isEqualTo("\u22120.21 cm");
        assertThat(words.signedFigure(words.off(615.56, 617.71, 0))).isEqualTo("\u22120.21");
        assertThat(words.sides(615.56, 617.71, 0))
                .isEqualTo(new Words.Sides("61.56\u00a0cm", "61.77\u00a0cm", "0\u00a0cm", "\u22120.21\u00a0cm"));
    }

    /** What moved by less than any figure shows is not marked, and of a side of which only the end moved only the end. */
    @Test
    void onlyWhatMovedVisiblyIsMarked() {
        Outline was =
                Outline.polygon(List.of(new Point(0, 0), new Point(200, 0), new Point(200, 600), new Point(0, 600)));
        Outline little =
                Outline.polygon(List.of(new Point(0, 0), new Point(200.07, 0), new Point(200, 600), new Point(0, 600)));
        assertThat(MovedBy.moved(was, little)).isFalse();
        Outline end = Outline.polygon(List.of(
                new Point(0, 0), new Point(205, 0), new Point(200, 60), new Point(200, 600), new Point(0, 600)));
        double marked =
                MovedBy.runs(was, end).stream().mapToDouble(s -> s.length()).sum();
        assertThat(marked).isBetween(60.0, 95.0);
    }
}
