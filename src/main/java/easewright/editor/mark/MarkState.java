package easewright.editor.mark;

import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What is being marked at one moment. Immutable. The pattern itself is the desk's.
 *
 * @param on      whether the page of marks is open
 * @param step    which part of it
 * @param tool    what a click on the table does
 * @param picks   the places clicked so far with the tool
 * @param over    what the hand is over while it has a tool
 * @param line    the line that is being measured
 * @param leftOut keys of suggestions that are not to be taken
 * @param lit     lines that a list points at
 * @param piece   id of the piece whose marks are listed
 * @param outline id of a closed line of which is asked what it is
 * @param level   name of the level that is worked at, which the tool puts on pieces
 * @param moving  a level in the hand
 * @param thoughts what is suggested
 */
public record MarkState(
        boolean on,
        Step step,
        Tool tool,
        List<Snap> picks,
        Optional<Snap> over,
        Optional<Line> line,
        Set<String> leftOut,
        List<Segment> lit,
        Optional<String> piece,
        Optional<String> outline,
        Optional<String> level,
        Optional<Moving> moving,
        Thoughts thoughts) {
    /** The parts of marking, in the order in which they are best done. */
    public enum Step {
        SCALE,
        SUGGESTED,
        PIECES,
        SEAMS,
        LEVELS;

        /** The last part of the step's keys in the bundle. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A level that is being dragged.
     *
     * @param shown the pattern as it would be if it were let go now
     */
    public record Moving(String piece, String level, Pattern shown) {}

    public static final MarkState OFF = new MarkState(
            false,
            Step.SCALE,
            Tool.NONE,
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Set.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Thoughts.NONE);

    public MarkState {
        picks = List.copyOf(picks);
        leftOut = Set.copyOf(leftOut);
        lit = List.copyOf(lit);
    }

    /** With empty hands. */
    private MarkState idle(boolean open, Step now) {
        return new MarkState(
                open,
                now,
                Tool.NONE,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                leftOut,
                List.of(),
                piece,
                Optional.empty(),
                level,
                Optional.empty(),
                thoughts);
    }

    MarkState withOn(boolean open) {
        return idle(open, step);
    }

    MarkState withStep(Step other) {
        return idle(on, other);
    }

    MarkState withTool(Tool other) {
        return new MarkState(
                on,
                step,
                other,
                List.of(),
                Optional.empty(),
                line,
                leftOut,
                lit,
                piece,
                outline,
                level,
                moving,
                thoughts);
    }

    MarkState withPicks(List<Snap> places) {
        return new MarkState(on, step, tool, places, over, line, leftOut, lit, piece, outline, level, moving, thoughts);
    }

    MarkState withOver(Optional<Snap> place) {
        return new MarkState(on, step, tool, picks, place, line, leftOut, lit, piece, outline, level, moving, thoughts);
    }

    MarkState withLine(Optional<Line> measured) {
        return new MarkState(
                on, step, tool, picks, over, measured, leftOut, lit, piece, outline, level, moving, thoughts);
    }

    MarkState withLeftOut(Set<String> keys) {
        return new MarkState(on, step, tool, picks, over, line, keys, lit, piece, outline, level, moving, thoughts);
    }

    MarkState withLit(List<Segment> lines) {
        return new MarkState(
                on, step, tool, picks, over, line, leftOut, lines, piece, outline, level, moving, thoughts);
    }

    MarkState withPiece(Optional<String> id) {
        return new MarkState(
                on, step, tool, picks, over, line, leftOut, List.of(), id, Optional.empty(), level, moving, thoughts);
    }

    MarkState withOutline(Optional<String> id) {
        return new MarkState(on, step, tool, picks, over, line, leftOut, List.of(), piece, id, level, moving, thoughts);
    }

    MarkState withLevel(Optional<String> name) {
        return new MarkState(on, step, tool, picks, over, line, leftOut, lit, piece, outline, name, moving, thoughts);
    }

    MarkState withMoving(Optional<Moving> dragged) {
        return new MarkState(on, step, tool, picks, over, line, leftOut, lit, piece, outline, level, dragged, thoughts);
    }

    MarkState withThoughts(Thoughts now) {
        return new MarkState(on, step, tool, picks, over, line, leftOut, lit, piece, outline, level, moving, now);
    }

    /** With the suggestion taken, or left out. */
    MarkState withTaken(String key, boolean taken) {
        Set<String> keys = new HashSet<>(leftOut);
        if (taken) {
            keys.remove(key);
        } else {
            keys.add(key);
        }
        return withLeftOut(keys);
    }
}
