package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.EaseTables;
import easewright.editor.mark.LevelEdits;
import easewright.pattern.Body;
import easewright.pattern.Cloth;
import easewright.pattern.LevelKind;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EasePageTest {
    private static final Pattern MARK = Pattern.compile("\\[(\\d+)\\]");

    private final Session session = new Session(LengthUnit.CM, false);

    private EasePage open(String garment) throws Exception {
        session.open(OpenedSample.of(garment));
        return page();
    }

    private EasePage page() {
        return EasePage.of(session.desk());
    }

    private EasePage as(String garment) {
        session.setGarment(garment);
        return page();
    }

    private Garments garments() {
        return Garments.of(session.desk().pattern(), EaseTables.standard());
    }

    private List<String> sources(EasePage page) {
        return page.foot().lines(session.desk().words());
    }

    private EaseRow row(EasePage page, String level) {
        return page.rows().stream()
                .filter(r -> r.level().name().equals(level))
                .findFirst()
                .orElseThrow();
    }

    /** A band that counts with the skirt it is sewn on is asked about beside its girth, and among the notes with a press. */
    @Test
    void aBandThatCountsAsWellIsAskedAboutBesideItsGirth() throws Exception {
        open("skirt");
        assertThat(row(page(), "waist").verdict()).doesNotContain("sewn over");
        session.edit(LevelEdits.counts(session.desk().pattern(), "skirt-band", "waist", true));
        assertThat(row(page(), "waist").verdict()).isEqualTo("Sewn over others: Waistband? See Notes.");
        assertThat(row(page(), "hip").verdict()).doesNotContain("sewn over");
        Notes.Note note = Notes.of(session.desk()).stream()
                .filter(n -> !n.layerAt().isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(note.piece()).contains("skirt-band");
        assertThat(note.layerAt()).containsExactly("waist");
        session.edit(LevelEdits.leftOut(session.desk().pattern(), "skirt-band", note.layerAt()));
        assertThat(row(page(), "waist").verdict()).doesNotContain("sewn over");
        assertThat(Notes.of(session.desk())).noneMatch(n -> !n.layerAt().isEmpty());
    }

    /** Beside the girth itself, before anybody has typed a body girth. */
    @Test
    void halvesCountedOnceAreToldBesideTheirGirth() throws Exception {
        open("skirt");
        var unknown = session.desk().pattern().withBody(Body.UNKNOWN);
        session.edit(unknown);
        assertThat(row(page(), "hip").verdict()).doesNotContain("Half a garment");
        session.edit(unknown.withPieces(unknown.pieces().stream()
                .map(p -> p.toBuilder().cut(1, false).build())
                .toList()));
        assertThat(row(page(), "hip").verdict()).startsWith("Half a garment?");
        assertThat(row(page(), "hip").standing()).isEqualTo(EaseRow.Standing.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource({"skirt, skirt", "trousers, trousers", "bodice, dress", "knit-top, top"})
    void whatTheMarksShowIsFoundAndOnlyItsTablesSpeak(String sample, String garment) throws Exception {
        EasePage page = open(sample);
        assertThat(garments().chosen()).isEqualTo(Garments.BY_MARKS);
        assertThat(garments().marks().words()).contains(garment);
        assertThat(garments().said(Garments.BY_MARKS, session.desk().words())).contains(garment);
        assertThat(garments().choices())
                .startsWith(Garments.BY_MARKS)
                .contains(garment)
                .endsWith(Garments.NONE);
        assertThat(sources(page)).noneMatch(s -> s.contains("leggings") || s.contains("coat"));
    }

    @Test
    void whatTheGarmentIsSaidToBeCanBeUndoneAndComesBackFromTheFile() throws Exception {
        open("bodice");
        EasePage jacket = as("jacket");
        assertThat(sources(jacket)).anyMatch(s -> s.contains("for jacket"));
        assertThat(session.desk().reading().sheet().garment().words()).containsExactly("jacket");
        SvgFile written = SvgFile.read(
                session.desk().file().orElseThrow().svg().write(session.desk().pattern()), "again.svg");
        session.undo();
        assertThat(garments().chosen()).isEqualTo(Garments.BY_MARKS);
        assertThat(sources(page())).noneMatch(s -> s.contains("for jacket"));
        session.open(Opened.of(new OpenFile(written, Optional.empty(), "again.svg")));
        assertThat(garments().chosen()).isEqualTo("jacket");
        assertThat(sources(page())).isEqualTo(sources(jacket));
        as(Garments.BY_MARKS);
        assertThat(session.desk().pattern().garment()).isEmpty();
    }

    @Test
    void aGarmentThatNoTableNamesIsKeptAndSaid() throws Exception {
        open("skirt");
        as("kilt");
        assertThat(garments().choices()).contains("kilt");
        assertThat(session.desk().reading().findings()).anyMatch(f -> f.code().equals("garment-without-table"));
        as(Garments.NONE);
        assertThat(session.desk().reading().findings()).noneMatch(f -> f.code().equals("garment-without-table"));
        assertThat(sources(page())).noneMatch(s -> s.contains("for skirt"));
    }

    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice", "knit-top"})
    void everyWordLeadsToItsSourceAndEachSourceStandsOnce(String sample) throws Exception {
        EasePage page = open(sample);
        assertThat(new HashSet<>(sources(page))).hasSameSizeAs(sources(page));
        for (EaseRow row : page.rows()) {
            for (List<String> said : List.of(row.classes(), row.minimums(), row.stretch())) {
                for (String each : said) {
                    Matcher mark = MARK.matcher(each);
                    assertThat(mark.find()).as(each).isTrue();
                    assertThat(sources(page).get(Integer.parseInt(mark.group(1)) - 1))
                            .startsWith(mark.group());
                    assertThat(each).containsPattern("\\d").doesNotContain("{", "editor.");
                }
            }
        }
    }

    @Test
    void tablesOfOneSourceDoNotContradictEachOther() throws Exception {
        EasePage page = open("knit-top");
        assertThat(row(page, "bust").classes()).hasSize(1);
        assertThat(row(page, "hip").classes()).isEmpty();
        assertThat(row(as("leggings"), "hip").classes()).hasSize(1);
        assertThat(row(as(Garments.NONE), "bust").classes()).isEmpty();
    }

    /** The sample skirt has 5 cm at the hip, where sources ask for 2 in. */
    @Test
    void aFigureMissedByATapesBreadthIsSaidToCountAsMet() throws Exception {
        assertThat(open("skirt").nearlyMet()).isTrue();
        assertThat(open("knit-top").nearlyMet()).isFalse();
    }

    @Test
    void aKnitWhoseStretchIsKnownSaysWhatTheEaseAsksOfIt() throws Exception {
        assertThat(row(open("knit-top"), "bust").stretch()).hasSize(2);
        assertThat(row(page(), "waist").stretch()).hasSize(1);
        Cloth cloth = session.desk().pattern().cloth();
        session.setCloth(new Cloth(true, OptionalDouble.empty(), cloth.along(), cloth.recovery(), cloth.shrinkage()));
        assertThat(row(page(), "bust").stretch()).isEmpty();
        assertThat(row(open("skirt"), "hip").stretch()).isEmpty();
    }

    @Test
    void aBodyInAnotherUnitIsAskedAbout() throws Exception {
        open("skirt");
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(9850), "Hip girth");
        EaseRow row = row(page(), "hip");
        assertThat(row.standing()).isEqualTo(EaseRow.Standing.UNLIKELY);
    }

    @Test
    void whereSourcesDifferBothAreHeard() throws Exception {
        open("skirt");
        var hip = session.desk().pattern().level("hip").orElseThrow();
        session.setWish("hip", OptionalDouble.empty());
        session.setBody(hip, OptionalDouble.of(1010), "Hip girth");
        EaseRow row = row(page(), "hip");
        assertThat(row.standing()).isEqualTo(EaseRow.Standing.DISPUTED);
        assertThat(row.verdict()).contains("5.1\u00a0cm").contains("Sources differ");
        assertThat(row.classes()).anyMatch(c -> c.startsWith("\u201cclose-fitting\u201d"));
    }

    /** A wish may be less than all sources ask for: it is met none the less, and what they ask for is said below it. */
    @Test
    void aWishMetWithLessThanSourcesAskForIsToldAsSuch() throws Exception {
        open("skirt");
        var hip = session.desk().pattern().level("hip").orElseThrow();
        assertThat(row(page(), "hip").verdict()).isEqualTo("\u2713 as wished");
        session.setBody(hip, OptionalDouble.of(1040), "Hip girth");
        session.setWish("hip", OptionalDouble.of(10));
        EaseRow row = row(page(), "hip");
        assertThat(row.standing()).isEqualTo(EaseRow.Standing.MET);
        assertThat(row.verdict()).isEqualTo("\u2713 as wished");
        assertThat(row.brief()).startsWith("1\u00a0cm is ").endsWith(" ask for 5.1\u00a0cm or more");
    }

    /** Less than the lowest class of one table and as much as others ask for: that table is named, and nothing is missing. */
    @Test
    void belowOneTableIsNoShortfall() throws Exception {
        EaseRow waist = row(open("skirt"), "waist");
        assertThat(waist.verdict()).isEqualTo("\u2713 as wished");
        assertThat(waist.brief())
                .matches("2\\.5\u00a0cm is below the 3\u00a0cm \u201cwearing ease\u201d of\u00a0\\[\\d+]");
        assertThat(waist.scale().shortOf().orElseThrow()).isLessThan(25);
    }

    /** The sample skirt: 5 cm at the hip, where each source lists 5.1 cm or a range that begins there. */
    @Test
    void aFigureThatCountsAsMetIsSaidToInItsList() throws Exception {
        open("skirt");
        assertThat(row(page(), "hip").told(session.desk().words()))
                .contains("0.08\u00a0cm under 2\u00a0in (5.08\u00a0cm): counts as met.")
                .noneMatch(line -> line.contains("smallest"));
        session.setUnit(LengthUnit.INCH);
        assertThat(row(page(), "hip").near()).isEqualTo("1/16\u00a0in under 2\u00a0in: counts as met.");
    }

    /** Who divides the ease by the body, as both are shown, finds the share that is told: 1 15/16 of 39 3/8 in. */
    @Test
    void inInchesTheShareOfTheBodyIsAWholeNumber() throws Exception {
        for (String garment : List.of("skirt", "knit-top", "bodice", "trousers")) {
            open(garment);
            session.setUnit(LengthUnit.INCH);
            for (EaseRow row : page().rows()) {
                if (!row.ease().isEmpty()) {
                    double ease = Lengths.parse(row.ease(), LengthUnit.INCH);
                    double body = Lengths.parse(row.body(), LengthUnit.INCH);
                    assertThat(row.percent().replace('\u2212', '-').replace('\u00a0', ' '))
                            .isEqualTo("now %.0f %% of body", Math.rint(ease / body * 100) + 0.0);
                }
            }
        }
    }

    /** "2 to" at the end of a line, or a dot there, has to be read twice. */
    @Test
    void aRangeAndWhatPartsTwoSourcesStandOnOneLine() throws Exception {
        open("skirt");
        session.setUnit(LengthUnit.INCH);
        assertThat(row(page(), "hip").minimums()).anyMatch(m -> m.startsWith("2\u00a0to\u00a04\u00a0in"));
        assertThat(row(page(), "hip").told(session.desk().words())).anyMatch(l -> l.contains(" \u00b7\u00a02"));
    }

    /** Sources ask for a range each; where they begin at different figures it is said which of them the bar shows. */
    @Test
    void theSmallestOfSeveralFiguresIsSaidToBeIt() throws Exception {
        EaseRow waist = row(open("trousers"), "waist");
        assertThat(waist.told(session.desk().words()))
                .anyMatch(line -> line.startsWith(
                        "To move in comfort, sources ask for at least: 2.5\u00a0to\u00a03.8\u00a0cm (skirt, trousers)"))
                .contains("\u201cleast 1.3\u201d on the bar is the smallest of these.");
    }

    /** What the cloth has to give is told beside a word for the ease as well as where no source has one. */
    @Test
    void everyEaseBelowTheBodySaysHowFarTheClothIsStretched() throws Exception {
        EasePage page = open("knit-top");
        assertThat(row(page, "bust").brief())
                .startsWith(row(page, "bust").called())
                .contains("stretched by 3.6\u00a0%");
        for (EaseRow row : page.rows()) {
            if (row.ease().startsWith("\u2212")) {
                assertThat(row.brief()).as(row.name()).contains("stretched by");
            }
        }
    }

    /** A word of a table stands behind the number that it is for, once. */
    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice", "knit-top"})
    void theWordsStandBehindTheirNumber(String sample) throws Exception {
        for (EaseRow row : open(sample).rows()) {
            if (!row.classes().isEmpty()) {
                assertThat(row.called()).matches("[\u2212\\d.]+\u00a0cm is .*\\[\\d+]");
                assertThat(row.brief()).contains(row.called());
                assertThat(row.told(session.desk().words())).doesNotContain(row.called());
            }
        }
    }

    /** Nothing measures nothing: a level that no piece has is told as such, and no amount is doubted for it. */
    @Test
    void aLevelOnNoPieceIsToldAsSuch() throws Exception {
        open("skirt");
        session.edit(LevelEdits.add(session.desk().pattern(), "knee", LevelKind.KNEE));
        session.setBody(session.desk().pattern().level("knee").orElseThrow(), OptionalDouble.of(900), "Knee girth");
        EaseRow knee = row(page(), "knee");
        assertThat(knee.finished()).isEmpty();
        assertThat(knee.standing()).isEqualTo(EaseRow.Standing.UNKNOWN);
        assertThat(knee.verdict()).contains("No piece has this level");
        assertThat(Rings.of(session.desk().reading(), session.desk().words()).rings())
                .filteredOn(r -> r.level().equals("knee"))
                .singleElement()
                .satisfies(r -> {
                    assertThat(r.words()).contains("No piece has this level").doesNotContain("0");
                    assertThat(r.body()).isZero();
                });
        session.chooseLevel("knee");
        assertThat(Doubt.of(session.desk(), 30)).isEmpty();
    }

    /** Zero stands at the same place of all bars, whichever of them reaches below it. */
    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice", "knit-top"})
    void zeroStandsInOneLine(String sample) throws Exception {
        EasePage page = open(sample);
        assertThat(page.rows().stream()
                        .map(r -> Math.round(r.scale().share(0) * 1e9))
                        .distinct())
                .hasSize(1);
    }

    /** What is done on purpose in the size at work is told once. */
    @Test
    void theSizeAtWorkIsNotToldOfTwice() {
        SizeWishes.Said said = new SizeWishes.Said(
                "",
                List.of("10", "10 (left thigh)", "100", "12"),
                List.of(),
                List.of(List.of("10", "100"), List.of("12", "14")));
        assertThat(said.beside(Optional.of("10")).unmet()).containsExactly("100", "12");
        assertThat(said.beside(Optional.of("10")).alike()).containsExactly("10", "100");
        assertThat(said.beside(Optional.of("12")).alike())
                .as("the other one is as wished")
                .isEmpty();
        assertThat(said.beside(Optional.empty()).unmet()).hasSize(4);
        assertThat(said.beside(Optional.empty()).alike()).isEmpty();
    }

    /** Bodies of a size table in inches are shown in centimetres as a tape is read. */
    @Test
    void aBodyIsShownAsATapeIsRead() throws Exception {
        session.open(OpenedSample.of("skirt"));
        var waist = session.desk().pattern().levels().get(0);
        session.setBody(waist, OptionalDouble.of(28 * 25.4), "waist");
        assertThat(row(EasePage.of(session.desk()), "waist").body()).isEqualTo("71.1\u00a0cm");
        session.setUnit(LengthUnit.INCH);
        assertThat(row(EasePage.of(session.desk()), "waist").body()).isEqualTo("28\u00a0in");
    }
}
