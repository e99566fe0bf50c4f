package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;

/** Rewrites the corners of a polygon or polyline that changed; the others keep their text. */
final class PointsRewriter {
    private final String data;
    private final List<Corner> corners;
    private final Landing landing;

    /** Two numbers where they stand. */
    private record Corner(int from, int to, Point units) {}

    private PointsRewriter(String data, List<Corner> corners, Landing landing) {
        this.data = data;
        this.corners = corners;
        this.landing = landing;
    }

    /**
     * The edits, as indexes in the data.
     *
     * @param closed whether it is a polygon
     * @param target straight segments, mm
     * @throws IllegalArgumentException if the data is broken
     */
    static List<Edit> edits(String data, boolean closed, Affine toMm, List<Segment> target) {
        List<Corner> corners = corners(data);
        Landing landing = new Landing(toMm);
        List<Point> old = new ArrayList<>();
        for (Corner corner : corners) {
            landing.know(corner.units());
            old.add(toMm.apply(corner.units()));
        }
        List<Point> wanted = new ArrayList<>();
        target.forEach(segment -> wanted.add(segment.start()));
        Point end = target.get(target.size() - 1).end();
        if (!closed) {
            wanted.add(end);
        }
        return new PointsRewriter(data, corners, landing).edits(old, wanted, closed);
    }

    private static List<Corner> corners(String data) {
        List<Corner> corners = new ArrayList<>();
        NumberScanner in = new NumberScanner(data);
        in.skipSpace();
        while (!in.atEnd()) {
            int from = in.at();
            double x = in.number();
            in.skipCommaSpace();
            double y = in.number();
            if (Double.isNaN(x) || Double.isNaN(y)) {
                throw new IllegalArgumentException("Not whole pairs of numbers");
            }
            corners.add(new Corner(from, in.at(), new Point(x, y)));
            in.skipCommaSpace();
        }
        return corners;
    }

    private List<Edit> edits(List<Point> old, List<Point> wanted, boolean closed) {
        // A corner written twice running draws nothing the second time: such a copy stays if the corner stays.
        List<Integer> first = new ArrayList<>();
        List<Point> distinct = new ArrayList<>();
        for (int i = 0; i < old.size(); i++) {
            boolean copy = i > 0 && old.get(i).equals(old.get(i - 1));
            boolean closing =
                    closed && i == old.size() - 1 && i > 0 && old.get(i).equals(old.get(0));
            if (!copy && !closing) {
                distinct.add(old.get(i));
            }
            first.add(closing ? 0 : distinct.size() - 1);
        }
        Alignment<Point> alignment = Alignment.of(distinct, wanted, closed);
        List<Edit> edits = new ArrayList<>();
        int done = 0;
        for (int i = 0; i < corners.size(); i++) {
            int kept = alignment.kept()[first.get(i)];
            Corner corner = corners.get(i);
            boolean copy = i > 0 && (first.get(i).equals(first.get(i - 1)) || first.get(i) == 0);
            if (copy && kept >= 0) {
                continue;
            }
            if (kept < 0) {
                boolean room = done < alignment.changed().size() && !copy && !keptLater(alignment, done);
                edits.add(new Edit(
                        room || i == 0 ? corner.from() : corners.get(i - 1).to(),
                        corner.to(),
                        room ? text(alignment.changed().get(done++)) : ""));
                continue;
            }
            while (done < kept) {
                edits.add(new Edit(
                        corner.from(), corner.from(), text(alignment.changed().get(done++)) + " "));
            }
            done = kept + 1;
        }
        int end = corners.get(corners.size() - 1).to();
        while (done < alignment.changed().size()) {
            edits.add(new Edit(end, end, " " + text(alignment.changed().get(done++))));
        }
        return Splices.joined(edits).stream().map(this::apart).toList();
    }

    /** Numbers may stand side by side without a space where a point or sign tells them apart; new ones may not. */
    private Edit apart(Edit edit) {
        boolean afterNumber = edit.from() > 0 && inNumber(data.charAt(edit.from() - 1));
        boolean beforeNumber = edit.to() < data.length() && inNumber(data.charAt(edit.to()));
        String text = edit.text();
        if (text.isEmpty()) {
            return afterNumber && beforeNumber ? new Edit(edit.from(), edit.to(), " ") : edit;
        }
        String before = afterNumber && inNumber(text.charAt(0)) ? " " : "";
        String after = beforeNumber && inNumber(text.charAt(text.length() - 1)) ? " " : "";
        return new Edit(edit.from(), edit.to(), before + text + after);
    }

    private static boolean inNumber(char c) {
        return NumberScanner.isDigit(c) || c == '.' || c == '-' || c == '+';
    }

    private static boolean keptLater(Alignment<Point> alignment, int j) {
        for (int kept : alignment.kept()) {
            if (kept == j) {
                return true;
            }
        }
        return false;
    }

    /** A corner written in the manner of the first one. */
    private String text(Point mm) {
        Corner model = corners.get(0);
        boolean comma = data.substring(model.from(), model.to()).indexOf(',') >= 0;
        return String.join(comma ? "," : " ", landing.numbers(mm));
    }
}
