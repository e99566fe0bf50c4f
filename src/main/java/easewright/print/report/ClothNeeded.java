package easewright.print.report;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.print.Reading;
import easewright.print.report.Part.Figure;
import easewright.print.report.Part.Figures;
import easewright.print.report.Part.Heading;
import easewright.print.report.Part.Paragraph;
import easewright.print.sheet.ClothPlan;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** How much cloth the garment takes, before and now, with the layouts. */
final class ClothNeeded {
    /** Cloth is sold by steps of this length, mm; needs are rounded up to it. */
    private static final double STEP = 10;

    private ClothNeeded() {}

    static List<Part> of(ReportOrder order, Optional<Reading> before, Reading after, Words words) {
        if (after.pattern().pieces().isEmpty()) {
            return List.of();
        }
        List<Part> parts = new ArrayList<>(List.of(new Heading(words.of("report.cloth"), true)));
        OptionalDouble shrinkage = after.pattern().cloth().shrinkage();
        Optional<ClothPlan> now = ClothPlan.of(after.pattern(), order.clothWidth(), order.oneWay());
        Optional<ClothPlan> then = before.flatMap(b -> ClothPlan.of(b.pattern(), order.clothWidth(), order.oneWay()));
        if (now.isEmpty()) {
            parts.add(new Paragraph(words.of("report.cloth.too-narrow", Map.of("width", order.clothWidth())), false));
            return parts;
        }
        double need = needed(now.get(), shrinkage);
        String way = words.of(order.oneWay() ? "report.cloth.one-way" : "report.cloth.either-way");
        if (then.isPresent()) {
            double was = needed(then.get(), shrinkage);
            parts.add(new Paragraph(
                    words.of(
                            need == was ? "report.cloth.same" : "report.cloth.compared",
                            Map.of("before", was, "now", need, "more.signed", need - was, "width", order.clothWidth())),
                    false));
            if (then.get().foldable() && !now.get().foldable()) {
                parts.add(new Paragraph(words.of("report.cloth.no-longer-folded"), false));
            }
        } else {
            parts.add(new Paragraph(
                    words.of("report.cloth.needed", Map.of("now", need, "width", order.clothWidth())), false));
        }
        if (shrinkage.isPresent()) {
            parts.add(new Paragraph(
                    words.of("report.cloth.shrinkage", Map.of("shrinkage.percent", shrinkage.getAsDouble())), false));
        }
        List<List<Figure>> sizes = ClothFigure.HEIGHTS.stream()
                .map(tallest -> layouts(tallest, then, now.get(), words))
                .toList();
        // Side by side if any size allows it: what is to be compared is seen at one glance.
        int first = IntStream.range(0, sizes.size())
                .filter(i -> ClothFigure.sideBySide(sizes.get(i)))
                .findFirst()
                .orElse(0);
        parts.add(new Figures(sizes.get(first), sizes.subList(first + 1, sizes.size())));
        parts.add(new Paragraph(
                way + " "
                        + words.of("report.cloth.heuristic", Map.of("allowances", allowances(after.pattern(), words))),
                true));
        return parts;
    }

    /** What is said of allowances: never that they are counted where none is known. */
    private static String allowances(Pattern pattern, Words words) {
        List<String> without = ClothPlan.withoutAllowance(pattern);
        return without.isEmpty()
                ? words.of("report.cloth.allowances")
                : without.size()
                                == pattern.pieces().stream()
                                        .map(Piece::name)
                                        .distinct()
                                        .count()
                        ? words.of("report.cloth.allowances.none")
                        : words.of("report.cloth.allowances.some", Map.of("pieces", without));
    }

    private static List<Figure> layouts(double tallest, Optional<ClothPlan> then, ClothPlan now, Words words) {
        double longest = Math.max(now.length(), then.map(ClothPlan::length).orElse(0.0));
        List<Figure> figures = new ArrayList<>();
        then.ifPresent(plan -> {
            String caption = words.of("report.cloth.before", Map.of("lying", lying(plan, words)));
            figures.add(ClothFigure.of(plan, tallest, longest, caption, words));
        });
        String key = then.isPresent() ? "report.cloth.after" : "report.cloth.layout";
        String caption = words.of(key, Map.of("lying", lying(now, words)));
        figures.add(ClothFigure.of(now, tallest, longest, caption, words));
        return figures;
    }

    private static String lying(ClothPlan plan, Words words) {
        return words.of(plan.folded() ? "report.cloth.folded" : "report.cloth.open");
    }

    /** Rounded up, with what the wash will take. */
    private static double needed(ClothPlan plan, OptionalDouble shrinkage) {
        double share = 1 - Math.min(50, Math.max(0, shrinkage.orElse(0))) / 100;
        return sold(plan.length() / share);
    }

    /** The length that has to be bought, mm. */
    static double sold(double length) {
        return Math.ceil(length / STEP - 1e-9) * STEP;
    }
}
