package easewright.alter;

import static easewright.alter.Cloths.girth;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Wish;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ReplayTest {
    private static Pattern skirt;

    @BeforeAll
    static void drawn() throws Exception {
        String svg = Samples.svg(Samples.drafts().get(0).draft());
        skirt = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "skirt.svg").pattern();
    }

    private static Pattern made(Pattern start, Alteration... changes) throws Refusal {
        Pattern now = start;
        for (Alteration change : changes) {
            now = change.apply(now).pattern();
        }
        return now;
    }

    private static List<Step> without(Pattern pattern, int step) {
        List<Step> course = new ArrayList<>(Step.course(pattern));
        course.set(step, course.get(step).switched(false));
        return course;
    }

    private static SeamChange hip(double mm) {
        return SeamChange.at("hip", mm).carriedToHem();
    }

    @Test
    void switchedOffAndOnAgainIsTheSamePatternToTheLastBit() throws Exception {
        Pattern one = made(skirt, hip(20));
        Pattern two = made(one, Lengthen.below("hip", 100, 30));
        List<Pattern> known = List.of(skirt, one, two);
        Pattern off = new Replay(two, known).to(without(two, 0));
        assertThat(off.pieces())
                .isEqualTo(made(skirt, Lengthen.below("hip", 100, 30)).pieces());
        assertThat(off.changes()).hasSize(1);
        assertThat(off.aside()).hasSize(1);
        assertThat(Step.course(off)).isEqualTo(without(two, 0));

        List<Step> course = new ArrayList<>(Step.course(off));
        course.set(0, course.get(0).switched(true));
        Pattern on = new Replay(off, List.of(skirt, one, two, off)).to(course);
        assertThat(on.pieces()).isEqualTo(two.pieces());
        assertThat(on.changes()).isEqualTo(two.changes());
        assertThat(on.aside()).isEmpty();
    }

    @Test
    void takenOutAltogetherNothingRemains() throws Exception {
        Pattern one = made(skirt, hip(20));
        assertThat(new Replay(one, List.of(skirt, one)).to(List.of())).isEqualTo(skirt);
        Pattern reopened = new Replay(one, List.of()).to(List.of());
        for (Piece piece : reopened.pieces()) {
            Piece before = skirt.piece(piece.id()).orElseThrow();
            assertThat(piece.outline()).isEqualTo(before.outline());
            assertThat(piece.original()).isEmpty();
            assertThat(Likeness.same(piece, before)).isTrue();
        }
    }

    @Test
    void anotherAmountIsAsIfItHadBeenAskedAtOnce() throws Exception {
        Pattern two = made(skirt, hip(20), SeamChange.at("waist", 10).acceptingProtected());
        List<Step> course = new ArrayList<>(Step.course(two));
        course.set(0, course.get(0).withAmount(32.5));
        double before = girth(skirt, "hip");
        for (List<Pattern> known : List.of(List.of(skirt, two), List.<Pattern>of())) {
            Pattern other = new Replay(two, known).to(course);
            assertThat(girth(other, "hip")).isCloseTo(before + 32.5, within(0.01));
            assertThat(girth(other, "waist")).isCloseTo(girth(skirt, "waist") + 10, within(0.01));
        }
    }

    @Test
    void whatWasMarkedBodyAndClothSinceStays() throws Exception {
        Pattern one = made(skirt, hip(20));
        Piece back = one.pieces().get(0);
        List<LevelMark> levels = new ArrayList<>(back.levels());
        Point low = back.outline().box().centre().plus(new Point(0, 120));
        levels.add(LevelMark.through("knee", low));
        Pattern marked = one.withPiece(back.withLevels(levels)).withWish("hip", 44);
        Pattern off = new Replay(marked, List.of(skirt, one, marked)).to(without(marked, 0));
        assertThat(off.wishes()).containsEntry("hip", Wish.of(44.0));
        assertThat(off.pieces().get(0).level("knee")).isPresent();
        assertThat(off.pieces().get(0).outline())
                .isEqualTo(skirt.pieces().get(0).outline());
        assertThat(off.pieces().subList(1, off.pieces().size()))
                .isEqualTo(skirt.pieces().subList(1, skirt.pieces().size()));
    }

    @Test
    void aCourseThatCannotBeMadeIsRefusedWithItsStepAndReason() throws Exception {
        Pattern two = made(skirt, hip(20), hip(12));
        List<Step> course = new ArrayList<>(Step.course(two));
        course.set(1, course.get(1).withAmount(-2000));
        StepRefused refused =
                catchThrowableOfType(StepRefused.class, () -> new Replay(two, List.of(skirt, two)).to(course));
        assertThat(refused.note()).isEqualTo(hip(-2000).note());
        assertThat(refused.why().largest()).isPresent();
    }

    @Test
    void aSlashToAHingeIsClosedAgain() throws Exception {
        Piece back = skirt.pieces().get(0);
        Point hem = new Point(190, 730);
        Point waist = back.outline().nearest(new Point(180, 100)).point();
        Pattern one = made(skirt, new HingedSlash(back.id(), waist, hem, 12, new Point(320, 600), true));
        assertThat(new Replay(one, List.of(skirt, one)).to(List.of())).isEqualTo(skirt);
        Pattern without = new Replay(one, List.of()).to(List.of());
        assertThat(without.pieces().get(0).outline()).isEqualTo(back.outline());
        Pattern closed = made(one, new HingedSlash(back.id(), waist, hem, -12, new Point(320, 600), true));
        assertThat(Likeness.sameLine(closed.pieces().get(0).outline(), back.outline()))
                .isTrue();
    }

    @Test
    void lengthIsNotMovedBehindWidth() {
        Step width = new Step(hip(20).note(), true);
        Step length = new Step(Lengthen.below("hip", 100, 30).note(), true);
        assertThat(Replay.mayChangePlaces(width, length)).isTrue();
        assertThat(Replay.mayChangePlaces(length, width)).isFalse();
        assertThat(Replay.mayChangePlaces(width, width)).isTrue();
        assertThat(Replay.mayChangePlaces(length, length)).isTrue();
    }

    /** Any switching comes out the same by earlier patterns, by opposites, and made from the start. */
    @Test
    void allWaysBackAgree() throws Exception {
        Random random = new Random(20);
        for (int round = 0; round < 12; round++) {
            List<Alteration> changes = new ArrayList<>(List.of(
                    hip(Math.rint(random.nextDouble() * 40) - 10),
                    new SeamChange(
                            "waist",
                            Math.rint(random.nextDouble() * 16) + 1,
                            List.of(),
                            Taper.STRAIGHT,
                            false,
                            List.of(),
                            List.of(),
                            false,
                            true),
                    CentreChange.parallel(
                                    "hip",
                                    4 + round,
                                    EdgeRef.of(skirt.pieces().get(1).id(), "fold"))
                            .acceptingProtected()));
            Collections.shuffle(changes, random);
            List<Pattern> known = new ArrayList<>(List.of(skirt));
            for (Alteration change : changes) {
                known.add(change.apply(known.get(known.size() - 1)).pattern());
            }
            Pattern now = known.get(known.size() - 1);
            int off = random.nextInt(changes.size());
            Pattern exact = new Replay(now, known).to(without(now, off));
            Pattern byOpposites = new Replay(now, List.of()).to(without(now, off));
            changes.remove(off);
            Pattern anew = made(skirt, changes.toArray(Alteration[]::new));
            assertThat(exact.pieces()).isEqualTo(anew.pieces());
            for (int i = 0; i < anew.pieces().size(); i++) {
                assertThat(Likeness.same(
                                byOpposites.pieces().get(i), anew.pieces().get(i)))
                        .as("round %s, piece %s", round, i)
                        .isTrue();
            }
        }
    }
}
