package easewright.editor.model;

import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.pattern.EdgeRef;
import easewright.pattern.MateSides;
import easewright.print.EaseText;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a change that is being tried does to seams that are sewn together, in every size in which it is tried. */
final class SeamsTried {
    /** Half of what a tape shows: less is not worth a word, mm. */
    private static final double NOTICED = 0.5;

    private SeamsTried() {}

    /**
     * Seams that are sewn together: those that drifted, one line each, and one line of those that are off as they were;
     * where there are none of either, one line that all still fit.
     */
    static List<Effect.Line> lines(Desk desk, List<EdgeFate> fates, boolean mayEven) {
        Words words = desk.words();
        GarmentMeasures before = measures(desk, desk.reading());
        GarmentMeasures after = measures(desk, desk.shownReading());
        List<Effect.Line> lines = new ArrayList<>();
        List<MateWalk> alike = new ArrayList<>(after.mates());
        for (MateWalk now : after.mates()) {
            before.before(now).filter(then -> apart(then, now) >= NOTICED).ifPresent(then -> {
                alike.remove(now);
                boolean both = isMoved(now.mate().first(), now, fates)
                        && isMoved(now.mate().second(), now, fates);
                // One press is for all sizes.
                boolean atWork = now.size().isEmpty() || now.size().equals(desk.size());
                boolean little = Cutting.same(apart(then, now)) && Cutting.same(now.drift());
                if (isNearer(then, now) && !Cutting.same(then.drift())) {
                    lines.add(new Effect.Line(Effect.Kind.FITS, nearer(desk, then, now, words)));
                    return;
                }
                List<EdgeRef> partners = both || little ? List.of() : Partners.leftOut(desk, now.mate());
                lines.add(new Effect.Line(
                        little ? Effect.Kind.FITS : Effect.Kind.DRIFTED,
                        drift(
                                title(desk, now),
                                then,
                                now,
                                MateSides.of(desk.shown(), now.mate()),
                                rest(desk, both, !partners.isEmpty()),
                                little,
                                words),
                        both && mayEven && atWork,
                        atWork ? partners : List.of()));
            });
        }
        asBefore(desk, before, alike, words).ifPresent(lines::add);
        if (lines.isEmpty() && !alike.isEmpty()) {
            lines.add(new Effect.Line(Effect.Kind.FITS, words.of("editor.effect.fits")));
        }
        return lines;
    }

    /** That nothing changed at a seam is good news only where it fitted. */
    private static Optional<Effect.Line> asBefore(
            Desk desk, GarmentMeasures before, List<MateWalk> alike, Words words) {
        List<String> off = alike.stream()
                .filter(walk -> !Cutting.same(walk.drift()))
                .map(walk -> off(title(desk, walk), before.before(walk).orElse(walk), walk, words))
                .distinct()
                .toList();
        return off.isEmpty()
                ? Optional.empty()
                : Optional.of(new Effect.Line(
                        Effect.Kind.DRIFTED, words.of("editor.effect.off-as-before", Map.of("mates", off))));
    }

    /** Where the figure is another one by a little, both are told: elsewhere the one before is read. */
    private static String off(String title, MateWalk then, MateWalk now, Words words) {
        double was = Math.abs(then.drift());
        double is = Math.abs(now.drift());
        String key = words.length(was).equals(words.length(is)) ? "editor.effect.off-by" : "editor.effect.off-by.was";
        return words.of(key, Map.of("mate", title, "was", was, "off", is));
    }

    /** The seams to be seen, with what is tried. */
    static List<MateWalk> shown(Desk desk) {
        return measures(desk, desk.shownReading()).mates();
    }

    /** With the seams of all sizes in which it is tried. */
    private static GarmentMeasures measures(Desk desk, Reading reading) {
        List<String> sizes = desk.sizesTaking();
        return sizes.size() > 1 ? reading.measures().inSizes(sizes) : reading.measures();
    }

    private static double apart(MateWalk then, MateWalk now) {
        return Math.abs(now.drift() - then.drift());
    }

    /** Whether a seam fits better than before. */
    private static boolean isNearer(MateWalk then, MateWalk now) {
        return Math.abs(now.drift()) < Math.abs(then.drift());
    }

    private static String nearer(Desk desk, MateWalk then, MateWalk now, Words words) {
        MateSides sides = MateSides.of(desk.pattern(), now.mate());
        return words.of(
                Cutting.same(now.drift()) ? "editor.effect.fits-now" : "editor.effect.nearer",
                Map.of(
                        "mate", title(desk, now),
                        "one", sides.first(),
                        "other", sides.second(),
                        "was.signed", then.drift(),
                        "now.signed", now.drift()));
    }

    private static boolean isMoved(List<EdgeRef> side, MateWalk walk, List<EdgeFate> fates) {
        return fates.stream()
                .filter(f -> f.fate() == EdgeFate.Fate.RESHAPED)
                .filter(f -> walk.size().isEmpty() || f.piece().size().equals(walk.size()))
                .anyMatch(f -> side.stream()
                        .anyMatch(ref -> ref.edge().equals(f.edge().name())
                                && (ref.piece().equals(f.piece().id())
                                        || ref.piece().equals(f.piece().name())
                                        || ref.piece().equals(f.piece().plainName()))));
    }

    /** The seam by name, with its size where several are tried. */
    private static String title(Desk desk, MateWalk walk) {
        return desk.sizesTaking().size() > 1
                ? new EaseText(desk.words()).title(walk)
                : walk.mate().name();
    }

    /** What is said besides of a seam that drifts: where it is looked for, or that evening does not reach it. */
    private static Optional<String> rest(Desk desk, boolean both, boolean partners) {
        boolean even = desk.wanted().map(Wanted::isEvened).orElse(false);
        if (even && !both) {
            return Optional.of("editor.effect.even-one-side");
        }
        // Where one side alone changed, what could match it is looked for once this one is kept.
        return both || partners ? Optional.empty() : Optional.of("editor.effect.match");
    }

    private static String drift(
            String title,
            MateWalk then,
            MateWalk now,
            MateSides sides,
            Optional<String> rest,
            boolean little,
            Words words) {
        double first = now.first() - then.first();
        double second = now.second() - then.second();
        boolean firstTells = Math.abs(first) > Math.abs(second);
        double longer = firstTells ? first - second : second - first;
        Map<String, Object> values = Map.ofEntries(
                Map.entry("mate", title),
                Map.entry("by", Math.abs(longer)),
                Map.entry("changed", firstTells ? sides.first() : sides.second()),
                Map.entry("other", firstTells ? sides.second() : sides.first()),
                Map.entry("one", sides.first()),
                Map.entry("two", sides.second()),
                Map.entry("from.signed", then.first() - then.second()),
                Map.entry("to.signed", now.first() - now.second()));
        String way = longer > 0 ? "longer" : "shorter";
        if (little) {
            return words.of("editor.effect.little." + way, values);
        }
        String said = words.of(
                now.mate().declaredEase() == 0 ? "editor.effect.drifted." + way : "editor.effect.ease-drifted", values);
        return rest.map(key -> said + " " + words.of(key, values)).orElse(said);
    }

    /** The mates that drifted apart by more than a true pattern may. */
    static Stream<MateWalk> drifted(Desk desk) {
        GarmentMeasures before = measures(desk, desk.reading());
        return desk.shownTrial().stream()
                .flatMap(t -> measures(desk, t.reading()).mates().stream())
                .filter(now -> before.before(now)
                        .filter(then -> !Cutting.same(apart(then, now)) && !isNearer(then, now))
                        .isPresent());
    }
}
