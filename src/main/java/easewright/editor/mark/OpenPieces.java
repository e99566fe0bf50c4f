package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.editor.model.Notes;
import easewright.editor.model.Pointed;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lines that look like the outline of a piece but do not close. They are closed by a straight line if the user says so,
 * and by nobody else; saving then draws that line.
 */
public final class OpenPieces {
    /** So much is shown to all sides of a gap at least, mm. */
    private static final double AROUND = 100;

    private OpenPieces() {}

    /**
     * One of them.
     *
     * @param gap    from its end back to its start
     * @param closed the piece as it would be, with nothing marked on it
     */
    public record Open(Line gap, Piece closed) {
        public String id() {
            return closed.id();
        }

        public String name() {
            return closed.name();
        }

        /** The gap with so much around it that it is seen where it is. */
        public Pointed pointed() {
            Point middle = gap.at(0.5);
            double most = Math.max(AROUND, 2 * gap.length());
            Point away = new Point(most, most);
            return new Pointed("", Optional.of(middle), List.of(new Line(middle.minus(away), middle.plus(away))));
        }

        /** The whole piece. */
        public Pointed whole() {
            return new Pointed(id(), Optional.of(gap.at(0.5)), closed.outline().segments());
        }
    }

    /** Those that are still open. */
    public static List<Open> on(Desk desk, Sheet sheet) {
        List<Open> open = new ArrayList<>();
        desk.file()
                .ifPresent(f -> f.svg().findings().stream()
                        .flatMap(finding ->
                                Notes.openLine(finding).flatMap(id -> open(id, finding.piece(), sheet)).stream())
                        .forEach(open::add));
        return open;
    }

    private static Optional<Open> open(String id, String name, Sheet sheet) {
        return sheet.loose().stream()
                .filter(rider -> rider.id().equals(id))
                .findFirst()
                .map(rider -> closed(rider, name));
    }

    private static Open closed(Rider drawn, String name) {
        List<Segment> segments = new ArrayList<>(drawn.segments());
        Line gap = new Line(
                segments.get(segments.size() - 1).end(), segments.get(0).start());
        segments.add(gap);
        return new Open(gap, Piece.bare(drawn.id(), new Outline(segments)).withName(name));
    }
}
