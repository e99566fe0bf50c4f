package easewright.print.report;

import easewright.ease.EaseLine;
import easewright.ease.Minimum;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.print.EaseText;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.print.report.Part.Figure;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One level at a glance: body and garment as rings seen from above, and the ease before and now as bars over a common
 * scale with the least ease and the wish marked. Told apart by fill, dashes and words, so that it is read in grey.
 */
final class LevelCard {
    static final double WIDTH = 176;
    private static final double HEIGHT = 30.1;
    private static final double RING = 13;
    private static final double LEFT = 38;
    private static final double BARS = 56;
    /** Half the width of the signs for the ease now and for the wish. */
    private static final double SIGN = 1.5;
    /** Height of the letters below the bars. */
    private static final double SMALL = 2.4;

    /** So far apart two rings are two, mm. */
    private static final double APART = 0.3;

    /** From row to row of what the marks mean. */
    private static final double ROW = 5;

    private final Words words;
    private final double low;
    private final double high;
    private final double largest;

    /** A card for each of the lines, all to one scale, and below them what their marks mean. */
    static List<Figure> of(List<EaseLine> before, List<EaseLine> after, Words words) {
        List<EaseLine> all = new ArrayList<>(before);
        all.addAll(after);
        double low = 0;
        double high = 10;
        double largest = 1;
        for (EaseLine line : all) {
            for (OptionalDouble value : List.of(line.ease(), line.wish(), least(line))) {
                low = Math.min(low, value.orElse(0));
                high = Math.max(high, value.orElse(0));
            }
            largest = Math.max(largest, Math.max(line.finished(), line.body().orElse(0)));
        }
        LevelCard card = new LevelCard(words, low, high, largest);
        List<Figure> cards = new ArrayList<>();
        boolean changed = false;
        for (EaseLine line : after) {
            Optional<EaseLine> was = before.stream().filter(line::sameAs).findFirst();
            cards.add(card.figure(was, line));
            changed |= was.filter(b -> card.isSeen(b, line)).isPresent();
        }
        cards.add(card.key(changed));
        return cards;
    }

    private LevelCard(Words words, double low, double high, double largest) {
        this.words = words;
        this.low = low;
        this.high = high;
        this.largest = largest;
    }

    private Figure figure(Optional<EaseLine> before, EaseLine now) {
        Pencil pencil = new Pencil();
        rings(pencil, before, now);
        String name = new EaseText(words).title(now.girth());
        pencil.writeBold(name, LEFT, 5.4, 4.6, Tone.BLACK);
        String sentence = new EaseText(words).figures(now);
        pencil.write(sentence, new Point(LEFT, 11), 3.2, Anchor.START, 0, false, Tone.DARK);
        if (now.ease().isPresent()) {
            String ease = before.flatMap(
                            b -> b.ease().isPresent() ? Optional.of(b.ease().getAsDouble()) : Optional.empty())
                    .filter(b -> !words.length(b).equals(words.length(now.ease().getAsDouble())))
                    .map(b -> words.of(
                            "report.card.from-to",
                            Map.of("from", b, "to", now.ease().getAsDouble())))
                    .orElseGet(() -> words.of(
                            "report.card.ease", Map.of("ease", now.ease().getAsDouble())));
            pencil.write(ease, new Point(WIDTH, 5.4), 4.2, Anchor.END, 0, true, Tone.BLACK);
            bars(pencil, before, now);
        }
        return new Figure(pencil.picture(), WIDTH, HEIGHT, "", name + ": " + sentence);
    }

    private void rings(Pencil pencil, Optional<EaseLine> before, EaseLine now) {
        Point middle = new Point(RING + 1, HEIGHT / 2);
        now.body().ifPresent(body -> pencil.fill(ring(middle, body), Tone.LIGHT));
        before.filter(b -> isSeen(b, now)).ifPresent(b -> pencil.around(ring(middle, b.finished()), Pen.GHOST));
        pencil.around(ring(middle, now.finished()), Pen.EDGE);
    }

