package easewright.editor.model;

import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.ease.StretchSaid;
import easewright.pattern.Level;
import easewright.print.StretchText;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One level of the ease sheet as it is shown, all in words.
 *
 * @param body    empty where not known
 * @param finished empty where the level lies on no piece
 * @param name    of the level, with the limb where left and right have each their own
 * @param classes  each with the mark of its source; empty where no table speaks of the level
 * @param called   the classes after the number that they are for; empty likewise
 * @param brief    of all that is said the one line that tells most: what the ease is called, or what it asks of a knit
 * @param minimums likewise, the least ease for wearing
 * @param stretch  what the ease asks of a knit, a sentence each, likewise
 * @param sizes   how every size stands to the wish, where there is one and the pattern comes in several
 * @param others  how it stands in the sizes in which the same is done
 * @param verdict how the ease stands to the wish and the minimum, in a short sentence
 */
public record EaseRow(
        Level level,
        String name,
        String body,
        String finished,
        String ease,
        String percent,
        String wish,
        List<String> classes,
        String called,
        String brief,
        List<String> minimums,
        List<String> stretch,
        Standing standing,
        String verdict,
        OptionalDouble missing,
        EaseScale scale,
        Optional<SizeWishes.Said> sizes,
        Optional<OtherSizes> others) {
    /** How the ease stands. */
    public enum Standing {
        /** No body girth, or none of the garment, so no ease. */
        UNKNOWN,
        /** Below the smallest ease any source allows for wearing. */
        TIGHT,
        /** Below the smallest ease that is asked for wearing, and yet a table of classes has a word for it. */
        DISPUTED,
        /** Body and garment are so far apart that a unit is likely wrong. */
        UNLIKELY,
        /** Away from the wish. */
        AWAY,
        /** As wished. */
        MET,
        /** There is ease, and no wish. */
        NO_WISH
    }

    /** Nearer to the wish than this is met: half of what a tape shows, mm. */
    static final double MET_WITHIN = 0.5;

    /** A least ease reads the same whatever the hand does: put into words once. */
    private static final Map<InUnit, String> MINIMUMS = new ConcurrentHashMap<>();

    /**
     * @param certain whether it is known which garment this is; if not, each figure says for which it is
     * @param stretch what sources say of the cloth, where it is a knit whose stretch is known
     * @param foot    takes the sources
     */
    static EaseRow of(EaseLine line, Words words, boolean certain, Optional<StretchSaid> stretch, EaseFoot foot) {
        List<Minimum> asked = line.minimums();
        List<Classed> classes = telling(line);
        Standing standing = standing(line, asked, classes);
        List<String> classed = classes(classes, words, foot);
        String called = called(line, classed, words);
        String uses = stretch.map(said -> sentence(new StretchText(words, foot::mark).uses(said, line)))
                .orElse("");
        return new EaseRow(
                line.level(),
                line.name(),
                length(line.body(), words),
                isNowhere(line) ? "" : brief(line.finished(), words),
                length(line.ease(), words),
                line.percent().isPresent()
                        ? words.of(
                                "editor.ease.percent",
                                Map.of("ease.percent", line.percent().getAsDouble()))
                        : "",
                length(line.wish(), words),
                classed,
                called,
                called.isEmpty() ? uses : called,
                minimums(asked, words, certain, foot),
                stretch.map(said -> sentences(new StretchText(words, foot::mark).level(said, line)))
                        .orElse(List.of()),
                standing,
                verdict(standing, line, asked, words),
                line.missing(),
                EaseScale.of(line, classes, asked),
                Optional.empty(),
                Optional.empty());
    }

    EaseRow withSizes(Optional<SizeWishes.Said> wishes, Optional<OtherSizes> also) {
        return new EaseRow(
                level, name, body, finished, ease, percent, wish, classes, called, brief, minimums, stretch, standing,
                verdict, missing, scale, wishes, also);
    }

    /** Says of a girth with which no body is compared yet that it looks like that of one half. */
    EaseRow asHalf(Words words) {
        return new EaseRow(
                level,
                name,
                body,
                finished,
                ease,
                percent,
                wish,
                classes,
                called,
                brief,
                minimums,
                stretch,
                standing,
                words.of("editor.ease.half"),
                missing,
                scale,
                sizes,
                others);
    }

    /** All that sources say of the ease there is, and how every size stands to the wish: a line each. */
    public List<String> told(Words words) {
        List<String> told = new ArrayList<>();
        if (standing != Standing.UNKNOWN) {
            told.add(called);
            if (!minimums.isEmpty()) {
                String asked = String.join(words.of("editor.ease.between"), minimums);
                told.add(words.of("editor.ease.minimums", Map.of("asked", asked)));
            }
            told.addAll(stretch);
        }
        told.addAll(others.map(OtherSizes::told).orElse(List.of()));
        told.add(sizes.map(SizeWishes.Said::words).orElse(""));
        told.removeIf(String::isEmpty);
        return told;
    }

    /** Which sizes do not meet the one wish while others do, in a sentence; empty where all are alike. */
    public String unmet(Words words) {
        List<String> unmet = sizes.map(SizeWishes.Said::unmet).orElse(List.of());
        return unmet.isEmpty()
                ? ""
                : words.of(
                        unmet.size() == 1 ? "editor.ease.sizes.differ.one" : "editor.ease.sizes.differ",
                        Map.of("sizes", unmet));
    }

    /** What is to be said of other sizes on one line: those in which the same is done, then those that miss the wish. */
    public String elsewhere(Words words) {
        String also = others.map(OtherSizes::brief).orElse("");
        String unmet = unmet(words);
        return also.isEmpty() || unmet.isEmpty() ? also + unmet : also + " " + unmet;
    }

    private static List<String> sentences(List<String> lines) {
        return lines.stream().map(EaseRow::sentence).toList();
    }

    private static String sentence(String line) {
        return line.isEmpty() ? line : Character.toUpperCase(line.charAt(0)) + line.substring(1);
    }

    private static Standing standing(EaseLine line, List<Minimum> asked, List<Classed> classes) {
        if (line.ease().isEmpty()) {
            return Standing.UNKNOWN;
        }
        if (line.missing().isPresent() && !isUnlikely(line)) {
            return Math.abs(line.missing().getAsDouble()) <= MET_WITHIN ? Standing.MET : Standing.AWAY;
        }
        if (isUnlikely(line)) {
            return Standing.UNLIKELY;
        }
        boolean tight = isTight(line, asked);
        boolean classed = classes.stream().anyMatch(c -> c.where() != Classed.Where.BELOW);
        return !tight ? Standing.NO_WISH : classed ? Standing.DISPUTED : Standing.TIGHT;
    }

    /** Whether no piece counts at the level, so that there is nothing to measure. */
    private static boolean isNowhere(EaseLine line) {
        return line.girth().parts().isEmpty();
    }

    /** Whether the ease is less than every source asks for wearing. */
    private static boolean isTight(EaseLine line, List<Minimum> asked) {
        double ease = line.ease().orElse(0);
        return !asked.isEmpty() && asked.stream().allMatch(m -> m.isMissedBy(ease));
    }

    private static double least(List<Minimum> asked) {
        return asked.stream().mapToDouble(Minimum::low).min().orElse(0);
    }

    /** A body so far from the garment that one of the two was most likely typed or scaled in another unit. */
    private static boolean isUnlikely(EaseLine line) {
        double body = line.body().orElse(line.finished());
        return body > 2 * line.finished() || body < line.finished() / 4;
    }

    private static String verdict(Standing standing, EaseLine line, List<Minimum> asked, Words words) {
        return switch (standing) {
            case UNKNOWN -> words.of(isNowhere(line) ? "editor.ease.nowhere" : "editor.ease.unknown");
            case MET -> words.of(isTight(line, asked) ? "editor.ease.met.tight" : "editor.ease.met");
            case NO_WISH -> words.of("editor.ease.no-wish");
            case TIGHT -> words.of(line.ease().orElse(0) < 0 ? "editor.ease.smaller" : "editor.ease.tight");
            case DISPUTED -> words.of("editor.ease.disputed", Map.of("least", least(asked)));
            case UNLIKELY -> words.of("editor.ease.unlikely");
            case AWAY -> {
                double missing = line.missing().orElse(0);
                yield missing > 0
                        ? words.of("editor.ease.missing", Map.of("amount", missing))
                        : words.of("editor.ease.over", Map.of("amount", -missing));
            }
        };
    }

    /**
     * What the tables say, those first that have a word for it. Of one source with several tables for a
     * garment only those are kept, since that an ease lies outside the others says nothing then.
     */
    private static List<Classed> telling(EaseLine line) {
        List<Classed> fitting = line.classes().stream()
                .sorted(Comparator.comparing(c -> c.where() != Classed.Where.WITHIN))
                .toList();
        Map<List<String>, Classed> first = new LinkedHashMap<>();
        List<Classed> kept = new ArrayList<>();
        for (Classed each : fitting) {
            Classed said = first.putIfAbsent(
                    List.of(each.table().source(), each.table().garment()), each);
            if (said == null || each.where() == Classed.Where.WITHIN) {
                kept.add(each);
            }
        }
        return kept;
    }

    private static String called(EaseLine line, List<String> classed, Words words) {
        return classed.isEmpty()
                ? ""
                : words.of(
                        "editor.ease.called",
                        Map.of("ease", line.ease().orElse(0), "classes", String.join(", ", classed)));
    }

    private static List<String> classes(List<Classed> classes, Words words, EaseFoot foot) {
        List<String> out = new ArrayList<>();
        for (Classed classed : classes) {
            Map<String, Object> values = new TreeMap<>();
            values.put("word", classed.word());
            values.put("lowest", classed.table().bands().get(0).word());
            values.put("mark", foot.mark(classed.table()));
            out.add(words.of("editor.ease.class." + classed.where().name().toLowerCase(Locale.ROOT), values));
        }
        return List.copyOf(out);
    }

    private static List<String> minimums(List<Minimum> asked, Words words, boolean certain, EaseFoot foot) {
        List<String> out = new ArrayList<>();
        for (Minimum minimum : asked) {
            InUnit told = new InUnit(minimum, words.unit(), certain);
            String said = MINIMUMS.computeIfAbsent(told, m -> said(minimum, words, certain));
            out.add(said + "\u00a0" + foot.mark(minimum));
        }
        return List.copyOf(out);
    }

    private static String said(Minimum minimum, Words words, boolean certain) {
        List<String> when = new ArrayList<>();
        if (!certain && !Garment.OTHER.fits(minimum.garment())) {
            when.add(minimum.garment());
        }
        if (!minimum.note().isEmpty()) {
            when.add(words.retold(minimum.note()));
        }
        Map<String, Object> values = new TreeMap<>();
        values.put("low", minimum.low());
        minimum.high().ifPresent(high -> values.put("high", high));
        values.put("note", String.join("; ", when));
        String key = minimum.high().isPresent() ? "editor.ease.minimum.range" : "editor.ease.minimum";
        return words.of(when.isEmpty() ? key : key + ".for", values);
    }

    private record InUnit(Minimum minimum, LengthUnit unit, boolean certain) {}

    private static String length(OptionalDouble mm, Words words) {
        return mm.isPresent() ? brief(mm.getAsDouble(), words) : "";
    }

    /** As short as a column wants it: inches by their sign. */
    private static String brief(double mm, Words words) {
        return words.length(mm).replaceFirst("[\\s\\u00a0]in$", "\u2033");
    }
}
