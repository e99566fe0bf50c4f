package easewright.ease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class EaseTablesTest {
    private static final Set<String> STANDINGS = Set.of("published", "second-hand", "from memory", "common practice");

    private static EaseTables read(String text) throws EaseTableProblem {
        return EaseTables.read(new StringReader(text), "mine.txt");
    }

    @Test
    void everyFigureNamesSourceAndStanding() {
        EaseTables tables = EaseTables.standard();
        assertThat(tables.tables()).hasSizeGreaterThanOrEqualTo(13).allSatisfy(t -> {
            assertThat(t.source()).isNotBlank();
            assertThat(STANDINGS).contains(t.standing());
        });
        assertThat(tables.minimums()).hasSizeGreaterThan(30).allSatisfy(m -> {
            assertThat(m.source()).isNotBlank();
            assertThat(STANDINGS).contains(m.standing());
        });
        assertThat(tables.knitClasses())
                .allSatisfy(c -> assertThat(c.standing()).isEqualTo("from memory"));
        assertThat(tables.margin().orElseThrow().standing()).isEqualTo("common practice");
    }

    /** docs/sources.md 1.2: sources on the waist conflict, 1/2 in to 1 in, and all are handed out. */
    @Test
    void minimumsOfAllSources() {
        List<Minimum> waist = EaseTables.standard().minimumsAt(Level.of("waist", LevelKind.WAIST));
        assertThat(waist.stream().map(Minimum::source).distinct()).hasSize(4);
        assertThat(waist.stream().mapToDouble(Minimum::low).min().orElseThrow()).isCloseTo(12.7, within(1e-9));
        assertThat(waist.stream().mapToDouble(Minimum::low).max().orElseThrow()).isCloseTo(25.4, within(1e-9));
        assertThat(EaseTables.standard().minimumsAt(Level.of("Across back", LevelKind.OTHER)))
                .hasSize(2);
        assertThat(EaseTables.standard().minimumsAt(Level.of("hh", LevelKind.HIGH_HIP)))
                .hasSize(1);
    }

    /** Armstrong's classes, from memory: 5 in to 5 7/8, 6 1/4, 7 1/2, 10 (docs/sources.md 1.3). */
    @Test
    void knitClassOfACloth() {
        EaseTables tables = EaseTables.standard();
        assertThat(words(tables, 50)).containsExactly("stretchy");
        assertThat(words(tables, 49)).containsExactly("moderate");
        assertThat(words(tables, 10)).isEmpty();
        assertThat(words(tables, 300)).containsExactly("super-stretch or rib");
        assertThat(StretchSaid.of(10, OptionalDouble.empty(), tables)
                        .named()
                        .get(0)
                        .next()
                        .orElseThrow()
                        .word())
                .isEqualTo("stable");
        assertThat(StretchSaid.of(300, OptionalDouble.empty(), tables)
                        .named()
                        .get(0)
                        .next())
                .isEmpty();
    }

    private static List<String> words(EaseTables tables, double stretch) {
        return StretchSaid.of(stretch, OptionalDouble.empty(), tables).named().stream()
                .flatMap(n -> n.is().stream().map(StretchClass::word))
                .toList();
    }

    /** Richardson's reductions, from memory: 0, 2, 3, 5 and 10 percent (docs/sources.md 1.3). */
    @Test
    void whereAGarmentLiesAmongReductions() {
        List<StretchClass> classes = StretchSaid.of(50, OptionalDouble.empty(), EaseTables.standard())
                .reductions()
                .get(0);
        StretchSaid.Reduced between = StretchSaid.reduced(classes, 3.4);
        assertThat(between.asMuchAs().orElseThrow().word()).isEqualTo("very stretchy");
        assertThat(between.lessThan().orElseThrow().word()).isEqualTo("super-stretch");
        assertThat(StretchSaid.reduced(classes, 12).lessThan()).isEmpty();
        assertThat(StretchSaid.reduced(classes, 12).asMuchAs().orElseThrow().word())
                .isEqualTo("rib");
    }

    /** Half of 50 % is 25 %: d = r/(1 - r) = 25 % at r = 20 % (docs/sources.md 1.3). */
    @Test
    void theEaseThatUsesTheMargin() {
        assertThat(StretchSaid.of(50, OptionalDouble.empty(), EaseTables.standard())
                        .easeAtMargin(900)
                        .orElseThrow())
                .isCloseTo(-180, within(1e-9));
        assertThat(StretchSaid.of(0, OptionalDouble.empty(), EaseTables.standard())
                        .easeAtMargin(900)
                        .orElseThrow())
                .isZero();
    }

    /** Smaller by 90 mm and taken back to 95 %: 4.5 mm may stay (recovery, docs/sources.md 5). */
    @Test
    void whatAClothDoesNotTakeBackStays() {
        StretchSaid tried = StretchSaid.of(50, OptionalDouble.of(95), EaseTables.standard());
        assertThat(tried.staysWider(-90).orElseThrow()).isCloseTo(4.5, within(1e-9));
        assertThat(tried.staysWider(20).orElseThrow()).isZero();
        assertThat(StretchSaid.of(50, OptionalDouble.empty(), EaseTables.standard())
                        .staysWider(-90))
                .isEmpty();
    }

    @Test
    void filterByGarmentWord() {
        EaseTables tables = EaseTables.standard();
        assertThat(tables.forGarment(Garment.named("Jacket")).at(LevelKind.BUST, false))
                .extracting(EaseTable::id)
                .containsExactly("us-publishers-jacket-bust", "studio-calicot-bust");
        assertThat(tables.forGarment(Garment.UNKNOWN).tables()).hasSameSizeAs(tables.tables());
        assertThat(tables.garments())
                .contains("jacket", "skirt", "leggings", "bodice")
                .doesNotContain("any garment");
    }

    @Test
    void userTableIsReadAndReplacesItsNamesake() throws EaseTableProblem {
        EaseTables mine = read("""
                # my own
                id: us-publishers-coat-bust
                garment: coat
                level: bust
                unit: cm
                source: my notebook
                standing: common practice
                band: snug | -1.5 | 8
                band: roomy | 8 | -
                minimum: high hip | 1 1/2 | - | only when standing | from memory
                """);
        EaseTables all = EaseTables.standard().with(mine);
        EaseTable table = all.tables().stream()
                .filter(t -> t.id().equals("us-publishers-coat-bust"))
                .findFirst()
                .orElseThrow();
        assertThat(table.bands())
                .containsExactly(
                        new Band("snug", -15, OptionalDouble.of(80)), new Band("roomy", 80, OptionalDouble.empty()));
        assertThat(table.classify(-15.1, 0).where()).isEqualTo(Classed.Where.BELOW);
        assertThat(all.tables()).hasSameSizeAs(EaseTables.standard().tables());
        Minimum added = mine.minimums().get(0);
        assertThat(added.low()).isCloseTo(15, within(1e-12));
        assertThat(added.standing()).isEqualTo("from memory");
    }

    @Test
    void damagedFilesNameTheLine() {
        String head = "id: a\ngarment: b\nlevel: hip\nunit: in\nsource: s\nstanding: published\n";
        assertThat(problem(head + "band: fitted | three | 4").values()).containsEntry("line", 7L);
        assertThat(problem(head + "band: fitted | 3").code()).isEqualTo("ease-table-line");
        assertThat(problem(head + "bond: fitted | 3 | 4").code()).isEqualTo("ease-table-line");
        assertThat(problem(head + "band: fitted | 1/0 | 4").code()).isEqualTo("ease-table-line");
        assertThat(problem(head).code()).isEqualTo("ease-table-empty");
        assertThat(problem("unit: in\nband: fitted | 3 | 4").code()).isEqualTo("ease-table-setting");
        assertThat(problem("band: fitted | 3 | 4").values()).containsEntry("setting", "unit");
        assertThat(problem(head.replace("hip", "elbow") + "band: a | 3 | 4").code())
                .isEqualTo("ease-table-word");
        assertThat(problem(head.replace("published", "certain") + "band: a | 3 | 4")
                        .code())
                .isEqualTo("ease-table-word");
        assertThat(problem(head + "minimum: hip | 2 | - | - | certain").code()).isEqualTo("ease-table-word");
    }

    @Test
    void classesThatDoNotRiseAreNamedWithTheirLine() {
        String head = "id: a\ngarment: b\nlevel: hip\nunit: in\nsource: s\nstanding: published\nband: a | 3 | 4\n";
        assertProblem(head + "band: b | 2 | 5", "ease-table-band-overlap", 8, "b", "a");
        assertProblem(head + "\nband: b | 5 | 4.5", "ease-table-band-ends", 9, "b", "a");
        assertProblem(head + "band: b | 4 | -\nband: c | 6 | 7", "ease-table-band-open", 9, "c", "b");
        assertProblem(head.replace("3 | 4", "4 | 3"), "ease-table-band-ends", 7, "a", "");
    }

    private static void assertProblem(String text, String code, long line, String word, String before) {
        EaseTableProblem problem = problem(text);
        assertThat(problem.code()).isEqualTo(code);
        assertThat(problem.values())
                .isEqualTo(Map.of("file", problem.values().get("file"), "line", line, "class", word, "before", before));
    }

    private static EaseTableProblem problem(String text) {
        return catchThrowableOfType(EaseTableProblem.class, () -> read(text));
    }

    @Test
    void bandsMustRise() {
        assertThatThrownBy(() -> new EaseTable(
                        "t",
                        "g",
                        LevelKind.HIP,
                        List.of(new Band("a", 0, OptionalDouble.empty()), new Band("b", 1, OptionalDouble.of(2))),
                        "s",
                        "published",
                        false,
                        false))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aMarginOfOnesOwnReplacesTheOneThatCame() throws EaseTableProblem {
        EaseTables mine = read("source: notebook\nstanding: common practice\nstretch-at-rest: 40\n");
        assertThat(mine.margin().orElseThrow().atRestPercent()).isEqualTo(40);
        assertThat(EaseTables.standard().with(mine).margin().orElseThrow().atRestPercent())
                .isEqualTo(40);
        EaseTables other = read("source: s\nstanding: published\nknit-class: a | 20\n");
        assertThat(EaseTables.standard().with(other).margin().orElseThrow().atRestPercent())
                .isEqualTo(50);
    }

    /** Of each source the highest class that the cloth reaches; other sources keep theirs. */
    @Test
    void knitClassesOfSeveralSources() throws EaseTableProblem {
        EaseTables one = read(
                "source: one\nstanding: published\nknit-class: a | 20\nknit-class: b | 40\nknit-class: b too | 40\n");
        EaseTables two = read("source: two\nstanding: published\nknit-class: c | 30 | 5\n");
        assertThat(one.with(two).knitClasses()).hasSize(4);
        assertThat(words(one.with(two), 40)).containsExactly("b", "b too", "c");
        assertThat(words(one.with(two), 39.9)).containsExactly("a", "c");
    }

    @Test
    void figuresInAnyUnit() throws EaseTableProblem {
        String head = "id: a\ngarment: b\nlevel: hip\nsource: s\nstanding: published\n";
        assertThat(band(head + "unit: mm\nband: x | 5 | 7.5").from()).isEqualTo(5);
        assertThat(band(head + "unit: percent\nband: x | -5 | 7.5").to()).hasValue(7.5);
        assertThat(band(head + "unit: cm\nband: x | - 1/2 | 7").from()).isEqualTo(-5);
        assertThat(band(head + "unit: in\nband: x | 1 | 2 1/2").to()).hasValue(63.5);
        assertThat(problem(head + "unit: ell\nband: x | 1 | 2").code()).isEqualTo("ease-table-word");
        assertThat(problem(head + "unit: mm\n: 5").code()).isEqualTo("ease-table-line");
        assertThat(problem(head + "unit: mm\nband x 1 2").code()).isEqualTo("ease-table-line");
    }

    private static Band band(String text) throws EaseTableProblem {
        return read(text).tables().get(0).bands().get(0);
    }

    /** An ease that is shown as the end of a band must not be called something else than the band. */
    @Test
    void theEndsOfABandAreTakenWithinRounding() throws EaseTableProblem {
        EaseTable table = read("""
                id: a
                garment: b
                level: hip
                unit: mm
                source: s
                standing: published
                band: low | 10 | 20
                band: high | 20 | 30
                """).tables().get(0);
        assertThat(table.classify(10 - 0.049, 0).word()).isEqualTo("low");
        assertThat(table.classify(10 - 0.051, 0).where()).isEqualTo(Classed.Where.BELOW);
        assertThat(table.classify(20 + 0.049, 0).word()).isEqualTo("low");
        assertThat(table.classify(20 + 0.051, 0).word()).isEqualTo("high");
        assertThat(table.classify(30 + 0.049, 0).word()).isEqualTo("high");
        assertThat(table.classify(30 + 0.051, 0).where()).isEqualTo(Classed.Where.ABOVE);
    }
}
