package easewright.svg;

import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;

/**
 * One path command with one set of arguments, in user units.
 *
 * @param letter   the command in effect, as it would be written: small letters are relative. Arguments after those
 *                 of an m or M are l or L
 * @param from     index in the path data of the letter, or of the first argument where the letter is not repeated
 * @param to       index just after the last character of the command
 * @param start    the place where the pen was
 * @param end      the place where the pen is afterwards
 * @param segments what it draws; empty for a move, for a closing without a gap, and for anything without length
 * @param subPath  number of the sub-path in {@link ParsedPath#strokes}; for a move, that of what is drawn next
 */
public record Command(char letter, int from, int to, Point start, Point end, List<Segment> segments, int subPath) {
    public Command {
        segments = List.copyOf(segments);
    }
}
