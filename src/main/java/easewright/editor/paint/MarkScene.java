package easewright.editor.paint;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Caption;
import java.util.List;
import java.util.Optional;

/**
 * What is to be seen on the table, over the pieces, while marks are made.
 *
 * @param loose    drawn lines that belong to no piece
 * @param captions words written on the drawing
 * @param edges    names of edges, where they lie
 * @param soft     the outline of the piece that is being marked
 * @param strong   lines that a list or the hand points at
 * @param dots     places
 * @param tape     what is being measured
 */
public record MarkScene(
        List<Segment> loose,
        List<Caption> captions,
        List<EdgeName> edges,
        List<Segment> soft,
        List<Segment> strong,
        List<Dot> dots,
        Optional<Tape> tape) {
    public static final MarkScene EMPTY =
            new MarkScene(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty());

    public MarkScene {
        loose = List.copyOf(loose);
        captions = List.copyOf(captions);
        edges = List.copyOf(edges);
        soft = List.copyOf(soft);
        strong = List.copyOf(strong);
        dots = List.copyOf(dots);
    }

    /** Without the words written on the drawing, where it is to be seen itself. */
    public MarkScene withoutCaptions() {
        return new MarkScene(loose, List.of(), edges, soft, strong, dots, tape);
    }

    /** How a place is shown. */
    public enum Sign {
        /** Clicked already. */
        PICKED,
        /** A certain place under the hand. */
        CAUGHT,
        /** Somewhere on a line under the hand. */
        ON_LINE,
        /** Nothing under the hand. */
        FREE
    }

    /**
     * The name of an edge.
     *
     * @param spots  where it may stand, the best first
     * @param length of the edge, mm
     * @param room   how wide the piece is there, mm
     */
    public record EdgeName(List<Spot> spots, double length, double room, String words) {
        public EdgeName {
            spots = List.copyOf(spots);
        }
    }

    /**
     * A place on an edge.
     *
     * @param at     mm
     * @param inward unit direction into the piece
     */
    public record Spot(Point at, Point inward) {}

    public record Dot(Point at, Sign sign) {}

    /** A stretched tape with its length in words. */
    public record Tape(Point from, Point to, String words) {}
}
