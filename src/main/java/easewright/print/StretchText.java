package easewright.print;

import easewright.ease.EaseLine;
import easewright.ease.StretchClass;
import easewright.ease.StretchMargin;
import easewright.ease.StretchSaid;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What sources say of a knit, in words. No word or figure stands without the mark of its source. */
public final class StretchText {
    /** Less than this is shown as none, percent and mm alike. */
    public static final double SHOWN = 0.05;

    /** A garment that stays wider by less than this is not seen to, mm. */
    private static final double SEEN = 1;

    private final Words words;
    private final Marks marks;

    /** What leads from a figure to its source. */
    @FunctionalInterface
    public interface Marks {
        String mark(String source, String standing);
    }

    public StretchText(Words words, Marks marks) {
        this.words = words;
        this.marks = marks;
    }

    /** So much cloth is held against a ruler to try how far it stretches, mm (docs/sources.md 5: "mark 4 in or 10 cm"). */
    public static double held(LengthUnit unit) {
        return unit == LengthUnit.INCH ? 4 * LengthUnit.INCH.mm() : 100;
    }

    /** How far the cloth stretches, as it was tried. */
    public String stretch(double percent) {
        double held = held(words.unit());
        return words.of(
                "ease.knit", Map.of("stretch.percent", percent, "held", held, "most", held * (1 + percent / 100)));
    }

    /** What the cloth is called and how garments of knits are made, a line each. */
    public List<String> cloth(StretchSaid said) {
        List<String> lines = new ArrayList<>();
        said.named().forEach(named -> lines.add(named(named)));
        for (List<StretchClass> classes : said.reductions()) {
            String each = classes.stream()
                    .map(c -> words.of(
                            "ease.knit.reduction",
                            Map.of("word", c.word(), "by.percent", c.reduction().orElseThrow())))
                    .collect(Collectors.joining(", "));
            lines.add(words.of("ease.knit.reductions", Map.of("each", each)) + " " + mark(classes.get(0)));
        }
        said.margin()
                .ifPresent(m -> lines.add(words.of("ease.knit.margin", Map.of("rest.percent", m.atRestPercent())) + " "
                        + marks.mark(m.source(), m.standing())));
        return lines;
    }

    private String named(StretchSaid.Named named) {
        Map<String, Object> values = new TreeMap<>();
        for (StretchClass is : named.is()) {
            values.merge("word", is.word(), (one, other) -> one + "\", \"" + other);
            values.put("from.percent", is.stretch().orElseThrow());
            is.reduction().ifPresent(by -> values.putIfAbsent("by.percent", by));
        }
        named.next().ifPresent(next -> {
            values.put("next", next.word());
            values.put("at.percent", next.stretch().orElseThrow());
        });
        String key = named.is().isEmpty() ? "below" : named.next().isEmpty() ? "top" : "between";
        String line = words.of("ease.knit.class." + key, values);
        boolean reduces = values.containsKey("by.percent");
        return (reduces ? line + "; " + words.of("ease.knit.class.reduced", values) : line)
                + " "
                + mark(named.next().orElseGet(() -> named.is().get(0)));
    }

    /** What the ease at a level asks of the cloth and how it stands to the reductions, a line each. */
    public List<String> level(StretchSaid said, EaseLine line) {
        List<String> lines = new ArrayList<>();
        if (line.stretchNeeded().isEmpty() || line.body().isEmpty()) {
            return lines;
        }
        lines.add(pulled(said, line)
                + stays(said, line.ease().orElse(0))
                + limit(said, line.body().getAsDouble()));
        double smaller = -line.percent().orElse(0);
        if (smaller >= SHOWN) {
            said.reductions().forEach(classes -> lines.add(reduced(classes, smaller)));
        }
        return lines;
    }

    /** How far the cloth is stretched when it is worn, for one line of a sheet; empty where that is not known. */
    public String uses(StretchSaid said, EaseLine line) {
        if (line.stretchNeeded().isEmpty()) {
            return "";
        }
        double needed = line.stretchNeeded().getAsDouble();
        return needed < SHOWN
                ? words.of("ease.knit.unstretched")
                : words.of("ease.knit.uses.brief", Map.of("needed.percent", needed, "cloth.percent", said.stretch()));
    }

    /** The same as it can be held against a ruler. */
    private String pulled(StretchSaid said, EaseLine line) {
        double needed = line.stretchNeeded().orElseThrow();
        if (needed < SHOWN) {
            return words.of("ease.knit.unstretched");
        }
        double held = held(words.unit());
        return words.of(
                "ease.knit.uses",
                Map.of(
                        "needed.percent",
                        needed,
                        "held",
                        held,
                        "worn",
                        held * (1 + needed / 100),
                        "most",
                        held * (1 + said.stretch() / 100)));
    }

    private String stays(StretchSaid said, double ease) {
        OptionalDouble wider = said.staysWider(ease);
        if (wider.isEmpty() || wider.getAsDouble() < SEEN) {
            return "";
        }
        return words.of(
                "ease.knit.stays",
                Map.of(
                        "stays",
                        wider.getAsDouble(),
                        "recovery.percent",
                        said.recovery().orElseThrow()));
    }

    private String limit(StretchSaid said, double body) {
        OptionalDouble ease = said.easeAtMargin(body);
        Optional<StretchMargin> margin = said.margin();
        if (ease.isEmpty() || margin.isEmpty() || ease.getAsDouble() > -SHOWN) {
            return "";
        }
        String mark = marks.mark(margin.get().source(), margin.get().standing());
        return words.of("ease.knit.limit", Map.of("mark", mark, "ease", words.signed(ease.getAsDouble())));
    }

    private String reduced(List<StretchClass> classes, double smaller) {
        StretchSaid.Reduced at = StretchSaid.reduced(classes, smaller);
        Map<String, Object> values = new TreeMap<>();
        at.asMuchAs().ifPresent(c -> {
            values.put("word", c.word());
            values.put("by.percent", c.reduction().orElseThrow());
        });
        at.lessThan().ifPresent(c -> {
            values.put("next", c.word());
            values.put("at.percent", c.reduction().orElseThrow());
        });
        String key = at.asMuchAs().isEmpty() ? "less" : at.lessThan().isEmpty() ? "above" : "between";
        String place = words.of("ease.knit." + key, values);
        return words.of("ease.knit.smaller", Map.of("smaller.percent", smaller, "place", place))
                + " "
                + mark(classes.get(0));
    }

    private String mark(StretchClass each) {
        return marks.mark(each.source(), each.standing());
    }
}
