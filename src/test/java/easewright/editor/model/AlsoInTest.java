package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.alter.Taper;
import easewright.command.Commands;
import easewright.draft.Samples;
import easewright.editor.mark.EdgeEdits;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One change in several sizes of a nest at once, tried, kept and worked on in the editor. */
class AlsoInTest {
    private static final List<String> SIZES = List.of("10", "12", "14");

    private final Session session = new Session(LengthUnit.CM, false);

    @TempDir
    Path folder;

    @BeforeEach
    void openTheNest() throws Exception {
        open(Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8));
    }

    private void open(byte[] svg) throws Exception {
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "nest.svg"), Optional.empty(), "nest.svg")));
        session.chooseLevel("hip");
    }

    private void want(UnaryOperator<Wanted> step) {
        session.want(step.apply(session.desk().wanted().orElseThrow()));
    }

    private void also(String... sizes) {
        want(w -> w.withAlsoIn(Set.of(sizes)));
    }

    private static double hip(Pattern pattern, String size) {
        return Measures.of(pattern).girths().stream()
                .filter(g -> g.level().name().equals("hip") && g.size().equals(Optional.of(size)))
                .mapToDouble(Girth::finished)
                .findFirst()
                .orElseThrow();
    }

    private byte[] written() throws Exception {
        return session.desk().file().orElseThrow().svg().write(session.desk().pattern(), "out.svg");
    }

    /** What the command makes of the file on the table. */
    private byte[] commanded(List<String> options) throws Exception {
        Path in = folder.resolve("nest.svg");
        Path out = folder.resolve("out.svg");
        Files.write(in, session.desk().file().orElseThrow().svg().bytes());
        Files.deleteIfExists(out);
        List<String> words = new ArrayList<>(List.of("change", in.toString(), "-o", out.toString()));
        words.addAll(options);
        StringWriter said = new StringWriter();
        int code = Commands.run(new PrintWriter(said), new PrintWriter(said), words.toArray(String[]::new));
        assertThat(code).as("%s%n%s", words, said).isLessThan(2);
        return Files.readAllBytes(out);
    }

    private record Case(String level, UnaryOperator<Wanted> wanted, String... options) {}

    private static UnaryOperator<Wanted> way(String method, Map<String, List<String>> texts) {
        return w -> w.withOther(Optional.of(new OtherWay(method, texts)));
    }

    /** Ways as they stand in the form while size 10 is at work, and as they are asked for by command. */
    private static List<Case> cases() {
        return List.of(
                new Case("hip", w -> w, "--carry"),
                new Case("hip", w -> w.withCarry(false).withTaper(Taper.STRAIGHT), "--taper", "straight"),
                new Case("hip", w -> w.withEven(true), "--carry", "--set", "even=yes"),
                new Case(
                        "hip",
                        w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))),
                        "--carry",
                        "--edge",
                        "back/side"),
                new Case(
                        "hip",
                        w -> w.withCarry(false)
                                .withBeyond(Map.of("keep", List.of("waist"), "fixed", List.of("Front 10/side@500mm"))),
                        "--keep",
                        "waist",
                        "--keep",
                        "front/side@500mm"),
                new Case(
                        "hip",
                        way("centre", Map.of("edge", List.of("skirt-back-10/centre back"))),
                        "--method",
                        "centre",
                        "--edge",
                        "back/centre back"),
                new Case(
                        "waist",
                        way("dart", Map.of("dart", List.of("skirt-back-10/back dart 2"))),
                        "--method",
                        "dart",
                        "--dart",
                        "back/back dart 2"),
                new Case(
                        "hip",
                        way("lengthen", Map.of("piece", List.of("skirt-back-10", "skirt-front-10"))),
                        "--method",
                        "lengthen",
                        "--piece",
                        "back",
                        "--piece",
                        "front"),
                new Case(
                        "hip",
                        way("slash", Map.of("slash", List.of("Front 10/hem@90mm > Front 10/waist@60mm"))),
                        "--method",
                        "slash",
                        "--slash",
                        "front/hem@90mm > front/waist@60mm"));
    }

    private byte[] inTheWindow(Case each, double amount, List<String> sizes) throws Exception {
        session.chooseLevel(each.level());
        session.chooseSize("10");
        want(each.wanted());
        also(sizes.subList(1, sizes.size()).toArray(String[]::new));
        want(w -> w.withAmount(amount));
        assertThat(session.desk().refusedTrial().map(r -> r.words(session.desk().words())))
                .as(each.toString())
                .isEmpty();
        assertThat(session.desk().shownTrial().orElseThrow().sizes()).isEqualTo(sizes);
        session.keep();
        return written();
    }

    private static List<String> options(Case each, double amount, List<String> sizes) {
        List<String> options = new ArrayList<>(List.of(each.options()));
        options.addAll(List.of("--at", each.level(), "--by", amount + "mm", "--sizes", String.join(",", sizes)));
        return options;
    }

    @Test
    void everyWayGivesWhatTheCommandGivesToTheLastByte() throws Exception {
        byte[] sample = session.desk().file().orElseThrow().svg().bytes();
        for (Case each : cases()) {
            open(sample);
            byte[] expected = commanded(options(each, 12, SIZES));
            assertThat(new String(inTheWindow(each, 12, SIZES), StandardCharsets.UTF_8))
                    .as(List.of(each.options()).toString())
                    .isEqualTo(new String(expected, StandardCharsets.UTF_8));
        }
    }

    /** On nests whose sizes were first made unlike each other. */
    @Test
    void soItIsOnOtherNestsByOtherAmountsAndInSomeSizes() throws Exception {
        Random random = new Random(20261126);
        byte[] sample = session.desk().file().orElseThrow().svg().bytes();
        for (int i = 0; i < 8; i++) {
            open(sample);
            for (String size : SIZES) {
                session.chooseSize(size);
                want(w -> w.withAmount(random.nextInt(-150, 300) / 10.0));
                session.keep();
            }
            open(written());
            Case each = cases().get(random.nextInt(cases().size()));
            List<String> sizes = random.nextBoolean() ? List.of("10", "14") : List.of("10", "12");
            double amount = random.nextInt(5, 160) / 10.0;
            byte[] expected = commanded(options(each, amount, sizes));
            assertThat(inTheWindow(each, amount, sizes))
                    .as("%s %s %s", List.of(each.options()), amount, sizes)
                    .isEqualTo(expected);
        }
    }

    @Test
    void itIsOneStepInTheListAndOneUndo() throws Exception {
        Pattern before = session.desk().pattern();
        also("14");
        want(w -> w.withAmount(24));
        session.keep();
        assertThat(session.kept().orElseThrow().words(session.desk())).contains("Kept in sizes 10 and 14: hip +2.4");
        assertThat(session.desk().pattern().changes()).hasSize(2);
        Course course = Course.of(session.desk());
        assertThat(course.lines()).hasSize(1);
        assertThat(course.lines().get(0).words()).startsWith("In sizes 10 and 14: hip:");
        session.recast(course.withAmount(0, 30));
        assertThat(hip(session.desk().pattern(), "10") - hip(before, "10")).isCloseTo(30, within(0.01));
        assertThat(hip(session.desk().pattern(), "14") - hip(before, "14")).isCloseTo(30, within(0.01));
        assertThat(Course.of(session.desk()).lines()).hasSize(1);
        session.recast(Course.of(session.desk()).switched(0, false));
        assertThat(session.desk().pattern().pieces()).isEqualTo(before.pieces());
        assertThat(Course.of(session.desk()).lines()).singleElement().matches(l -> !l.on());
        session.undo();
        session.undo();
        session.undo();
        assertThat(session.desk().pattern()).isSameAs(before);
        session.redo();
        assertThat(session.desk().pattern().changes()).hasSize(2);
    }

    @Test
    void theFileGivesBackTheSameChanges() throws Exception {
        Pattern before = session.desk().pattern();
        also("12", "14");
        want(w -> w.withAmount(-12));
        session.keep();
        want(w -> w.withAlsoIn(Set.of()).withAmount(6));
        session.keep();
        List<Course.Line> lines = Course.of(session.desk()).lines();
        assertThat(lines).hasSize(2);
        open(written());
        assertThat(Course.of(session.desk()).lines()).isEqualTo(lines);
        List<Step> off = Course.of(session.desk()).switched(0, false);
        session.recast(off);
        assertThat(hip(session.desk().pattern(), "10") - hip(before, "10")).isCloseTo(6, within(0.01));
        assertThat(hip(session.desk().pattern(), "14") - hip(before, "14")).isCloseTo(0, within(1e-5));
        open(written());
        session.recast(Course.of(session.desk()).switched(0, true));
        assertThat(Course.of(session.desk()).lines()).isEqualTo(lines);
        session.recast(Course.of(session.desk()).risen(1));
        assertThat(Course.of(session.desk()).lines())
                .extracting(Course.Line::words)
                .containsExactly(lines.get(1).words(), lines.get(0).words());
    }

    /** Two changes made one after the other are two, though they are alike. */
    @Test
    void whatWasMadeSizeBySizeStaysApart() {
        for (String size : SIZES) {
            session.chooseSize(size);
            want(w -> w.withAmount(10));
            session.keep();
        }
        assertThat(Course.of(session.desk()).lines()).hasSize(3);
    }

    /** Size 14 is made so narrow that it bears less than size 10, which is asked first. */
    @Test
    void oneSizeRefusesAndNothingIsHalfKept() throws Exception {
        session.chooseSize("14");
        want(w -> w.withAmount(-200));
        session.keep();
        session.chooseSize("10");
        Pattern before = session.desk().pattern();
        also("12", "14");
        want(w -> w.withAmount(-590));
        Trial.Refused refused = session.desk().refusedTrial().orElseThrow();
        assertThat(refused.size()).contains("14");
        assertThat(refused.words(session.desk().words()))
                .startsWith("In size 14: ")
                .contains("No size was changed")
                .contains("The largest amount");
        session.keep();
        assertThat(session.desk().pattern()).isSameAs(before);
        double largest = refused.largest(session.desk().words()).orElseThrow();
        want(w -> w.withAmount(largest));
        assertThat(session.desk().shownTrial()).isPresent();
        want(w -> w.withAmount(-10));
        session.keep();
        Course course = Course.of(session.desk());
        List<Step> wanted = course.withAmount(1, -590);
        StepRefused not = catchThrowableOfType(StepRefused.class, () -> session.recast(wanted));
        assertThat(course.refused(not, wanted, 1, session.desk()))
                .startsWith("This was not done in any size")
                .contains("In size 14: ");
        session.recast(course.withAmount(1, not.why().largest().orElseThrow()));
        assertThat(Course.of(session.desk()).lines()).hasSize(2);
        want(w -> w.withAlsoIn(Set.of()).withAmount(-590));
        assertThat(session.desk().refusedTrial().map(Trial.Refused::size)).isNotEqualTo(Optional.of(Optional.of("14")));
    }

    @Test
    void aSizeWithoutTheMatchingPlaceSaysSo() throws Exception {
        Pattern nest = session.desk().pattern();
        session.edit(EdgeEdits.rename(nest, "skirt-back-14", "side", "seam at the hip"));
        also("12", "14");
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))).withAmount(10));
        assertThat(session.desk()
                        .refusedTrial()
                        .orElseThrow()
                        .words(session.desk().words()))
                .startsWith("In size 14: ")
                .contains("side")
                .contains("Back 14");
        also("12");
        assertThat(session.desk().shownTrial()).isPresent();
        also("12");
        want(way("slash", Map.of("slash", List.of("150,730 > Back 10/waist@60mm"))));
        assertThat(session.desk()
                        .refusedTrial()
                        .orElseThrow()
                        .words(session.desk().words()))
                .startsWith("In size 12: The place 150,730");
    }

    @Test
    void aSizeIsOfferedThatHasPiecesLikeThese() {
        assertThat(AlsoIn.offered(session.desk())).containsExactly("12", "14");
        session.chooseSize("12");
        assertThat(AlsoIn.offered(session.desk())).containsExactly("10", "14");
        Pattern nest = session.desk().pattern();
        List<Piece> other = nest.pieces().stream()
                .map(p -> p.size().equals(Optional.of("14")) ? p.withName("Other " + p.name()) : p)
                .toList();
        session.edit(nest.withPieces(other));
        assertThat(AlsoIn.offered(session.desk())).containsExactly("10");
        also("14");
        assertThat(session.desk().sizesTaking()).containsExactly("12");
    }

    @Test
    void theTicksStayAndTheSizeAtWorkChangesPlacesWithOneOfThem() {
        also("14");
        want(w -> w.withAmount(20));
        session.chooseSize("14");
        assertThat(session.desk().sizesTaking()).containsExactly("10", "14");
        assertThat(session.desk().wanted().orElseThrow().alsoIn()).containsExactly("10");
        session.chooseLevel("waist");
        session.chooseSize("12");
        assertThat(session.desk().sizesTaking()).containsExactly("10", "12");
        session.leave();
        assertThat(session.desk().sizesTaking()).containsExactly("10", "12");
    }

    @Test
    void whatIsChosenIsTakenAlongToTheSizeThatComesToWork() {
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side")))
                .withBeyond(Map.of("fixed", List.of("Back 10/side@400mm"))));
        session.chooseSize("14");
        Wanted there = session.desk().wanted().orElseThrow();
        assertThat(there.leftOut()).containsExactly(EdgeRef.of("skirt-front-14", "side"));
        assertThat(there.beyond()).containsEntry("fixed", List.of("skirt-back-14/side@400mm"));
        want(way("slash", Map.of("slash", List.of("150,730 > Back 14/waist@60mm"))));
        session.chooseSize("10");
        assertThat(session.desk().wanted().orElseThrow().leftOut())
                .as("also where a place cannot be taken along")
                .containsExactly(EdgeRef.of("skirt-front-10", "side"));
    }

    @Test
    void aCrashLeavesTheTicksBehind() {
        Desk opened = session.desk();
        also("12");
        want(w -> w.withAmount(20));
        Desk trying = session.desk();
        Desk again = opened.withHand(
                Unfinished.of(Unfinished.on(trying, Begun.NOTHING).text()));
        assertThat(again.sizesTaking()).containsExactly("10", "12");
        assertThat(again.shown()).isEqualTo(trying.shown());
        want(w -> w.withAmount(0));
        Begun typed = new Begun(
                "ease",
                List.of(new Begun.Typed("", "amount", "Change", "2,", true)),
                Optional.empty(),
                Optional.empty());
        Unfinished half = Unfinished.of(Unfinished.on(session.desk(), typed).text());
        assertThat(opened.withHand(half).sizesTaking())
                .as("while the amount is still typed")
                .containsExactly("10", "12");
    }

    /** The pieces that will change are clear on the table at once, and told with their widths. */
    @Test
    void whatIsTickedIsSeenOnTheTableAndInTheSheet() {
        also("14");
        assertThat(clear()).containsExactlyInAnyOrder("10", "14");
        want(w -> w.withAmount(24));
        assertThat(new TableScenes()
                        .of(session.desk()).pieces().stream()
                                .filter(p -> !p.moved().isEmpty())
                                .map(p -> p.piece().name()))
                .containsExactly("Back 10", "Front 10", "Back 14", "Front 14");
        EaseRow row = EasePage.of(session.desk()).rows().get(1);
        assertThat(row.elsewhere(session.desk().words())).startsWith("Ease 7.4\u00a0cm in size 14.");
        assertThat(row.told(session.desk().words())).contains("Size 14: garment 112.81\u00a0cm, ease 7.4\u00a0cm.");
        assertThat(HereWords.outcome(session.desk())).contains("The same in each size.");
        assertThat(HereWords.title(session.desk())).endsWith("in sizes 10 and 14");
        assertThat(Effect.of(session.desk()).lines().get(0).words())
                .isEqualTo("Moved: Back side, hem; Front side, hem.");
        assertThat(Effect.of(session.desk()).lines().get(1).words()).contains("all other sizes");
        also();
        assertThat(clear()).containsExactly("10");
        assertThat(EasePage.of(session.desk()).rows().get(1).others()).isEmpty();
    }

    private Set<String> clear() {
        return new java.util.TreeSet<>(new TableScenes()
                .of(session.desk()).pieces().stream()
                        .filter(p -> !p.aside())
                        .flatMap(p -> p.piece().size().stream())
                        .toList());
    }

    @Test
    void whereSizesComeOutUnlikeEachIsTold() {
        session.chooseSize("14");
        want(w -> w.withAmount(10));
        session.keep();
        session.chooseSize("10");
        also("12", "14");
        want(w -> w.withAmount(20));
        assertThat(HereWords.outcome(session.desk()))
                .contains("hip, sizes 10 and 12: ease from 5\u00a0cm to 7\u00a0cm.")
                .contains("hip, size 14: ease from 6\u00a0cm to 8\u00a0cm.");
        assertThat(EasePage.of(session.desk())
                        .rows()
                        .get(1)
                        .elsewhere(session.desk().words()))
                .contains("Ease 7\u00a0cm in size 12, 8\u00a0cm in size 14.");
    }

    /** Both sides of a seam change unlike where one is left out, in every size. */
    @Test
    void whatDriftsIsFoundInEverySize() {
        also("14");
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))).withAmount(60));
        assertThat(session.desk().shownTrial().orElseThrow().findings())
                .filteredOn(f -> f.code().startsWith("mate-drifted"))
                .extracting(f -> f.values().get("size"))
                .containsExactly("10", "14");
        assertThat(Effect.of(session.desk()).lines())
                .extracting(Effect.Line::words)
                .anyMatch(l -> l.contains("side seam, size 10"))
                .anyMatch(l -> l.contains("side seam, size 14"));
        assertThat(PatternPart.sizes(session.desk().shown())).isEqualTo(SIZES);
    }

    /** What is offered to make a seam fit makes the change in another way in every size. */
    @Test
    void whatIsMadeOtherwiseIsMadeSoInEverySize() {
        also("14");
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))).withAmount(60));
        session.keep();
        session.tryOut(FollowUp.of(session.desk()).stream()
                .flatMap(f -> f.presses().stream())
                .filter(p -> p.label().equals(new Said("editor.follow.instead", Map.of())))
                .findFirst()
                .orElseThrow());
        assertThat(session.desk().sizesTaking()).containsExactly("10", "14");
        session.keep();
        assertThat(Course.of(session.desk()).lines())
                .singleElement()
                .matches(l -> l.words().startsWith("In sizes 10 and 14: hip: +6"));
        assertThat(session.desk().pattern().changes())
                .extracting(n -> n.settings().get("edge.2"))
                .containsExactly("skirt-front-10/side", "skirt-front-14/side");
        assertThat(Measures.of(session.desk().pattern()).mates())
                .as("every seam fits again")
                .allMatch(m -> Math.abs(m.drift()) < 1);
    }

    /** What a change in one size asks for does not hide that the same seam is off in another, where it was drawn so. */
    @Test
    void aSeamIsCaredForInEachSize() {
        Pattern pattern = session.desk().pattern();
        session.edit(pattern.withMates(pattern.mates().stream()
                .map(m -> m.name().equals("waistband") ? new Mate(m.name(), m.first(), m.second(), 30) : m)
                .toList()));
        session.chooseSize("14");
        session.chooseLevel("waist");
        want(w -> w.withAmount(60));
        session.keep();
        session.chooseSize("10");
        assertThat(FollowUp.of(session.desk()))
                .filteredOn(f -> f.seam().equals("waistband"))
                .extracting(f -> f.size().orElseThrow())
                .containsExactly("14", "10");
    }

    @Test
    void theOtherSizeIsNamedInTheComparison() {
        want(w -> w.withAmount(20));
        SizeWords compared = SizeWords.of(session.desk());
        assertThat(compared.other()).isEqualTo("Size 12");
        assertThat(compared.lines()).allMatch(l -> l.said().contains(" Size 12: "));
    }

    /** The heading has no room for many names; what is heard has. */
    @Test
    void manySizesAreCountedInTheHeading() {
        Pattern nest = session.desk().pattern();
        List<Piece> pieces = new ArrayList<>(nest.pieces());
        for (String size : List.of("16", "18")) {
            nest.pieces().stream()
                    .filter(p -> p.size().equals(Optional.of("14")))
                    .map(p -> p.toBuilder()
                            .id(p.id() + "-" + size)
                            .name(p.plainName() + " " + size)
                            .size(Optional.of(size))
                            .riders(List.of())
                            .build())
                    .forEach(pieces::add);
        }
        session.edit(nest.withPieces(pieces));
        also("12", "14", "16", "18");
        assertThat(HereWords.title(session.desk())).endsWith("in 5 sizes");
        assertThat(HereWords.amount(session.desk())).endsWith("in sizes 10, 12, 14, 16 and 18");
    }
}
