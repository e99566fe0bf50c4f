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
    private static final double HEIGHT = 30.5;
    private static final double RING = 13;
    private static final double LEFT = 38;
    private static final double BARS = 56;
    /** Half the width of the signs for the ease now and for the wish. */
    private static final double SIGN = 1.5;

    private final Words words;
    private final double low;
    private final double high;
    private final double largest;

    /** A card for each of the lines, all to one scale. */
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
        for (EaseLine line : after) {
            cards.add(card.figure(before.stream().filter(line::sameAs).findFirst(), line));
        }
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
                    .filter(b -> Math.abs(b - now.ease().getAsDouble()) >= 0.05)
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
        before.filter(b -> Math.abs(b.finished() - now.finished()) >= 0.05)
                .ifPresent(b -> pencil.around(ring(middle, b.finished()), Pen.GHOST));
        pencil.around(ring(middle, now.finished()), Pen.EDGE);
    }

    private Outline ring(Point middle, double girth) {
        return Pencil.circle(middle, Math.max(0.1, RING * girth / largest));
    }

    private void bars(Pencil pencil, Optional<EaseLine> before, EaseLine now) {
        OptionalDouble old = before.map(EaseLine::ease).orElse(OptionalDouble.empty());
        double top = 15;
        if (old.isPresent()) {
            pencil.write(words.of("report.card.before"), LEFT, top + 3.2, 2.8, Tone.DARK);
            bar(pencil, old.getAsDouble(), top, Tone.PALE);
        }
        double second = top + (old.isPresent() ? 5.2 : 2);
        pencil.write(words.of("report.card.now"), LEFT, second + 3.2, 2.8, Tone.DARK);
        bar(pencil, now.ease().getAsDouble(), second, Tone.DARK);
        pencil.fill(diamond(new Point(at(now.ease().getAsDouble()), second + 2)), Tone.BLACK);
        double foot = second + 5.4;
        pencil.line(at(0), top - 1.4, at(0), foot, Pen.EDGE);
        least(now).ifPresent(least -> {
            pencil.line(at(least), top - 1.4, at(least), foot, Pen.GHOST);
            pencil.write(
                    words.of("report.card.least"),
                    new Point(at(least), foot + (nearWish(now, least) ? 5 : 2.6)),
                    2.4,
                    Anchor.MIDDLE,
                    0,
                    false,
                    Tone.DARK);
        });
        now.wish().ifPresent(wish -> {
            double x = at(wish);
            pencil.around(Pencil.circle(new Point(x, foot), SIGN), Pen.RING);
            boolean near = least(now).isPresent() && nearWish(now, least(now).getAsDouble());
            // Beside its sign on the side away from the line of the least.
            boolean toLeft = near && at(least(now).getAsDouble()) > x;
            Point place = near ? new Point(toLeft ? x - 2.4 : x + 2.4, foot + 0.9) : new Point(x, foot + 4.2);
            Anchor anchor = near ? toLeft ? Anchor.END : Anchor.START : Anchor.MIDDLE;
            pencil.write(words.of("report.card.wish"), place, 2.4, anchor, 0, false, Tone.DARK);
        });
    }

    /** The sign of the ease there is, as it stands on the bars of the window. */
    private static Outline diamond(Point middle) {
        return Outline.polygon(List.of(
                middle.plus(new Point(0, -1.5 * SIGN)),
                middle.plus(new Point(SIGN, 0)),
                middle.plus(new Point(0, 1.5 * SIGN)),
                middle.plus(new Point(-SIGN, 0))));
    }

    /** Whether the words for the two would stand in each other's way. */
    private boolean nearWish(EaseLine line, double least) {
        return line.wish().isPresent() && Math.abs(at(line.wish().getAsDouble()) - at(least)) < 12;
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

    /** What the marks of a card mean, as a small picture of each. */
    static Figure key(Words words) {
        Pencil pencil = new Pencil();
        double x = 3;
        pencil.fill(Pencil.circle(new Point(x, 3), 2), Tone.LIGHT);
        pencil.fill(diamond(new Point(x, 7.4)), Tone.BLACK);
        x = column(pencil, words.of("report.key.body"), words.of("report.key.ease"), x);
        pencil.around(Pencil.circle(new Point(x, 3), 2.4), Pen.EDGE);
        pencil.around(Pencil.circle(new Point(x, 7.4), SIGN), Pen.RING);
        x = column(pencil, words.of("report.key.garment"), words.of("report.key.wish"), x);
        pencil.around(Pencil.circle(new Point(x, 3), 2.4), Pen.GHOST);
        pencil.line(x, 5.4, x, 9.4, Pen.GHOST);
        column(pencil, words.of("report.key.before"), words.of("report.key.least"), x);
        return new Figure(pencil.picture(), WIDTH, 9.6, "", words.of("report.key.words"));
    }

    /** Writes beside two signs, one below the other, what they mean; gives where the signs of the next column stand. */
    private static double column(Pencil pencil, String upper, String lower, double sign) {
        double x = sign + 4;
        pencil.write(upper, x, 4, 2.8, Tone.DARK).write(lower, x, 8.4, 2.8, Tone.DARK);
        Lettering face = Lettering.of(false);
        return x + Math.max(face.width(upper, 2.8), face.width(lower, 2.8)) + 10;
    }
}
