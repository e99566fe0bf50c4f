package easewright.editor.mark;

import easewright.geom.Line;
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
 * @param pointed key of the suggestion that the list points at
 */
public record MarkState(
        boolean on,
        Step step,
        Tool tool,
        List<Snap> picks,
        Optional<Snap> over,
        Optional<Line> line,
        Set<String> leftOut,
        Optional<String> pointed) {
    /** The parts of marking, in the order in which they are best done. */
    public enum Step {
        SCALE,
        SUGGESTED;

        /** The last part of the step's keys in the bundle. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public static final MarkState OFF = new MarkState(
            false, Step.SCALE, Tool.NONE, List.of(), Optional.empty(), Optional.empty(), Set.of(), Optional.empty());

    public MarkState {
        picks = List.copyOf(picks);
        leftOut = Set.copyOf(leftOut);
    }

    MarkState withOn(boolean open) {
        return new MarkState(
                open, step, Tool.NONE, List.of(), Optional.empty(), Optional.empty(), leftOut, Optional.empty());
    }

    MarkState withStep(Step other) {
        return new MarkState(
                on, other, Tool.NONE, List.of(), Optional.empty(), Optional.empty(), leftOut, Optional.empty());
    }

    MarkState withTool(Tool other) {
        return new MarkState(on, step, other, List.of(), Optional.empty(), line, leftOut, pointed);
    }

    MarkState withPicks(List<Snap> places) {
        return new MarkState(on, step, tool, places, over, line, leftOut, pointed);
    }

    MarkState withOver(Optional<Snap> place) {
        return new MarkState(on, step, tool, picks, place, line, leftOut, pointed);
    }

    MarkState withLine(Optional<Line> measured) {
        return new MarkState(on, step, tool, picks, over, measured, leftOut, pointed);
    }

    MarkState withLeftOut(Set<String> keys) {
        return new MarkState(on, step, tool, picks, over, line, keys, pointed);
    }

    MarkState withPointed(Optional<String> key) {
        return new MarkState(on, step, tool, picks, over, line, leftOut, key);
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