    /** Whether the ring before a change can be told from that after it: else its dashes would be lost in the other line. */
    private boolean isSeen(EaseLine before, EaseLine now) {
        return RING * Math.abs(before.finished() - now.finished()) / largest >= APART;
    }

    private Outline ring(Point middle, double girth) {
        return Pencil.circle(middle, Math.max(0.1, RING * girth / largest));
    }

    private void bars(Pencil pencil, Optional<EaseLine> before, EaseLine now) {
        OptionalDouble old = before.map(EaseLine::ease).orElse(OptionalDouble.empty());
        double top = 15;
        if (old.isPresent()) {
            pencil.write(words.of("report.card.before"), LEFT, top + 3.2, 2.8, Tone.DARK);
            bar(pencil, Minimum.drawn(old.getAsDouble(), least(now)), top, Tone.PALE);
        }
        double second = top + (old.isPresent() ? 5.2 : 2);
        pencil.write(words.of("report.card.now"), LEFT, second + 3.2, 2.8, Tone.DARK);
        double is = Minimum.drawn(now.ease().getAsDouble(), least(now));
        bar(pencil, is, second, Tone.DARK);
        pencil.fill(diamond(new Point(at(is), second + 2)), Tone.BLACK);
        double foot = second + 5.4;
        pencil.line(at(0), top - 1.4, at(0), foot, Pen.EDGE);
        // One scale below all bars, so that a sign off their ends stands on something.
        pencil.line(at(low), foot, at(high), foot, Pen.MEASURE);
        Optional<Told> least = told("least", least(now), now);
        Optional<Told> wish = told("wish", now.wish(), now);
        boolean near = least.isPresent() && wish.isPresent() && least.get().meets(wish.get());
        least.ifPresent(t -> {
            pencil.line(t.at(), top - 1.4, t.at(), foot, Pen.GHOST);
            write(pencil, t.words(), new Point(t.middle(), foot + (near ? 5 : 2.6)), Anchor.MIDDLE);
        });
        wish.ifPresent(t -> {
            double x = t.at();
            pencil.around(Pencil.circle(new Point(x, foot), SIGN), Pen.RING);
            // Beside its sign on the side away from the line of the least, as far as there is paper.
            boolean toLeft = near && (least.get().at() > x || x + 2.4 + t.wide() > WIDTH);
            Point beside = new Point(toLeft ? x - 2.4 : x + 2.4, foot + 0.9);
            Anchor side = toLeft ? Anchor.END : Anchor.START;
            write(pencil, t.words(), near ? beside : new Point(t.middle(), foot + 4.2), near ? side : Anchor.MIDDLE);
        });
        Told none = told("none", OptionalDouble.of(0), now).orElseThrow();
        if (least.stream().noneMatch(none::meets) && wish.stream().noneMatch(none::meets)) {
            write(pencil, none.words(), new Point(none.at(), foot + 2.6), Anchor.MIDDLE);
        }
    }

    private static void write(Pencil pencil, String text, Point at, Anchor anchor) {
        pencil.write(text, at, SMALL, anchor, 0, false, Tone.DARK);
    }

    /** A place on the scale with its figure, so that the bars can be read without the sentence above them. */
    private Optional<Told> told(String name, OptionalDouble ease, EaseLine line) {
        return ease.stream()
                .mapToObj(mm -> {
                    String said =
                            words.of("report.card." + name, Map.of(name, name.equals("wish") ? words.entered(mm) : mm));
                    double drawn = mm == 0 ? mm : Minimum.drawn(mm, least(line));
                    return new Told(said, at(drawn), Lettering.of(false).width(said, SMALL));
                })
                .findFirst();
    }

    /**
     * What is said of a place on the scale.
     *
     * @param at   where it is, mm
     * @param wide how wide its words are
     */
    private record Told(String words, double at, double wide) {
        /** Of its words, below the place as far as there is paper. */
        double middle() {
            return Math.min(at, WIDTH - wide / 2);
        }

