package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark;
import easewright.print.ink.Picture;
import java.util.ArrayList;
import java.util.List;

/** What is drawn on the plane of the joined sheets, as small boxes along its lines, for signs that are to stand beside it. */
final class Lines {
    /** Lines are followed in steps of about this length, mm. */
    private static final double STEP = 5;

    /** Between a sign and a line, mm. */
    private static final double AIR = 1;

    private final List<Box> boxes = new ArrayList<>();

    void add(Picture picture) {
        for (Mark mark : picture.marks()) {
            if (mark instanceof Mark.Stroke stroke) {
                stroke.run().forEach(this::add);
            } else if (mark instanceof Mark.Writing writing) {
                add(writing);
            }
        }
    }

    private void add(Segment segment) {
        boolean upright = segment instanceof Line
                && (segment.start().x() == segment.end().x()
                        || segment.start().y() == segment.end().y());
        int steps = upright ? 1 : (int) Math.max(1, Math.ceil(segment.length() / STEP));
        Point last = segment.start();
        for (int i = 1; i <= steps; i++) {
            Point next = segment.at((double) i / steps);
            boxes.add(Box.around(List.of(last, next)).grown(AIR));
            last = next;
        }
    }

    private void add(Mark.Writing writing) {
        double wide = Lettering.of(writing.bold()).width(writing.text(), writing.size());
        double before = switch (writing.anchor()) {
            case START -> 0;
            case MIDDLE -> wide / 2;
            case END -> wide;
        };
        Point along = new Point(Math.cos(writing.turn()), Math.sin(writing.turn()));
        Point start = writing.at().minus(along.times(before));
        Point up = along.quarterTurned().times(-writing.size());
        boxes.add(Box.around(List.of(start, start.plus(along.times(wide)), start.plus(up)))
                .grown(AIR));
    }

    /** Something else that takes room. */
    void add(Box box) {
        boxes.add(box.grown(AIR));
    }

    /** How much of what is drawn comes into the box, in pieces of no particular length. */
    int crossing(Box box) {
        int count = 0;
        for (Box one : boxes) {
            count += one.overlaps(box) ? 1 : 0;
        }
        return count;
    }

    /** Whether nothing drawn comes into the box. */
    boolean isClear(Box box) {
        return boxes.stream().noneMatch(box::overlaps);
    }
}
