package easewright.editor.mark;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.Map;

/**
 * How far along an edge a place lies, as it is told and typed: down from its upper end where the edge hangs, so that all
 * places of a piece are counted from one side whichever way round its line was drawn; along an edge that lies, from
 * where it begins.
 */
final class AlongEdge {
    /** Ends of edges nearer than this are one corner, mm. */
    private static final double SAME = 0.01;

    private AlongEdge() {}

    /** Whether it is counted from the end of the edge, which is the upper one. */
    private static boolean isFromEnd(Edge edge) {
        Point way = edge.to().minus(edge.from());
        return -way.y() > Math.abs(way.x());
    }

    /** How far along it a place is told to lie, mm. */
    static double mm(Piece piece, Edge edge, Point at) {
        return counted(piece, edge, MeasureEdits.along(piece, edge, at));
    }

    /** From the start of the edge for what is told, and the other way round, mm. */
    static double counted(Piece piece, Edge edge, double mm) {
        return isFromEnd(edge) ? edge.on(piece.outline()).length() - mm : mm;
    }

    /** From where it is counted: the edge that meets this one there. */
    static String from(Piece piece, Edge edge, Words words) {
        boolean end = isFromEnd(edge);
        Point corner = end ? edge.to() : edge.from();
        return piece.edges().stream()
                .filter(e -> e != edge && (end ? e.from() : e.to()).distance(corner) < SAME)
                .findFirst()
                .map(e -> words.of("editor.notches.from", Map.of("edge", e.name())))
                .orElseGet(() -> words.of(end ? "editor.notches.from-top" : "editor.notches.from-start"));
    }
}
