package easewright.editor.model;

import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.ease.StretchSaid;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.print.StretchText;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
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
 * Puts a level of the ease sheet into words: its numbers, how the ease stands, and what tables and sources say of it,
 * each with the mark of its source.
 */
final class EaseWords {
    /** A least ease reads the same whatever the hand does: put into words once. */
    private static final Map<InUnit, String> MINIMUMS = new ConcurrentHashMap<>();

    private EaseWords() {}

    /**
     * @param certain whether it is known which garment this is; if not, each figure says for which it is
     * @param stretch what sources say of the cloth, where it is a knit whose stretch is known
     * @param foot    takes the sources
     * @param standing the ease there is while nothing is tried
     */
    static EaseRow row(
            EaseLine line,
            Words words,
            boolean certain,
            Optional<StretchSaid> stretch,
            EaseFoot foot,
            OptionalDouble standing) {
        List<Minimum> asked = line.minimums();
        List<Classed> classes = telling(line);
        EaseRow.Standing stands = stands(line, asked, classes);
        List<String> classed = classes(classes, words, foot);
        String called = called(line, classed, words);
        String uses = stretch.map(said -> sentence(new StretchText(words, foot::mark).uses(said, line)))
                .orElse("");
        return new EaseRow(
                line.level(),
                line.name(),
                length(line.body(), words),
                isNowhere(line) ? "" : words.length(GirthText.finished(line, words)),
                length(line.ease(), words),
                line.percent().isPresent()
                        ? words.of("editor.ease.percent", Map.of("ease.percent", EaseText.percent(line, words)))
                        : "",
                entered(line.wish(), words),
                classed,
                called,
                besideWish(stands, line, asked, classes, brief(line, called, uses, stretch, words), words),
                minimums(asked, words, certain, foot),
                smallest(asked, words),
                near(line, asked, words),
                stretch.map(said -> sentences(new StretchText(words, foot::mark).level(said, line)))
                        .orElse(List.of()),
                stands,
                withSides(line, verdict(stands, line, asked, words), words),
                line.missing(),
                EaseScale.of(line, classes, asked, standing, words.unit()),
                Optional.empty(),
                Optional.empty());
    }

    /** What a garment that is smaller than the body asks of its cloth is told beside every word for it. */
    private static String brief(EaseLine line, String called, String uses, Optional<StretchSaid> stretch, Words words) {
        double needed = line.stretchNeeded().orElse(0);
        if (called.isEmpty() || stretch.isEmpty() || needed < StretchText.SHOWN) {
            return called.isEmpty() ? uses : called;
        }
        return words.of("editor.ease.stretched", Map.of("called", called, "needed.percent", needed));
    }

    /**
     * A wish may be met with less than every source asks for, which is the user's to decide: it is told where tables have
     * their say, and the verdict is none the less that it is as wished.
     */
    private static String besideWish(
            EaseRow.Standing stands,
            EaseLine line,
            List<Minimum> asked,
            List<Classed> classes,
            String brief,
            Words words) {
        if (stands != EaseRow.Standing.MET || !isTight(line, asked)) {
            return brief;
        }
        String key = brief.isEmpty() ? ".bare" : isClassed(classes) ? ".others" : "";
        return words.of("editor.ease.met.tight" + key, Map.of("brief", brief, "least", least(asked)));
    }

    /** Whether a table has a word for it, or for less than it. */
    private static boolean isClassed(List<Classed> classes) {
        return classes.stream().anyMatch(c -> c.where() != Classed.Where.BELOW);
    }

    /** By how much the ease is less than a figure in the list and yet counts as met, where the list and it differ. */
    private static String near(EaseLine line, List<Minimum> asked, Words words) {
        double ease = line.ease().orElse(0);
        return line.ease().isEmpty()
                ? ""
                : asked.stream()
                        .filter(m -> m.isNearlyMetBy(ease))
                        .filter(m -> !words.length(ease).equals(words.coarse(m.low())))
                        .findFirst()
                        .map(m -> words.of(
                                "editor.ease.minimums.near",
                                Map.of("short", words.under(ease, m.low()), "asked", exactly(m.low(), words))))
                        .orElse("");
    }

