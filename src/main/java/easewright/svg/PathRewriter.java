package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Rewrites path data where the geometry changed and nowhere else. Commands whose segments are all still there keep
 * their text; the others give way to absolute commands. Where a kept command follows, the pen is put on exactly the
 * number where it was before, so that relative commands land on the same bits. S and T after a rewritten command are
 * rewritten too, since they mirror what went before; arguments that relied on a letter now gone get their own.
 */
final class PathRewriter {
    private static final int NOWHERE = -1;

    private final String data;
    private final List<Command> commands;
    private final List<Edit> edits = new ArrayList<>();

    /** Whether the pen is no longer where the old text had it. */
    private boolean penMoved;

    /** Whether something was taken out or put in since the last command that kept its text. */
    private boolean interrupted;

    /** The edit that took out the first of the commands not yet replaced, or {@link #NOWHERE}. */
    private int hole = NOWHERE;

    private PathRewriter(String data, List<Command> commands) {
        this.data = data;
        this.commands = commands;
    }

    /**
     * The edits, as indexes in the data.
     *
     * @param drawn   the sub-paths as they were read from the data, mm
     * @param targets new geometry in mm by number of sub-path; the others stay
     * @throws IllegalArgumentException if the data is broken or does not draw what was read
     */
    static List<Edit> edits(String data, List<SubPath> drawn, Affine toMm, Map<Integer, List<Segment>> targets) {
        ParsedPath parsed = PathParser.parse(data, Stretch.largest(toMm));
        PathRewriter rewriter = new PathRewriter(data, parsed.commands());
        List<ParsedPath.Stroke> strokes = parsed.strokes(toMm);
        if (parsed.brokenAt().isPresent() || strokes.size() != drawn.size()) {
            throw new IllegalArgumentException("Not the path data that was read");
        }
        int first = 0;
        while (first < rewriter.commands.size()) {
            int group = rewriter.commands.get(first).subPath();
            int last = first;
            while (last < rewriter.commands.size()
                    && rewriter.commands.get(last).subPath() == group) {
                last++;
            }
            if (targets.containsKey(group)) {
                List<Integer> owners = strokes.get(group).commands();
                new SubPathRewriter(rewriter, first, last, drawn.get(group), owners, toMm, targets.get(group)).write();
            } else {
                for (int c = first; c < last; c++) {
                    rewriter.keep(c);
                }
            }
            first = last;
        }
        return Splices.joined(rewriter.edits);
    }

    Command command(int c) {
        return commands.get(c);
    }

    /** Whether the command before kept its text and nothing was put in after it. */
    boolean undisturbed() {
        return !interrupted;
    }

    boolean penMoved() {
        return penMoved;
    }

    void setPenMoved(boolean moved) {
        penMoved = moved;
    }

    /** Keeps a command, making absolute what leans on a pen that has moved. */
    void keep(int c) {
        Command command = commands.get(c);
        if (penMoved && command.letter() == 'm') {
            replaceMove(c, Landing.exactPair(command.end()));
            return;
        }
        if (penMoved && command.letter() != 'M') {
            putIn(c, "M" + Landing.exactPair(command.start()));
        }
        keepText(c);
        penMoved = false;
    }

    /** Keeps the characters, giving the command the letter it relied on if that is gone. */
    void keepText(int c) {
        Command command = commands.get(c);
        if (interrupted && !Character.isLetter(data.charAt(command.from()))) {
            putIn(c, String.valueOf(command.letter()));
        }
        interrupted = false;
    }

    void replaceMove(int c, String pair) {
        takeOut(c);
        putIn(c, "M" + pair);
        penMoved = false;
    }

    /** Takes a command out; what replaces it comes by {@link #putIn}. */
    void takeOut(int c) {
        Command command = commands.get(c);
        if (hole == NOWHERE) {
            hole = edits.size();
            edits.add(new Edit(gapBefore(c), command.from(), ""));
        } else {
            edits.add(new Edit(commands.get(c - 1).to(), command.from(), ""));
        }
        edits.add(new Edit(command.from(), command.to(), ""));
        interrupted = true;
    }

    /** Puts text in for the commands taken out, or else before a command. */
    void putIn(int c, String text) {
        if (hole != NOWHERE) {
            Edit gap = edits.get(hole);
            edits.set(hole, new Edit(gap.from(), gap.to(), gap.text() + text));
            hole = NOWHERE;
        } else {
            int from = commands.get(c).from();
            edits.add(new Edit(gapBefore(c), from, text));
        }
        interrupted = true;
    }

    /** Puts text in after the last command of a sub-path. */
    void putInAfter(int c, String text) {
        if (hole != NOWHERE) {
            putIn(c, text);
        } else {
            int to = commands.get(c).to();
            edits.add(new Edit(to, to, text));
            interrupted = true;
        }
    }

    /** The commands taken out need nothing in their place. */
    void leaveOut() {
        hole = NOWHERE;
    }

    /** Where text in front of a command begins: a comma may not stand before a letter and is taken along. */
    private int gapBefore(int c) {
        int from = commands.get(c).from();
        int gap = c == 0 ? from : commands.get(c - 1).to();
        return data.substring(gap, from).indexOf(',') >= 0 ? gap : from;
    }
}