        boolean meets(Told other) {
            return Math.abs(middle() - other.middle()) < (wide + other.wide) / 2 + 1.5;
        }
    }

    /** The sign of the ease there is, as it stands on the bars of the window. */
    private static Outline diamond(Point middle) {
        return Outline.polygon(List.of(
                middle.plus(new Point(0, -1.5 * SIGN)),
                middle.plus(new Point(SIGN, 0)),
                middle.plus(new Point(0, 1.5 * SIGN)),
                middle.plus(new Point(-SIGN, 0))));
    }

    private void bar(Pencil pencil, double ease, double top, Tone tone) {
        Box box = new Box(Math.min(at(0), at(ease)), top, Math.max(at(0), at(ease)), top + 4);
        if (box.width() > 0.05) {
            pencil.fill(box, tone).box(box, Pen.EDGE);
        }
    }

    private double at(double ease) {
        return BARS + (ease - low) / (high - low) * (WIDTH - BARS - 8);
    }

    private static OptionalDouble least(EaseLine line) {
        return line.minimums().stream().mapToDouble(Minimum::low).min();
    }

    /** What the marks of a card mean, as a small picture of each, and how large the rings are drawn. */
    private Figure key(boolean changed) {
        Pencil pencil = new Pencil();
        double x = 3;
        double second = 3 + ROW;
        pencil.fill(Pencil.circle(new Point(x, 3), 2), Tone.LIGHT);
        pencil.fill(diamond(new Point(x, second)), Tone.BLACK);
        x = column(pencil, words.of("report.key.body"), words.of("report.key.ease"), x);
        pencil.around(Pencil.circle(new Point(x, 3), 2.4), Pen.EDGE);
        pencil.around(Pencil.circle(new Point(x, second), SIGN), Pen.RING);
        x = column(pencil, words.of("report.key.garment"), words.of("report.key.wish"), x);
        pencil.line(x, second - 2, x, second + 2, Pen.GHOST);
        String last = changed ? words.of("report.key.before") : "";
        double after = x - 2;
        if (changed) {
            pencil.around(Pencil.circle(new Point(x, 3), 2.4), Pen.GHOST);
            after = x + 4 + Lettering.of(false).width(last, 2.8) + 10;
        }
        column(pencil, last, words.of("report.key.least"), x);
        String scale = scale(pencil, after, 3);
        String said = words.of(changed ? "report.key.words.changed" : "report.key.words", Map.of("scale", scale));
        return new Figure(pencil.picture(), WIDTH, second + 2.4, "", said);
    }

    /** A length as it is in the rings; gives what stands beside it. */
    private String scale(Pencil pencil, double x, double y) {
        double one = RING * 2 * Math.PI / largest;
        double length = words.unit() == LengthUnit.INCH ? 4 * LengthUnit.INCH.mm() : 100;
        while (length * one > RING) {
            length /= 2;
        }
        double end = x + length * one;
        pencil.line(x, y, end, y, Pen.EDGE);
        pencil.line(x, y - 1, x, y + 1, Pen.EDGE).line(end, y - 1, end, y + 1, Pen.EDGE);
        String said = words.of("report.key.scale", Map.of("length", length));
        pencil.write(said, end + 2, y + 1, 2.8, Tone.DARK);
        return said;
    }

    /** Writes beside two signs, one below the other, what they mean; gives where the signs of the next column stand. */
    private static double column(Pencil pencil, String upper, String lower, double sign) {
        double x = sign + 4;
        pencil.write(upper, x, 4, 2.8, Tone.DARK).write(lower, x, 4 + ROW, 2.8, Tone.DARK);
        Lettering face = Lettering.of(false);
        return x + Math.max(face.width(upper, 2.8), face.width(lower, 2.8)) + 10;
    }
}
