package easewright.print.ink;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;

/** One thing drawn. */
public sealed interface Mark {
    /** The same under a map that keeps shapes: a shift, a turn, or an even change of size. */
    Mark transformed(Affine map);

    /**
     * A line.
     *
     * @param run    segments in order; where one does not start at the end of the last, the pen is lifted
     * @param closed joined back to its start
     */
    record Stroke(List<Segment> run, boolean closed, Pen pen) implements Mark {
        public Stroke {
            run = List.copyOf(run);
        }

        @Override
        public Mark transformed(Affine map) {
            return new Stroke(run.stream().map(s -> s.transformed(map)).toList(), closed, pen);
        }
    }

    /** An area inside one closed line. */
    record Fill(List<Segment> loop, Tone tone) implements Mark {
        public Fill {
            loop = List.copyOf(loop);
        }

        @Override
        public Mark transformed(Affine map) {
            return new Fill(loop.stream().map(s -> s.transformed(map)).toList(), tone);
        }
    }

    /**
     * A line of writing.
     *
     * @param at   the place on the base line that the anchor names
     * @param size height of the letters' body, mm
     * @param turn direction of the base line, radians clockwise from left to right
     */
    record Writing(String text, Point at, double size, Anchor anchor, double turn, boolean bold, Tone tone)
            implements Mark {
        @Override
        public Mark transformed(Affine map) {
            Point along = map.applyToDirection(new Point(Math.cos(turn), Math.sin(turn)));
            return new Writing(
                    text, map.apply(at), size * along.norm(), anchor, Math.atan2(along.y(), along.x()), bold, tone);
        }
    }

    /** Which part of a line of writing lies at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }
}
