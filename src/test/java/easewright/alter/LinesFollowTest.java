package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Curve;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.SetAside;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Changes of random pieces, truings among them, switched off and on, given other amounts and put in another order: every
 * line then lies where it lies if the same course is made from the start. {@code -Dcases=100} tries more.
 */
class LinesFollowTest {
    private static final int CASES = Integer.getInteger("cases", 12);

    /** A truing keeps what it drew where the lines are still the same within what a file rounds, mm. */
    private static final double ROUNDED = 0.02;

    @ParameterizedTest
    @EnumSource(LineKind.class)
    void anotherCourseGivesTheLinesOfThatCourse(LineKind drawn) {
        Worst outlines = new Worst(drawn + " outlines");
        Worst beside = new Worst(drawn + " lines beside");
        int refused = 0;
        int all = 0;
        for (long seed = 1; seed <= CASES; seed++) {
            List<Pattern> known = new ArrayList<>(RetraceTest.course(seed, drawn));
            Pattern start = known.get(0);
            Random random = new Random(seed);
            for (int i = 0; i < 4; i++) {
                Pattern now = known.get(known.size() - 1);
                List<Step> wanted = otherwise(Step.course(now), random);
                boolean reopened = i % 2 == 1;
                all++;
                try {
                    Pattern made = new Replay(now, reopened ? List.of() : known).to(wanted);
                    Pattern anew = fromStart(start, wanted);
                    known.add(made);
                    for (int k = 0; k < anew.pieces().size(); k++) {
                        Piece is = made.pieces().get(k);
                        Piece other = anew.pieces().get(k);
                        outlines.meet(seed, Worst.apart(is.outline(), other.outline()));
                        beside.meet(seed, apart(is, other));
                    }
                } catch (Refusal | StepRefused refusal) {
                    refused++;
                }
            }
        }
        assertThat(refused).as("of %d", all).isLessThanOrEqualTo(all / 20);
        outlines.within(ROUNDED);
        beside.within(ROUNDED);
    }

    /** One step switched, by half its amount, or in the place of the next. */
    private static List<Step> otherwise(List<Step> course, Random random) {
        List<Step> steps = new ArrayList<>(course);
        int one = random.nextInt(steps.size());
        Step step = steps.get(one);
        int how = random.nextInt(3);
        if (how == 2) {
            Collections.swap(steps, one, (one + 1) % steps.size());
        } else if (how == 1 && step.amount().isPresent()) {
            steps.set(one, step.withAmount(step.amount().getAsDouble() / 2));
        } else {
            steps.set(one, step.switched(!step.on()));
        }
        return steps;
    }

    /** The course made from the start, each truing drawn as if for the first time. */
    private static Pattern fromStart(Pattern start, List<Step> course) throws Refusal {
        Pattern now = start;
        for (Step step : course) {
            if (step.on()) {
                Alteration change = Ways.from(step.note());
                Alteration first = change instanceof Trued trued
                        ? new Trued(trued.matter(), trued.target(), trued.acceptProtected(), List.of(), false)
                        : change;
                now = first.apply(now).pattern();
            }
        }
        return now;
    }

    private static double apart(Piece one, Piece other) {
        double most = 0;
        for (int i = 0; i < one.riders().size(); i++) {
            Rider line = one.riders().get(i);
            Rider wanted = other.riders().get(i);
            if (!line.segments().equals(wanted.segments())) {
                most = Math.max(most, Apart.farthest(new Curve(line.segments()), new Curve(wanted.segments())));
            }
        }
        return most;
    }

    /**
     * In files from before, a truing that was made again brought the cutting line back to where it lay when it was made
     * first: that is told, and comes right as soon as the truing is made again.
     */
    @Test
    void aLineThatStayedBehindIsToldAndComesRight() throws Exception {
        int met = 0;
        for (long seed = 1; seed <= 20; seed++) {
            Pattern start = TruingPropertiesTest.pair(seed, LineKind.STITCHING);
            Pattern wide =
                    SeamChange.at("mid", 40).acceptingProtected().apply(start).pattern();
            for (Proposal proposal : Truing.proposals(wide)) {
                Optional<Pattern> behind = leftBehind(start, wide, proposal);
                if (behind.isEmpty()) {
                    continue;
                }
                met++;
                Pattern opened = behind.get();
                List<Step> course = new ArrayList<>(Step.course(opened));
                assertThat(course).extracting(Step::on).containsExactly(false, true);
                assertThat(Truing.proposals(opened))
                        .as("seed %d, %s", seed, proposal.truing().target())
                        .anyMatch(p -> p.finding().code().equals("allowance-uneven"));
                assertCourse(opened, start, List.of(course.get(0).switched(true), course.get(1)));
                assertCourse(opened, start, List.of(course.get(0), course.get(1).switched(false)));
                assertCourse(opened, start, List.of(course.get(0).withAmount(12).switched(true), course.get(1)));
            }
        }
        assertThat(met).isGreaterThan(3);
    }

    private static void assertCourse(Pattern opened, Pattern start, List<Step> course) throws Exception {
        Pattern made = new Replay(opened, List.of()).to(course);
        Pattern anew = fromStart(start, course);
        for (int i = 0; i < anew.pieces().size(); i++) {
            assertThat(apart(made.pieces().get(i), anew.pieces().get(i))).isLessThan(ROUNDED);
        }
        assertThat(Truing.proposals(made))
                .extracting(p -> p.finding().code())
                .isEqualTo(Truing.proposals(anew).stream()
                        .map(p -> p.finding().code())
                        .toList());
    }

    /** A truing drawn stroke for stroke on what the change before it left untouched, with that change set aside. */
    private static Optional<Pattern> leftBehind(Pattern start, Pattern wide, Proposal proposal) {
        try {
            Pattern trued = proposal.apply(wide).pattern();
            Trued done = Trued.from(trued.changes().get(1));
            Pattern drawn = start;
            boolean redrawn = false;
            for (String text : done.made()) {
                Stroke stroke = Stroke.parse(text);
                Piece piece = drawn.piece(stroke.piece()).orElseThrow();
                boolean outline = stroke instanceof RunStroke;
                redrawn |= outline;
                if (outline && !stroke.continues(piece)) {
                    return Optional.empty();
                }
                drawn = drawn.withPiece(stroke.on(piece));
            }
            Pattern right = done.apply(start).pattern();
            for (int i = 0; i < right.pieces().size(); i++) {
                if (redrawn && apart(drawn.pieces().get(i), right.pieces().get(i)) > 2) {
                    return Optional.of(drawn.withChanges(List.of(done.note()))
                            .withAside(List.of(new SetAside(0, trued.changes().get(0)))));
                }
            }
            return Optional.empty();
        } catch (Refusal | IllegalArgumentException refused) {
            return Optional.empty();
        }
    }
}
