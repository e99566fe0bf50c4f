package easewright.print.report;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.LevelWidth;
import easewright.measure.PieceMeasures;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import easewright.print.GirthText;
import easewright.print.MovedBy;
import easewright.print.Reading;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.print.report.Part.Figure;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** A changed piece over its old self, small, with its widths at the levels. */
final class PieceSketch {
    private static final double WIDTH = 84;
    /** How high a sketch is at most, and how high where there is less room, mm. */
    static final double HEIGHT = 96;

    static final List<Double> LOWER = List.of(84.0, 74.0, 64.0);
    private static final double BORDER = 5;
    /** Size of the writing, smaller where a width is too short for it, mm. */
    private static final double LETTERS = 2.7;
    /** How high most letters are, as a part of their size. */
    private static final double HIGH = 0.75;
    /** How far from the middle of its line a width may stand, as parts of what there is. */
    private static final List<Double> ASIDE = List.of(0.0, -0.25, 0.25, -0.5, 0.5, -0.75, 0.75, -1.0, 1.0);
    /** In which a line is looked at. */
    private static final int STEPS = 200;

    private final Reading before;
    private final Reading after;
    private final Words words;

    PieceSketch(Reading before, Reading after, Words words) {
        this.before = before;
        this.after = after;
        this.words = words;
    }

    /**
     * The sketch; empty where the piece has not changed.
     *
     * @param most height, mm
     */
    Optional<Figure> of(Piece now, double most) {
        Outline old = MovedBy.outlineBefore(before.pattern(), now);
        if (!MovedBy.moved(old, now.outline())) {
            return Optional.empty();
        }
        Box room = old.box().union(now.outline().box());
        double scale = Math.min((WIDTH - 2 * BORDER) / room.width(), (most - 2 * BORDER) / room.height());
        double width = room.width() * scale + 2 * BORDER;
        double height = room.height() * scale + 2 * BORDER;
        Affine small = Affine.translation(BORDER, BORDER)
                .after(Affine.scaling(scale, scale))
                .after(Affine.translation(-room.minX(), -room.minY()));
        Pencil pencil = new Pencil();
        Outline outline = now.outline().transformed(small);
        pencil.fill(outline, Tone.PALE);
        // What stayed is one line: under it the other would show beside it as a rim.
        for (Segment segment : MovedBy.runs(now.outline(), old)) {
            pencil.run(List.of(segment.transformed(small)), Pen.GHOST);
        }
        pencil.around(outline, Pen.EDGE);
        for (Dart dart : now.darts()) {
            pencil.line(small.apply(dart.mouth1()), small.apply(dart.point()), Pen.MEASURE);
            pencil.line(small.apply(dart.mouth2()), small.apply(dart.point()), Pen.MEASURE);
        }
        for (Segment segment : MovedBy.runs(old, now.outline())) {
            pencil.run(List.of(segment.transformed(small)), Pen.MOVED);
        }
        now.grain().ifPresent(g -> {
            Point from = small.apply(g.from());
            Point to = small.apply(g.to());
            pencil.line(from, to, Pen.MEASURE);
            pencil.arrowHead(to, to.minus(from), 2, Tone.DARK).arrowHead(from, from.minus(to), 2, Tone.DARK);
        });
        StringBuilder said = new StringBuilder(now.name());
        List<Line> lines = new ArrayList<>();
        now.grain().ifPresent(g -> lines.add(new Line(small.apply(g.from()), small.apply(g.to()))));
        for (Dart dart : now.darts()) {
            lines.add(new Line(small.apply(dart.mouth1()), small.apply(dart.point())));
            lines.add(new Line(small.apply(dart.mouth2()), small.apply(dart.point())));
        }
        after.measures().piece(now.id()).ifPresent(m -> levels(pencil, m, small, lines, outline, said));
        String caption =
                words.of("report.sketch", Map.of("piece", now.name(), "scale", Math.max(2, Math.round(1 / scale))));
        return Optional.of(new Figure(pencil.picture(), Math.max(width, 60), height, caption, said.toString()));
    }

    /**
     * @param lines that words should leave to be seen
     * @param paper the piece as it is drawn
     */
    private void levels(
            Pencil pencil, PieceMeasures measures, Affine small, List<Line> lines, Outline paper, StringBuilder said) {
        for (LevelWidth width : measures.levels()) {
            if (width.spans().isEmpty() || width.count() == 0) {
                continue;
            }
            Optional<LevelWidth> old =
                    before.measures().piece(then(measures.pieceId())).flatMap(p -> p.level(width.level()));
            String is = new GirthText(words, after.pattern()).width(after.measures(), width);
            Optional<String> was = old.map(o -> new GirthText(words, before.pattern()).width(before.measures(), o))
                    // What a tape does not tell apart is told once.
                    .filter(o -> !o.equals(is) && isShownOther(old.get().net(), width.net()));
            String text = width(was, is, width);
            said.append("; ").append(text);
            List<Curve> runs = width.cloth(measures.stitch()).stream()
                    .map(run -> run.transformed(small))
                    .toList();
            dimension(pencil, runs, text, lines, paper);
        }
    }