    /** A printed figure as its source has it: in inches where it was read in inches, with what that is exactly. */
    private static String exactly(double mm, Words words) {
        if (!Lengths.isInches(mm)) {
            return Lengths.format(mm, LengthUnit.CM);
        }
        String inches = Lengths.format(mm, LengthUnit.INCH);
        return words.unit() == LengthUnit.INCH
                ? inches
                : words.of("editor.ease.minimums.near.exact", Map.of("asked", inches, "least", words.entered(mm)));
    }

    /** Which of several figures the bar shows, where they differ; empty where they do not. */
    private static String smallest(List<Minimum> asked, Words words) {
        String least = words.coarse(least(asked));
        return asked.stream().map(m -> words.coarse(m.low())).allMatch(least::equals)
                ? ""
                : words.of("editor.ease.minimums.smallest", Map.of("least", words.bare(least)));
    }

    /** With what is left and what right, where they differ: the ease is that of the whole girth. */
    private static String withSides(EaseLine line, String said, Words words) {
        return new EaseText(words)
                .sides(line.girth())
                .map(EaseWords::sentence)
                .map(sides -> (said.endsWith(".") ? said : said + ".") + " " + sides + ".")
                .orElse(said);
    }

    private static List<String> sentences(List<String> lines) {
        return lines.stream().map(EaseWords::sentence).toList();
    }

    static String sentence(String line) {
        return line.isEmpty() ? line : Character.toUpperCase(line.charAt(0)) + line.substring(1);
    }

    private static EaseRow.Standing stands(EaseLine line, List<Minimum> asked, List<Classed> classes) {
        if (line.ease().isEmpty()) {
            return EaseRow.Standing.UNKNOWN;
        }
        if (line.missing().isPresent() && !isUnlikely(line)) {
            return Math.abs(line.missing().getAsDouble()) <= EaseRow.MET_WITHIN
                    ? EaseRow.Standing.MET
                    : EaseRow.Standing.AWAY;
        }
        if (isUnlikely(line)) {
            return EaseRow.Standing.UNLIKELY;
        }
        boolean tight = isTight(line, asked);
        return !tight
                ? EaseRow.Standing.NO_WISH
                : isClassed(classes) ? EaseRow.Standing.DISPUTED : EaseRow.Standing.TIGHT;
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

    private static String verdict(EaseRow.Standing standing, EaseLine line, List<Minimum> asked, Words words) {
        return switch (standing) {
            case UNKNOWN -> words.of(isNowhere(line) ? "editor.ease.nowhere" : "editor.ease.unknown");
            case MET -> words.of("editor.ease.met");
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
                        Map.of(
                                "ease", line.ease().orElse(0),
                                "classes", String.join(words.of("editor.ease.between"), classed)));
    }

    private static List<String> classes(List<Classed> classes, Words words, EaseFoot foot) {
        List<String> out = new ArrayList<>();
        for (Classed classed : classes) {
            Map<String, Object> values = new TreeMap<>();
            values.put("word", classed.word());
            values.put("lowest", classed.table().bands().get(0).word());
            values.put("begins", new EaseText(words).begins(classed.table()));
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
        String low = words.coarse(minimum.low());
        values.put("low", minimum.high().isPresent() ? words.bare(low) : low);
        minimum.high().ifPresent(high -> values.put("high", high));
        values.put("note", String.join("; ", when));
        String key = minimum.high().isPresent() ? "editor.ease.minimum.range" : "editor.ease.minimum";
        return words.of(when.isEmpty() ? key : key + ".for", values);
    }

    private record InUnit(Minimum minimum, LengthUnit unit, boolean certain) {}

    private static String entered(OptionalDouble mm, Words words) {
        return mm.isPresent() ? words.entered(mm.getAsDouble()) : "";
    }

    private static String length(OptionalDouble mm, Words words) {
        return mm.isPresent() ? words.length(mm.getAsDouble()) : "";
    }
}
