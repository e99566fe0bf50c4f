package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Runs of an outline displaced along one direction, with all that lies on them. Linear, so that its opposite restores
 * the outline to rounding.
 *
 * @param along unit direction
 */
record LaidStroke(String piece, Point along, List<Lay> lays) implements Stroke {
    static final String WORD = "lay";

    /** How the displacement goes on along a run. */
    enum Form {
        /** A cubic in the extent square to the direction, by values and slopes at its ends. */
        CUBIC,
        /** In proportion to the place along the direction. */
        STRETCH,
        /** Even along the run. */
        EVEN
    }

    /**
     * One run, in the drawn direction.
     *
     * @param first  displacement where it starts, mm
     * @param slope1 slope there over the whole run, mm; 0 unless a cubic
     */
    record Lay(Form form, Point from, Point to, double first, double slope1, double last, double slope2) {
        static Lay cubic(Point from, Point to, double first, double slope1, double last, double slope2) {
            return new Lay(Form.CUBIC, from, to, first, slope1, last, slope2);
        }

        static Lay stretch(Point from, Point to, double first, double last) {
            return new Lay(Form.STRETCH, from, to, first, 0, last, 0);
        }

        static Lay even(Point from, Point to, double first, double last) {
            return new Lay(Form.EVEN, from, to, first, 0, last, 0);
        }

        private Lay opposite(Point along) {
            return new Lay(
                    form, from.plus(along.times(first)), to.plus(along.times(last)), -first, -slope1, -last, -slope2);
        }

        private String text() {
            return Settings.name(form) + " " + StrokeText.of(from) + " " + StrokeText.of(to) + " "
                    + Settings.plain(first) + " " + Settings.plain(slope1) + " " + Settings.plain(last) + " "
                    + Settings.plain(slope2);
        }

        private static Lay parse(StrokeText read) throws Refusal {
            String word = read.word();
            for (Form form : Form.values()) {
                if (Settings.name(form).equals(word)) {
                    Point from = read.point();
                    Point to = read.point();
                    double first = read.number();
                    double slope1 = read.number();
                    double last = read.number();
                    return new Lay(form, from, to, first, slope1, last, read.number());
                }
            }
            throw read.unreadable();
        }
    }

    LaidStroke {
        lays = List.copyOf(lays);
    }

    private Shift shift(Piece on) throws Refusal {
        ShiftBuilder builder = new ShiftBuilder(on.outline(), along);
        List<Point> nodes = new ArrayList<>();
        for (Lay lay : lays) {
            nodes.add(node(on, builder, lay.from()));
            nodes.add(node(on, builder, lay.to()));
        }
        for (int i = 0; i < lays.size(); i++) {
            Lay lay = lays.get(i);
            Point from = nodes.get(2 * i);
            Point to = nodes.get(2 * i + 1);
            switch (lay.form()) {
                case CUBIC -> builder.cubic(from, to, lay.first(), lay.slope1(), lay.last(), lay.slope2());
                case STRETCH -> builder.stretch(from, to, lay.first(), lay.last());
                case EVEN -> builder.even(from, to, lay.first(), lay.last());
            }
        }
        return builder.build();
    }

    private static Point node(Piece on, ShiftBuilder builder, Point wanted) throws Refusal {
        Point found = builder.split(wanted);
        if (found.distance(wanted) > Shift.ON_OUTLINE) {
            throw Refusal.of("truing-lost").with("piece", on.name());
        }
        return found;
    }

    @Override
    public Piece on(Piece on) throws Refusal {
        Shift shift = shift(on);
        Piece done = Carry.along(on, shift, 1);
        Simple.require(shift.base(), done);
        return done;
    }

    @Override
    public List<Moved> moved(Piece on) throws Refusal {
        return shift(on).moved(on.id(), 1);
    }

    @Override
    public Optional<Stroke> opposite() {
        return Optional.of(new LaidStroke(
                piece, along, lays.stream().map(lay -> lay.opposite(along)).toList()));
    }

    @Override
    public String text() {
        StringBuilder text = new StringBuilder(WORD)
                .append(' ')
                .append(StrokeText.of(along))
                .append(' ')
                .append(lays.size());
        lays.forEach(lay -> text.append(' ').append(lay.text()));
        return text.append(' ').append(piece).toString();
    }

    static LaidStroke parse(StrokeText read) throws Refusal {
        Point along = read.point();
        int count = read.count();
        List<Lay> lays = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lays.add(Lay.parse(read));
        }
        return new LaidStroke(read.rest(), along, lays);
    }
}