    private boolean isShownOther(double was, double is) {
        return !words.length(was).equals(words.length(is));
    }

    /** How wide the piece is and how often that counts, as the table says it; and what it was where that was another width. */
    private String width(Optional<String> changed, String is, LevelWidth now) {
        String form = now.count() > 1 ? ".times" : "";
        Map<String, Object> values = new HashMap<>(Map.of("level", now.level(), "times", now.count()));
        changed.ifPresentOrElse(was -> values.putAll(Map.of("from", was, "to", is)), () -> values.put("width", is));
        return words.of((changed.isPresent() ? "report.sketch.level-changed" : "report.sketch.level") + form, values);
    }

    /** The piece that a piece was before, by id: a copy for the other side was the one that it is a copy of. */
    private String then(String id) {
        return after.pattern()
                .piece(id)
                .flatMap(p -> SidePair.before(before.pattern(), after.pattern(), p))
                .map(Piece::id)
                .orElse(id);
    }

    /**
     * Thin lines over the cloth from end to end with arrow heads, and how long they are together: above them, or off the
     * paper below them.
     */
    private static void dimension(Pencil pencil, List<Curve> runs, String text, List<Line> others, Outline paper) {
        if (runs.isEmpty()) {
            return;
        }
        runs.forEach(run -> pencil.along(run, Pen.MEASURE));
        Curve first = runs.get(0);
        Curve last = runs.get(runs.size() - 1);
        pencil.arrowHead(first.start(), first.segments().get(0).tangent(0).times(-1), 1.8, Tone.DARK)
                .arrowHead(
                        last.end(),
                        last.segments().get(last.segments().size() - 1).tangent(1),
                        1.8,
                        Tone.DARK);
        Line all = new Line(first.start(), last.end());
        Line right = all.start().x() <= all.end().x() ? all : (Line) all.reversed();
        Point along = right.end().minus(right.start()).unit();
        Lettering face = Lettering.of(false);
        double size = LETTERS * Math.max(0.7, Math.min(1, (right.length() - 2) / face.width(text, LETTERS)));
        double wide = face.width(text, size);
        Point above = along.quarterTurned().times(-1);
        Point on = first.pointAtLength(first.length() / 2);
        boolean below = isBeside(on, above, paper);
        boolean off = below || isBeside(on, above.times(-1), paper);
        Point up = below ? above.times(-1) : above;
        double middle = right.length() / 2;
        double reach = Math.max(0, (right.length() - wide) / 2 - 1);
        Optional<Double> clear = ASIDE.stream()
                .map(part -> middle + part * reach)
                .filter(at ->
                        off || others.stream().noneMatch(o -> crosses(o, right.start(), along, up, at, wide, size)))
                .findFirst();
        double place = clear.orElse(middle);
        double bow = bow(runs, right.start(), along, up, place, wide);
        Point at = right.start().plus(along.times(place)).plus(up.times(bow));
        if (clear.isEmpty()) {
            // On paper of its own, as a line has to pass below it.
            Point half = along.times(wide / 2 + 0.3);
            Point low = at.plus(up.times(0.7));
            Point high = at.plus(up.times(1.2 + size));
            pencil.fill(
                    Outline.polygon(List.of(low.minus(half), low.plus(half), high.plus(half), high.minus(half))),
                    Tone.PALE);
        }
        pencil.write(
                text,
                at.plus(up.times(below ? 1.2 + HIGH * size : 1.2)),
                size,
                Anchor.MIDDLE,
                Math.atan2(along.y(), along.x()),
                false,
                Tone.BLACK);
    }

    /** Whether there is paper on one side of a place on a level, and none on the other. */
    private static boolean isBeside(Point place, Point side, Outline paper) {
        return paper.contains(place.plus(side)) && !paper.contains(place.minus(side));
    }

    /** How far lines come up under words above the straight way between their ends, mm. */
    private static double bow(List<Curve> runs, Point start, Point along, Point up, double at, double wide) {
        return runs.stream()
                .flatMap(run -> run.segments().stream())
                .flatMap(segment -> IntStream.rangeClosed(0, STEPS).mapToObj(i -> segment.at((double) i / STEPS)))
                .map(p -> p.minus(start))
                .filter(p -> Math.abs(p.dot(along) - at) < wide / 2)
                .mapToDouble(p -> p.dot(up))
                .max()
                .orElse(0);
    }

    /** Whether a line passes through words above another. */
    private static boolean crosses(Line line, Point start, Point along, Point up, double at, double wide, double size) {
        return IntStream.rangeClosed(0, STEPS)
                .mapToObj(i -> line.at((double) i / STEPS).minus(start))
                .anyMatch(p -> Math.abs(p.dot(along) - at) < wide / 2 + 0.8 && p.dot(up) > 0 && p.dot(up) < size + 1.5);
    }
}
