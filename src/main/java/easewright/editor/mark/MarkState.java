package easewright.editor.mark;

import easewright.geom.Line;
import java.util.List;
import java.util.Optional;

/**
 * What is being marked at one moment. Immutable. The pattern itself is the desk's.
 *
 * @param on    whether the page of marks is open
 * @param step  which part of it
 * @param tool  what a click on the table does
 * @param picks the places clicked so far with the tool
 * @param over  what the hand is over while it has a tool
 * @param line  the line that is being measured
 */
public record MarkState(boolean on, Step step, Tool tool, List<Snap> picks, Optional<Snap> over, Optional<Line> line) {
    /** The parts of marking, in the order in which they are best done. */
    public enum Step {
        SCALE
    }

    public static final MarkState OFF =
            new MarkState(false, Step.SCALE, Tool.NONE, List.of(), Optional.empty(), Optional.empty());

    public MarkState {
        picks = List.copyOf(picks);
    }

    MarkState withOn(boolean open) {
        return new MarkState(open, step, Tool.NONE, List.of(), Optional.empty(), Optional.empty());
    }

    MarkState withStep(Step other) {
        return new MarkState(on, other, Tool.NONE, List.of(), Optional.empty(), Optional.empty());
    }

    MarkState withTool(Tool other) {
        return new MarkState(on, step, other, List.of(), Optional.empty(), line);
    }

    MarkState withPicks(List<Snap> places) {
        return new MarkState(on, step, tool, places, over, line);
    }

    MarkState withOver(Optional<Snap> place) {
        return new MarkState(on, step, tool, picks, place, line);
    }

    MarkState withLine(Optional<Line> measured) {
        return new MarkState(on, step, tool, picks, over, measured);
    }
}
