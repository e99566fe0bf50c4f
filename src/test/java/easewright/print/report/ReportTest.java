package easewright.print.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.ease.EaseLine;
import easewright.ease.EaseTables;
import easewright.geom.Box;
import easewright.geom.Segment;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Cloth;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.SetAside;
import easewright.print.Cautions;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.Use;
import easewright.print.ink.Leaf;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.print.ink.Tone;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

class ReportTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 17);

    private static Pattern sample(String id) {
        try {
            return SvgFile.read(Path.of("sample-pieces", id + ".svg")).pattern();
        } catch (SvgProblem e) {
            throw new AssertionError(e);
        }
    }

    private static Pattern wider(Pattern pattern, double mm) {
        try {
            return SeamChange.at(
                            pattern.levels().get(pattern.levels().size() - 1).name(), mm)
                    .apply(pattern)
                    .pattern();
        } catch (Refusal e) {
            throw new AssertionError(e);
        }
    }

    private static ReportContent content(Pattern pattern, Words words, ReportOrder order) {
        EaseTables tables = EaseTables.standard();
        Reading after = Reading.of(pattern, tables);
        Optional<Reading> before = Past.of(pattern).map(p -> Reading.of(p, tables));
        return ReportContent.of(
                order, before, after, after.findings(), Cautions.of(before, after, Set.of(Use.CORDS)), words);
    }

    private static ReportContent content(Pattern pattern) {
        return content(pattern, Words.english(LengthUnit.CM), ReportOrder.of("Skirt", DAY));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return plain(new PDFTextStripper().getText(document));
        }
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ");
    }

    /** Who buys cloth reads one length, in the sentence and below both layouts. */
    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void theClothIsAsLongInThePictureAsInWords(LengthUnit unit) {
        ReportContent content =
                content(wider(sample("trousers"), 24), Words.english(unit), ReportOrder.of("Trousers", DAY));
        String html = plain(HtmlReport.of(content).replaceAll("(?s)<style>.*</style>|<[^>]*>", " "));
        Matcher need = java.util.regex.Pattern.compile("([\\d. /]+(?:in|cm|mm)) of cloth")
                .matcher(html);
        assertThat(need.find()).isTrue();
        String length = need.group(1).strip();
        Matcher was = java.util.regex.Pattern.compile("where it was ([\\d. /]+(?:in|cm|mm)) before")
                .matcher(html);
        assertThat(html)
                .contains(length + " Now, on cloth", (was.find() ? was.group(1) : length) + " Before, on cloth");
    }

    /** Whoever cuts would take a change that is switched off for made: what is missing without it stands on top. */
    @Test
    void whatIsMissingSinceAChangeIsSwitchedOffIsTold() {
        Pattern skirt = sample("skirt");
        double hip = Reading.of(skirt, EaseTables.standard()).sheet().lines().stream()
                .filter(l -> l.level().name().equals("hip"))
                .findFirst()
                .orElseThrow()
                .finished();
        Pattern wished = skirt.withBody(new Body("Ida", List.of(new BodyMeasure("Hip girth", "hip", hip - 20, ""))))
                .withWish("hip", 50);
        assertThat(paragraphs(content(wished))).as("nothing is switched off").doesNotContain("still missing");
        SetAside off = new SetAside(0, SeamChange.at("hip", 30).note());
        assertThat(paragraphs(content(wished.withAside(List.of(off)))))
                .contains("Switched off, and so still missing: hip 3\u00a0cm.");
        assertThat(paragraphs(content(wished.withWish("hip", 20).withAside(List.of(off)))))
                .doesNotContain("still missing", "still too much");
        SetAside in = new SetAside(0, SeamChange.at("hip", -15).note());
        assertThat(paragraphs(content(wished.withWish("hip", 5).withAside(List.of(in)))))
                .contains("Switched off, and so still too much: hip 1.5\u00a0cm.")
                .doesNotContain("still missing");
    }

    /** Both ways of setting it say the same. */
    @Test
    void tellsWhatWasDoneWhatItDidAndWhatStayed() throws Exception {
        ReportContent content = content(wider(sample("skirt"), 24));
        String html = plain(HtmlReport.of(content)
                .replaceAll("(?s)<style>.*</style>|<[^>]*>", " ")
                .replace("&quot;", "\""));
        String pdf = text(PdfReport.of(content, share -> {}));
        for (String said : List.of(html, pdf)) {
            assertThat(said)
                    .contains("Ease report: Skirt")
                    .contains("For Maren Holt, 17 May 2026")
                    .contains("ease 5 cm \u2192 7.4 cm")
                    .contains("hip: +2.4 cm all round")
                    .contains("hip 2 \u00d7 27 cm \u2192 27.6 cm")
                    .contains("61.6 cm \u2192 61.7 cm")
                    .contains("Waistband: the whole piece")
                    .contains("of cloth 140 cm wide")
                    .contains("Cords")
                    .contains("toile")
                    .contains("Threads 221")
                    .contains("+5 cm, 2.4 cm too much")
                    .contains("Garment: skirt, going by the marks.")
                    .doesNotContain("report.")
                    .doesNotContain("{");
        }
    }

    /** Who holds the report sees no notes: as on the first page of the pieces, what does not fit comes before all else. */
    @Test
    void whatIsNotSettledStandsAtItsTop() throws Exception {
        Pattern skirt = sample("skirt");
        Pattern open = SeamChange.at("waist", 20).apply(skirt).pattern();
        String html = plain(HtmlReport.of(content(open)).replaceAll("(?s)<style>.*</style>|<[^>]*>", " "));
        assertThat(html)
                .containsSubsequence(
                        "Not settled yet: put this right before you cut", "waistband", "Ease at each level");
        assertThat(text(PdfReport.of(content(open), share -> {})))
                .containsSubsequence("Not settled yet: put this right before you cut", "Ease at each level");
        assertThat(HtmlReport.of(content(skirt))).doesNotContain("Not settled yet");
    }

    @Test
    void anUnchangedPatternIsReportedToo() throws Exception {
        ReportContent content = content(sample("knit-top"));
        assertThat(HtmlReport.of(content)).contains("Nothing has been changed").doesNotContain("\u2192");
        assertThat(text(PdfReport.of(content, share -> {}))).contains("Nothing has been changed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"skirt", "bodice", "trousers", "knit-top"})
    void everySampleIsSetInsideItsPages(String id) {
        ReportContent content = content(
                wider(sample(id), 20),
                Words.english(LengthUnit.INCH),
                ReportOrder.of(id, DAY).on(easewright.print.sheet.Paper.LETTER));
        List<Leaf> leaves = PdfReport.leaves(content);
        assertThat(leaves).hasSizeBetween(2, 8);
        for (Leaf leaf : leaves) {
            for (Mark mark : leaf.layers().get(0).picture().marks()) {
                if (mark instanceof Mark.Writing w && w.turn() == 0) {
                    double width = Lettering.of(w.bold()).width(w.text(), w.size());
                    double left = switch (w.anchor()) {
                        case START -> w.at().x();
                        case MIDDLE -> w.at().x() - width / 2;
                        case END -> w.at().x() - width;
                    };
                    assertThat(left).as(w.text()).isGreaterThan(12);
                    assertThat(left + width).as(w.text()).isLessThan(leaf.width() - 12);
                    assertThat(w.at().y()).as(w.text()).isBetween(12.0, leaf.height() - 12);
                }
            }
        }
    }

    @Test
    void markupInNamesIsOnlyText() throws Exception {
        String nasty = "</svg><script>alert(1)</script>\"'&<b onload=x>";
        Pattern skirt = wider(sample("skirt"), 24);
        Piece piece = skirt.pieces().get(0);
        Pattern named = skirt.withPiece(piece.withName(nasty))
                .withBody(new Body(nasty, skirt.body().measures()));
        ReportOrder order = ReportOrder.of(nasty, DAY);
        ReportContent content = content(named, Words.english(LengthUnit.CM), order);
        String html = HtmlReport.of(content);
        assertThat(html).doesNotContain("<script").doesNotContain("<b ").contains("&lt;script&gt;");
        assertThat(html).contains("default-src 'none'");
        // Its pictures are whole: each is well-formed by itself.
        int count = 0;
        for (int at = html.indexOf("<svg"); at >= 0; at = html.indexOf("<svg", at + 1)) {
            String svg = html.substring(at, html.indexOf("</svg>", at) + 6);
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
            count++;
        }
        assertThat(count).isGreaterThan(5);
        assertThat(text(PdfReport.of(content, share -> {}))).contains("<script>alert(1)</script>");
    }

    @Test
    void clothIsComparedAndShrinkageAdded() {
        Pattern skirt = sample("skirt");
        Pattern large = wider(skirt, 100);
        String folded = paragraphs(content(skirt));
        assertThat(folded).contains("on folded cloth");
        Words words = Words.english(LengthUnit.CM);
        String narrow =
                paragraphs(content(large, words, ReportOrder.of("s", DAY).onCloth(630, false)));
        assertThat(narrow).contains("no longer fit on the folded cloth").contains("on cloth opened out");
        assertThat(paragraphs(content(large, words, ReportOrder.of("s", DAY).onCloth(250, false))))
                .contains("do not fit on cloth 25\u00a0cm wide");
        Cloth shrinks = new Cloth(
                false, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(10));
        String washed = paragraphs(content(skirt.withCloth(shrinks)));
        assertThat(washed).contains("shrinks lengthwise by 10\u00a0%").contains("90\u00a0cm of cloth");
        assertThat(folded).contains("81\u00a0cm of cloth");
    }

    /** Paragraphs and captions. */
    private static String paragraphs(ReportContent content) {
        StringBuilder said = new StringBuilder();
        for (Part part : content.parts()) {
            if (part instanceof Part.Paragraph p) {
                said.append(p.text()).append('\n');
            } else if (part instanceof Part.Figures f) {
                f.figures().forEach(figure -> said.append(figure.caption()).append('\n'));
            }
        }
        return said.toString();
    }

    @Test
    void aBarePatternWithoutLevelsIsReported() {
        Pattern bare = Pattern.bare(sample("skirt").pieces(), sample("skirt").scale());
        assertThat(HtmlReport.of(content(bare.withLevels(List.<Level>of())))).contains("No level is marked");
    }

    /** A diamond is the ease now and a ring the wish, as on the bars of the window; both stand where their figures are. */
    @Test
    void oneSignMeansOneThing() {
        // 5 cm at the hip, as wished, and 4 cm more.
        Reading after = Reading.of(wider(sample("skirt"), 40), EaseTables.standard());
        List<EaseLine> lines = after.sheet().lines();
        Part.Figure card =
                LevelCard.of(List.of(), lines, Words.english(LengthUnit.CM)).get(lines.size() - 1);
        List<Mark> marks = card.picture().marks();
        double zero = marks.stream()
                .filter(m -> m instanceof Mark.Stroke s
                        && s.pen() == Pen.EDGE
                        && s.run().size() == 1)
                .mapToDouble(m -> ((Mark.Stroke) m).run().get(0).start().x())
                .min()
                .orElseThrow();
        double diamond = marks.stream()
                .filter(m -> m instanceof Mark.Fill f && f.tone() == Tone.BLACK)
                .mapToDouble(m -> middle(((Mark.Fill) m).loop()))
                .findFirst()
                .orElseThrow();
        double ring = marks.stream()
                .filter(m -> m instanceof Mark.Stroke s && s.pen() == Pen.RING)
                .mapToDouble(m -> middle(((Mark.Stroke) m).run()))
                .findFirst()
                .orElseThrow();
        assertThat((ring - zero) / (diamond - zero)).isCloseTo(5.0 / 9, within(1e-4));
    }

    /** An ease and a wish of 5 cm count as meeting the least of 2 in, and stand on its line as on the bars of the window. */
    @Test
    void whatCountsAsMetIsNotDrawnShortOfTheLeast() {
        Pattern skirt = sample("skirt");
        List<EaseLine> lines =
                Reading.of(skirt, EaseTables.standard().fitting(skirt)).sheet().lines();
        List<Mark> marks = LevelCard.of(lines, lines, Words.english(LengthUnit.CM))
                .get(lines.size() - 1)
                .picture()
                .marks();
        double least = marks.stream()
                .filter(m -> m instanceof Mark.Stroke s
                        && s.pen() == Pen.GHOST
                        && s.run().size() == 1)
                .mapToDouble(m -> ((Mark.Stroke) m).run().get(0).start().x())
                .findFirst()
                .orElseThrow();
        List<Double> drawn = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Fill f && f.tone() == Tone.BLACK) {
                drawn.add(middle(f.loop()));
            } else if (mark instanceof Mark.Stroke s && s.pen() == Pen.RING) {
                drawn.add(middle(s.run()));
            } else if (mark instanceof Mark.Fill f && f.tone() != Tone.LIGHT) {
                drawn.add(around(f.loop()).maxX());
            }
        }
        assertThat(drawn)
                .as("both bars, the diamond and the ring")
                .hasSize(4)
                .allSatisfy(x -> assertThat(x).isCloseTo(least, within(1e-6)));
    }

    private static Box around(List<Segment> run) {
        return Box.around(run.stream().map(Segment::start).toList());
    }

    private static List<String> written(Part.Figure figure) {
        return figure.picture().marks().stream()
                .filter(Mark.Writing.class::isInstance)
                .map(m -> ((Mark.Writing) m).text().replace('\u00a0', ' '))
                .toList();
    }

    /** The places on the bars have their figures, and the rings a length to hold against them. */
    @Test
    void theBarsAndTheRingsSayHowLargeTheyAre() {
        Reading after = Reading.of(wider(sample("skirt"), 40), EaseTables.standard());
        List<EaseLine> lines = after.sheet().lines();
        List<Part.Figure> cards = LevelCard.of(List.of(), lines, Words.english(LengthUnit.CM));
        assertThat(cards).hasSize(lines.size() + 1);
        assertThat(written(cards.get(lines.size() - 1)))
                .contains("wish 5 cm", "0")
                .anyMatch(t -> t.startsWith("least "));
        Part.Figure key = cards.get(lines.size());
        assertThat(written(key)).contains("10 cm across the rings");
        assertThat(key.words()).contains("diamond at the ease now", "10\u00a0cm across the rings");
        double largest = lines.stream().mapToDouble(EaseLine::finished).max().orElseThrow();
        double ring = cards.stream()
                .limit(lines.size())
                .flatMap(c -> c.picture().marks().stream())
                .filter(m -> m instanceof Mark.Stroke s
                        && s.pen() == Pen.EDGE
                        && s.run().size() > 1)
                .map(m -> around(((Mark.Stroke) m).run()))
                .filter(box -> Math.abs(box.width() - box.height()) < 0.1)
                .mapToDouble(Box::width)
                .max()
                .orElseThrow();
        double bar = key.picture().marks().stream()
                .filter(m -> m instanceof Mark.Stroke s
                        && s.pen() == Pen.EDGE
                        && s.run().size() == 1)
                .map(m -> ((Mark.Stroke) m).run().get(0))
                .mapToDouble(s -> Math.abs(s.end().x() - s.start().x()))
                .max()
                .orElseThrow();
        assertThat(bar / ring).isCloseTo(100 / (largest / Math.PI), within(0.01));
    }

    /** A wish that lies beyond the bars stands on the scale that they stand on, and what cannot be seen is not explained. */
    @Test
    void theScaleGoesToTheWishAndOnlyWhatIsSeenIsExplained() {
        Pattern skirt = sample("skirt");
        Words words = Words.english(LengthUnit.CM);
        List<EaseLine> before = Reading.of(skirt, EaseTables.standard()).sheet().lines();
        for (double by : List.of(2.0, 80.0)) {
            Pattern made = wider(skirt.withWish("hip", 180), by);
            List<EaseLine> after =
                    Reading.of(made, EaseTables.standard()).sheet().lines();
            List<Part.Figure> cards = LevelCard.of(before, after, words);
            Part.Figure hip = cards.get(after.size() - 1);
            Box sign = strokes(hip, Pen.RING).findFirst().orElseThrow();
            Box scale = strokes(hip, Pen.MEASURE).findFirst().orElseThrow();
            assertThat(scale.maxX()).isCloseTo(sign.centre().x(), within(0.1));
            assertThat(scale.minY()).isCloseTo(sign.centre().y(), within(0.1));
            boolean isSeen = strokes(hip, Pen.GHOST).anyMatch(b -> b.height() > 10 && b.width() > 10);
            assertThat(isSeen).isEqualTo(by > 10);
            Part.Figure key = cards.get(after.size());
            assertThat(written(key).contains("the garment before the change")).isEqualTo(isSeen);
            assertThat(key.words().contains("before the change")).isEqualTo(isSeen);
        }
    }

    private static Stream<Box> strokes(Part.Figure figure, Pen pen) {
        return figure.picture().marks().stream()
                .filter(m -> m instanceof Mark.Stroke s && s.pen() == pen)
                .map(m -> ((Mark.Stroke) m).run())
                .map(run -> Box.around(
                        run.stream().flatMap(s -> Stream.of(s.start(), s.end())).toList()));
    }

    /** Signs that touch are read as one. */
    @Test
    void theRowsOfTheLegendStandApart() {
        Pattern skirt = sample("skirt");
        List<EaseLine> before = Reading.of(skirt, EaseTables.standard()).sheet().lines();
        List<EaseLine> lines =
                Reading.of(wider(skirt, 80), EaseTables.standard()).sheet().lines();
        Part.Figure key =
                LevelCard.of(before, lines, Words.english(LengthUnit.CM)).get(lines.size());
        List<Box> signs = key.picture().marks().stream()
                .filter(m -> !(m instanceof Mark.Writing))
                .map(m -> m instanceof Mark.Fill f ? f.loop() : ((Mark.Stroke) m).run())
                .filter(run -> run.size() > 1)
                .map(run -> around(run))
                .toList();
        assertThat(signs).hasSizeGreaterThan(4);
        for (Box one : signs) {
            assertThat(signs)
                    .filteredOn(o -> o != one)
                    .noneMatch(o -> o.grown(0.6).overlaps(one));
        }
    }

    private static double middle(List<Segment> around) {
        return around.stream().mapToDouble(s -> s.start().x()).average().orElseThrow();
    }
}
