package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Changes made before a level was marked are worked on as if it were not there, in files too. */
class LevelsMarkedLaterTest {
    private static Pattern skirt() throws Exception {
        return SvgFile.read(Path.of("sample-pieces/skirt.svg")).pattern();
    }

    private static List<Step> withAmount(Pattern pattern, int line, double mm) {
        List<Step> course = new ArrayList<>(Step.course(pattern));
        course.set(line, course.get(line).withAmount(mm));
        return course;
    }

    /** A level below the hip wherever a hip is. */
    private static Pattern marked(Pattern pattern, double below) {
        List<Level> levels = new ArrayList<>(pattern.levels());
        levels.add(Level.of("later", LevelKind.OTHER));
        Pattern marked = pattern.withLevels(levels);
        for (Piece piece : pattern.pieces()) {
            Optional<LevelMark> hip = piece.level("hip");
            if (hip.isPresent()) {
                Point at = hip.get().through().orElseThrow();
                List<LevelMark> marks = new ArrayList<>(piece.levels());
                marks.add(new LevelMark(
                        "later",
                        Optional.of(at.plus(new Point(0, below))),
                        Optional.empty(),
                        0,
                        true,
                        OptionalDouble.empty(),
                        LevelMark.Span.NEAREST,
                        Optional.empty()));
                marked = marked.withPiece(piece.toBuilder().levels(marks).build());
            }
        }
        return marked;
    }

    private static double girth(Pattern pattern, String level) {
        return Measures.of(pattern).girth(level).orElseThrow().finished();
    }

    @Test
    void aChangeBeforeTruingsTakesAnotherAmountThoughTheHemWasMarkedOnBothPiecesAfterThem() throws Exception {
        Pattern saved = SvgFile.read(Path.of("src/test/resources/changes/levels-after-truing.svg"))
                .pattern();
        Pattern made = new Replay(saved, List.of()).to(withAmount(saved, 0, 36));
        assertThat(girth(made, "hip")).isCloseTo(girth(saved, "hip") + 6, within(0.01));
        assertThat(made.changes()).hasSameSizeAs(saved.changes());
        assertThat(made.changes().get(6)).isEqualTo(saved.changes().get(6));
        assertThat(made.levels()).isEqualTo(saved.levels());
        for (int line = 0; line < 7; line++) {
            List<Step> without = new ArrayList<>(Step.course(saved));
            without.subList(line, 7).clear();
            assertThat(new Replay(saved, List.of()).to(without).changes()).hasSize(line);
        }
        Pattern back = new Replay(made, List.of()).to(withAmount(made, 0, 30));
        for (Piece piece : saved.pieces()) {
            // Truing is worked out anew, so that it may find a line that lies off by hundredths.
            assertThat(Likeness.sameLine(back.piece(piece.id()).orElseThrow().outline(), piece.outline(), 0.05))
                    .isTrue();
        }
    }

    /** A truing made again where its corner has moved on along a straight line bends the line there, and not where it was. */
    @Test
    void nothingIsLeftUntrueWhereCornersMovedOnAlongTheHem() throws Exception {
        Pattern saved = SvgFile.read(Path.of("src/test/resources/changes/levels-after-truing.svg"))
                .pattern();
        Pattern made = new Replay(saved, List.of()).to(withAmount(saved, 0, 36));
        assertThat(Truing.proposals(saved)).isEmpty();
        assertThat(Truing.proposals(made)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-80, -50, 80, 250})
    void aLevelThatTheChangeWouldHaveEndedAtDoesNotHoldIt(double below) throws Exception {
        Pattern drawn = skirt();
        Pattern now = marked(SeamChange.at("hip", 20).apply(drawn).pattern(), below);
        Pattern made = new Replay(now, List.of(drawn)).to(withAmount(now, 0, 30));
        Pattern direct = SeamChange.at("hip", 30).apply(drawn).pattern();
        for (Piece piece : direct.pieces()) {
            assertThat(Likeness.sameLine(made.piece(piece.id()).orElseThrow().outline(), piece.outline()))
                    .isTrue();
        }
        assertThat(made.level("later")).isPresent();
        assertThat(new Replay(now, List.of()).to(List.of()).changes()).isEmpty();
    }

    @Test
    void aLevelMarkedBetweenTwoChangesIsKnownToTheSecondOnly() throws Exception {
        Pattern drawn = skirt();
        Pattern once = marked(SeamChange.at("hip", 20).apply(drawn).pattern(), 120);
        Pattern twice = SeamChange.at("later", 12).apply(once).pattern();
        Pattern made = new Replay(twice, List.of()).to(withAmount(twice, 0, 26));
        Pattern direct = SeamChange.at("later", 12)
                .apply(marked(SeamChange.at("hip", 26).apply(drawn).pattern(), 120))
                .pattern();
        for (Piece piece : direct.pieces()) {
            assertThat(Likeness.sameLine(made.piece(piece.id()).orElseThrow().outline(), piece.outline()))
                    .isTrue();
        }
    }

    @Test
    void whatWasDrawnOtherwiseSinceIsRefusedWithTheChangeThatItHolds() throws Exception {
        Pattern once = SeamChange.at("hip", 20).apply(skirt()).pattern();
        Pattern twice = SeamChange.at("waist", 8).apply(once).pattern();
        Piece back = twice.pieces().get(0);
        Outline outline = back.outline();
        List<Segment> bent = new ArrayList<>(
                outline.splitAt(outline.nearest(new Point(55, 400)).place()).segments());
        int at = 0;
        while (bent.get(at).end().distance(outline.nearest(new Point(55, 400)).point()) > 1e-6) {
            at++;
        }
        Point moved = bent.get(at).end().plus(new Point(-3, 0));
        bent.set(at, Ends.endingAt(bent.get(at), moved));
        bent.set(at + 1, Ends.startingAt(bent.get(at + 1), moved));
        Pattern drawn = twice.withPiece(back.withOutline(new Outline(bent)));
        StepRefused refused = catchThrowableOfType(
                StepRefused.class, () -> new Replay(drawn, List.of()).to(withAmount(drawn, 0, 30)));
        assertThat(refused.why().code()).isEqualTo("change-one-way");
        assertThat(refused.note()).isEqualTo(drawn.changes().get(0));
    }
}
