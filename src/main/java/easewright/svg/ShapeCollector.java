package easewright.svg;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Turns shape elements into drawn shapes, within the bounds of what any pattern holds. */
final class ShapeCollector {
    /** Most segments in a drawing: some hundred times a large nest of sizes. */
    static final int MOST_SEGMENTS = 1_000_000;

    /** Longest path data or list of points that is read, characters. */
    private static final int LONGEST_DATA = 8_000_000;

    /** Nothing on a cutting table is this far away, mm. */
    private static final double FARTHEST = 1e6;

    /** The drawing has more segments than any pattern. */
    static final class TooMuch extends Exception {
        private static final long serialVersionUID = 1L;
    }

    private final ShapeNames names;
    private final List<DrawnShape> found = new ArrayList<>();
    private int segments;

    ShapeCollector(ShapeNames names) {
        this.names = names;
    }

    List<DrawnShape> found() {
        return found;
    }

    /** Adds what the element draws, if it draws anything. */
    void add(Frame frame, Map<String, String> style, Notes notes) throws TooMuch {
        Element element = frame.element();
        String data = element.get(element.name.equals("path") ? "d" : "points");
        if (data != null && data.length() > LONGEST_DATA) {
            throw new TooMuch();
        }
        ShapeGeometry geometry = new ShapeGeometry(
                element, style, frame.toMm(), frame.viewportWidth(), frame.viewportHeight(), frame.source(), notes);
        List<SubPath> drawn;
        try {
            drawn = geometry.subPaths();
        } catch (ShapeGeometry.TooMany e) {
            throw new TooMuch();
        } catch (IllegalArgumentException beyondNumbers) {
            notes.add("out-of-range", Severity.CAUTION, ShapeNames.called(frame.source()));
            return;
        }
        if (drawn.isEmpty()) {
            return;
        }
        for (SubPath one : drawn) {
            segments += one.segments().size();
        }
        if (segments > MOST_SEGMENTS) {
            throw new TooMuch();
        }
        if (farAway(drawn)) {
            notes.add("out-of-range", Severity.CAUTION, ShapeNames.called(frame.source()));
            return;
        }
        List<SubPath> closed = new ArrayList<>(drawn.size());
        for (SubPath one : drawn) {
            closed.add(Closing.of(one, frame.source(), notes));
        }
        found.add(shape(frame, closed, geometry.styled(), notes));
    }

    private DrawnShape shape(Frame frame, List<SubPath> subPaths, boolean styled, Notes notes) {
        Element element = frame.element();
        boolean copy = frame.via() != null;
        boolean flat = frame.toMm().isSingular();
        if (flat) {
            notes.add("transform-flattens", Severity.CAUTION, ShapeNames.called(frame.source()));
        }
        String label = ShapeNames.label(frame.source());
        return new DrawnShape(
                element.index,
                copy ? names.idOfCopy(frame.source()) : names.idOf(element),
                !copy && names.given(element),
                element.name,
                label.isEmpty() ? ShapeNames.label(element) : label,
                frame.groups(),
                subPaths,
                frame.toMm(),
                !copy && !flat && !element.fromEntity && !styled,
                frame.sight().shown());
    }

    private static boolean farAway(List<SubPath> drawn) {
        for (SubPath one : drawn) {
            for (Segment segment : one.segments()) {
                if (farAway(segment.start()) || farAway(segment.end())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean farAway(Point p) {
        return Math.abs(p.x()) > FARTHEST || Math.abs(p.y()) > FARTHEST;
    }
}
