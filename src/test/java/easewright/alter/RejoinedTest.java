package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Left and right pieces that a change made become one again where it is taken back, also after the file was opened again. */
class RejoinedTest {
    private static SvgFile sample(String name) throws Exception {
        return SvgFile.read(Samples.files().get(name + ".svg").getBytes(StandardCharsets.UTF_8), name + ".svg");
    }

    private static Alteration on(Side side, Alteration change) {
        return Within.of(new Scope(Optional.empty(), side), change);
    }

    private static SvgFile reopened(SvgFile file, Pattern pattern) throws Exception {
        return SvgFile.read(file.write(pattern), file.name());
    }

    /** As after opening: nothing is known but what the file holds. */
    private static Pattern without(Pattern pattern, int off) throws Exception {
        return switched(pattern, false, off);
    }

    private static Pattern switched(Pattern pattern, boolean on, int at) throws Exception {
        List<Step> course = new ArrayList<>(Step.course(pattern));
        course.set(at, course.get(at).switched(on));
        return new Replay(pattern, List.of(pattern)).to(course);
    }

    @Test
    void takenBackAfterReopeningThereIsOnePieceAsBefore() throws Exception {
        Random random = new Random(77);
        for (String name : List.of("skirt", "bodice", "trousers", "knit-top")) {
            SvgFile file = sample(name);
            Pattern drawn = file.pattern();
            for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                for (String level : drawn.levels().stream()
                        .map(l -> l.name())
                        .filter(List.of("hip", "bust")::contains)
                        .limit(1)
                        .toList()) {
                    double amount = 4 + 10 * random.nextDouble();
                    Pattern changed =
                            on(side, SeamChange.at(level, amount)).apply(drawn).pattern();
                    assertThat(changed.pieces())
                            .as(name)
                            .hasSizeGreaterThan(drawn.pieces().size());
                    SvgFile opened = reopened(file, changed);
                    Pattern back = without(opened.pattern(), 0);
                    assertAlike(back, drawn, name + " " + side + " " + level);
                    SvgFile saved = reopened(opened, back);
                    assertAlike(saved.pattern(), drawn, name + " " + side + " " + level + " saved");
                    assertThat(drawing(saved)).as(name).isEqualTo(drawing(file));
                    assertThat(opened.writing(back).consequences())
                            .extracting(Finding::code)
                            .contains("copy-taken-out");
                    Pattern again = switched(saved.pattern(), true, 0);
                    assertThat(again.pieces().stream().map(Piece::id))
                            .containsExactlyElementsOf(
                                    changed.pieces().stream().map(Piece::id).toList());
                    drawn.pieces()
                            .forEach(p -> assertThat(Likeness.same(
                                            again.piece(p.id()).orElseThrow(),
                                            changed.piece(p.id()).orElseThrow()))
                                    .as(name + " " + p.name())
                                    .isTrue());
                }
            }
        }
    }

    /** A change of both legs, made before one side parted them: it can be taken back once they are one again. */
    @Test
    void whatWasChangedBeforeTheSidesWerePartedIsTakenBackToo() throws Exception {
        SvgFile file = sample("trousers");
        Pattern both = SeamChange.at("thigh", 15).apply(file.pattern()).pattern();
        Pattern parted = on(Side.RIGHT, SeamChange.at("waist", 12)).apply(both).pattern();
        Pattern opened = reopened(file, parted).pattern();
        Pattern back = new Replay(opened, List.of(opened)).to(List.of());
        assertAlike(back, file.pattern(), "both");
        List<Step> second = Step.course(opened).subList(1, 2);
        Pattern alone = new Replay(opened, List.of(opened)).to(second);
        Pattern wanted =
                on(Side.RIGHT, SeamChange.at("waist", 12)).apply(file.pattern()).pattern();
        assertThat(alone.changes()).isEqualTo(wanted.changes());
        // Where the copies for the other side lie hangs on cutting lines, which come back a little less exactly.
        for (Piece drawn : file.pattern().pieces()) {
            Piece piece = wanted.piece(drawn.id()).orElseThrow();
            assertThat(Likeness.same(alone.piece(drawn.id()).orElseThrow(), piece))
                    .as(piece.name())
                    .isTrue();
        }
    }

    /** The file without its marks and without the numbers of its lines, of which a cutting line beside comes back less exactly. */
    private static String drawing(SvgFile file) {
        return new String(file.bytes(), StandardCharsets.UTF_8)
                .replaceFirst("(?s)<metadata.*?</metadata>", "")
                .replaceAll(" d=\"[^\"]*\"", "");
    }

    private static void assertAlike(Pattern back, Pattern drawn, String what) {
        assertThat(back.pieces().stream().map(Piece::id))
                .as(what)
                .containsExactlyElementsOf(
                        drawn.pieces().stream().map(Piece::id).toList());
        assertThat(back.mates()).as(what).containsExactlyInAnyOrderElementsOf(drawn.mates());
        for (Piece was : drawn.pieces()) {
            Piece is = back.piece(was.id()).orElseThrow();
            assertThat(Likeness.same(is, was)).as(what + " " + was.name()).isTrue();
            assertThat(is.outline()).as(what + " " + was.name()).isEqualTo(was.outline());
        }
    }

    /**
     * The cutting line of one half alone is drawn anew, whichever of the two is the one that was drawn first: how it had
     * been is kept.
     */
    @Test
    void aHalfOfWhichTheCuttingLineWasTruedIsOneWithTheOtherAgain() throws Exception {
        Random random = new Random(15);
        int trued = 0;
        SvgFile file = sample("bodice");
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            double amount = (random.nextBoolean() ? 1 : -1) * (12 + 8 * random.nextDouble());
            Pattern changed = on(side, SeamChange.at("bust", amount))
                    .apply(file.pattern())
                    .pattern();
            for (Proposal untrue : Truing.proposals(changed)) {
                Optional<Piece> half = changed.pieces().stream()
                        .filter(p -> p.side() == side
                                && p.name().equals(untrue.finding().piece()))
                        .findFirst();
                if (half.isPresent() && untrue.finding().code().equals("allowance-uneven")) {
                    Pattern done =
                            untrue.truing().acceptingProtected().apply(changed).pattern();
                    Pattern opened = reopened(file, done).pattern();
                    Pattern back = new Replay(opened, List.of(opened)).to(List.of());
                    assertAlike(back, file.pattern(), side + " " + amount);
                    trued++;
                }
            }
        }
        assertThat(trued).isGreaterThan(1);
    }

    /** Any way of changing, whatever it moves. */
    @Test
    void everyWayIsTakenBackToOnePiece() throws Exception {
        OneSideTest.draft();
        Random random = new Random(5);
        double worst = 0;
        for (OneSideTest.Case each : OneSideTest.CASES) {
            SvgFile file = sample(each.garment());
            for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                double amount = (random.nextBoolean() ? 1 : -1) * (2 + 8 * random.nextDouble());
                Pattern changed =
                        on(side, each.by(amount)).apply(file.pattern()).pattern();
                Pattern back = without(reopened(file, changed).pattern(), 0);
                assertThat(back.pieces()).hasSameSizeAs(file.pattern().pieces());
                worst = Math.max(worst, worst(back, file.pattern()));
            }
        }
        assertThat(worst).isLessThan(1e-6);
    }

    /** How far the outlines lie apart, mm. */
    private static double worst(Pattern some, Pattern others) {
        double worst = 0;
        for (Piece one : some.pieces()) {
            Outline other = others.piece(one.id()).orElseThrow().outline();
            for (Segment segment : one.outline().segments()) {
                worst = Math.max(worst, other.nearest(segment.at(0.5)).distance());
                worst = Math.max(worst, other.nearest(segment.start()).distance());
            }
        }
        return worst;
    }

    /** What another change on one side has made into two stays two until that is taken back as well. */
    @Test
    void oneOfSeveralChangesTakenBackLeavesWhatTheOthersMade() throws Exception {
        SvgFile file = sample("skirt");
        Pattern wide = SeamChange.at("waist", 12).apply(file.pattern()).pattern();
        Pattern one = on(Side.LEFT, SeamChange.at("hip", 9)).apply(wide).pattern();
        Pattern two = on(Side.RIGHT, SeamChange.at("hip", -5)).apply(one).pattern();
        Pattern opened = reopened(file, two).pattern();
        Pattern back = without(opened, 2);
        assertThat(back.pieces()).hasSize(one.pieces().size());
        assertThat(new MadeAnew(one).same(back)).isTrue();
        assertThat(without(reopened(file, back).pattern(), 1).pieces())
                .hasSameSizeAs(wide.pieces())
                .allMatch(p -> p.side() == Side.BOTH);
    }

    /** Drawn apart by a person, two halves stay two, however alike they are. */
    @Test
    void whatAPersonHasDrawnApartStaysApart() throws Exception {
        Pattern parted = LeftRight.of(sample("skirt").pattern(), Set.of("skirt-back", "skirt-front"))
                .garment();
        Pattern apart = parted.withPieces(parted.pieces().stream()
                        .map(p -> p.id().endsWith("-left")
                                ? p.toBuilder().id("my-" + p.id()).build()
                                : p)
                        .toList())
                .withMates(List.of());
        Pattern changed = on(Side.LEFT, SeamChange.at("hip", 9)).apply(apart).pattern();
        assertThat(without(changed, 0).pieces().stream().map(Piece::id))
                .containsExactlyElementsOf(
                        apart.pieces().stream().map(Piece::id).toList());
    }

    /** An element of the other side to which somebody refers is left in the drawing. */
    @Test
    void whatIsReferredToIsNotTakenOut() throws Exception {
        SvgFile file = sample("skirt");
        Pattern parted =
                on(Side.LEFT, SeamChange.at("hip", 9)).apply(file.pattern()).pattern();
        String copy = parted.pieces().stream()
                .map(Piece::id)
                .filter(id -> file.pattern().piece(id).isEmpty())
                .findFirst()
                .orElseThrow();
        String written = new String(file.write(parted), StandardCharsets.UTF_8);
        String referring = written.replace("</svg>", "<a href=\"#" + copy + "\"/></svg>");
        SvgFile opened = SvgFile.read(referring.getBytes(StandardCharsets.UTF_8), "skirt.svg");
        String back = new String(opened.write(without(opened.pattern(), 0)), StandardCharsets.UTF_8);
        assertThat(back).contains("<path id=\"" + copy + "\"");
        assertThat(back.split("-(left|right)\"", -1)).hasSizeLessThan(written.split("-(left|right)\"", -1).length);
    }
}
