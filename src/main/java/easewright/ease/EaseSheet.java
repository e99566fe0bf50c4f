package easewright.ease;

import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.pattern.Body;
import easewright.pattern.Cloth;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelWords;
import easewright.pattern.Pattern;
import easewright.pattern.Severity;
import easewright.pattern.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How much ease the garment has at every level, and what is to be said about it. */
public final class EaseSheet {
    /**
     * Tighter than this on a limb or the neck, a garment presses noticeably and must not be taken for medical
     * compression, percent of the body girth (common practice).
     */
    private static final double PRESSES_BELOW = -15;

    /** So little is none, mm: half of the tenth to which lengths are shown, and more than a change misses its girth by. */
    private static final double NONE = 0.05;

    private final Garment garment;
    private final List<EaseLine> lines;
    private final List<Finding> findings;
    private final Cloth cloth;
    private final EaseTables tables;

    private EaseSheet(Garment garment, List<EaseLine> lines, List<Finding> findings, Cloth cloth, EaseTables tables) {
        this.garment = garment;
        this.lines = List.copyOf(lines);
        this.findings = List.copyOf(findings);
        this.cloth = cloth;
        this.tables = tables;
    }

    /**
     * The sheet of a pattern by all tables for its cloth. It is judged as the garment the tables were chosen for, or
     * else as what the pattern's marks show.
     */
    public static EaseSheet of(Pattern pattern, GarmentMeasures measures, EaseTables tables) {
        Garment garment = tables.garment().orElseGet(() -> Garment.of(pattern));
        List<EaseLine> lines = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<String> strange = Garment.said(pattern).words().stream()
                .filter(word -> !tables.know(word))
                .toList();
        if (!strange.isEmpty()) {
            findings.add(Finding.of("garment-without-table", Severity.NOTE, "")
                    .with("garment", strange)
                    .with("known", tables.garments()));
        }
        boolean someUnknown =
                measures.girths().isEmpty() && pattern.body().measures().isEmpty();
        for (Girth girth : measures.girths()) {
            Body body = pattern.body(girth.size());
            boolean bodyKnown = !body.measures().isEmpty();
            someUnknown |= !bodyKnown;
            EaseLine line = line(pattern, body, girth, tables);
            lines.add(line);
            if (line.ease().isPresent()) {
                judge(line, garment, pattern.cloth(), tables, findings);
            } else if (bodyKnown
                    && line.body().isEmpty()
                    && !LevelWords.isHem(girth.level().name())) {
                findings.add(about("body-level-missing", Severity.NOTE, line));
            }
        }
        if (someUnknown) {
            findings.add(0, Finding.of("body-missing", Severity.NOTE, ""));
        }
        boolean tablesLeftOut = false;
        for (EaseLine line : lines) {
            tablesLeftOut |= stretches(pattern.cloth(), line.ease())
                    && line.ease().isPresent()
                    && !tables.at(line.level().kind(), false).isEmpty();
        }
        if (tablesLeftOut) {
            findings.add(Finding.of("woven-tables-left-out", Severity.NOTE, ""));
        }
        return new EaseSheet(garment, lines, findings, pattern.cloth(), tables);
    }

    /** What it was judged as. */
    public Garment garment() {
        return garment;
    }

    /** One line for each level of the pattern, in its order. */
    public List<EaseLine> lines() {
        return lines;
    }

    /** What sources say of the cloth, where it is a knit whose stretch is known. */
    public Optional<StretchSaid> stretch() {
        return cloth.knit() && cloth.across().isPresent()
                ? Optional.of(StretchSaid.of(cloth.across().getAsDouble(), cloth.recovery(), tables))
                : Optional.empty();
    }

    /** Whether the cloth is a knit, or a woven that was found to stretch across. */
    public boolean mayStretch() {
        return cloth.knit() || cloth.across().orElse(0) > 0;
    }

    public List<Finding> findings() {
        return findings;
    }

    /** Whether a garment leans on the stretch of its cloth, so that tables for wovens do not hold. */
    private static boolean stretches(Cloth cloth, OptionalDouble ease) {
        return cloth.knit() || cloth.across().orElse(0) > 0 && ease.isPresent() && ease.getAsDouble() < -NONE;
    }

    /** The girth of the body that a girth of the garment is compared with, mm. */
    public static OptionalDouble body(Pattern pattern, Girth girth) {
        return body(pattern.body(girth.size()), girth);
    }

    private static OptionalDouble body(Body wearer, Girth girth) {
        OptionalDouble own = wearer.girth(girth.name());
        return own.isPresent() ? own : wearer.girth(girth.level().name());
    }

    private static EaseLine line(Pattern pattern, Body wearer, Girth girth, EaseTables tables) {
        Level level = girth.level();
        boolean knit = pattern.cloth().knit();
        double finished = girth.finished();
        OptionalDouble body = body(wearer, girth);
        Wish wished = pattern.wishes().get(level.name());
        OptionalDouble wish = wished == null ? OptionalDouble.empty() : wished.on(body);
        OptionalDouble part = wished == null ? OptionalDouble.empty() : wished.percent();
        List<Minimum> minimums = knit ? List.of() : tables.minimumsAt(level);
        if (body.isEmpty() || girth.parts().isEmpty()) {
            OptionalDouble none = OptionalDouble.empty();
            return new EaseLine(girth, body, none, none, List.of(), minimums, none, wish, part, none);
        }
        double ease = finished - body.getAsDouble();
        boolean wovenTables = !stretches(pattern.cloth(), OptionalDouble.of(ease));
        double percent = 100 * ease / body.getAsDouble();
        boolean stretches = (knit || ease < -NONE) && finished > 0;
        return new EaseLine(
                girth,
                body,
                OptionalDouble.of(ease),
                OptionalDouble.of(percent),
                knit || wovenTables ? classes(tables.at(level.kind(), knit), ease, percent) : List.of(),
                wovenTables ? minimums : List.of(),
                stretches
                        ? OptionalDouble.of(Math.max(0, 100 * (body.getAsDouble() / finished - 1)))
                        : OptionalDouble.empty(),
                wish,
                part,
                wish.isPresent() ? OptionalDouble.of(wish.getAsDouble() - ease) : OptionalDouble.empty());
    }

    private static List<Classed> classes(List<EaseTable> tables, double ease, double percent) {
        List<Classed> classes = new ArrayList<>();
        for (EaseTable table : tables) {
            classes.add(table.classify(ease, percent));
        }
        // A source that gives one garment in two tables, such as close ones in percent and easy ones in cm, speaks
        // once.
        List<Classed> once = new ArrayList<>();
        for (Classed each : classes) {
            boolean said = each.where() != Classed.Where.WITHIN
                    && classes.stream().anyMatch(c -> c.where() == Classed.Where.WITHIN && sameMatter(c, each));
            if (!said) {
                once.add(each);
            }
        }
        return once;
    }

    private static boolean sameMatter(Classed one, Classed other) {
        return one.table().garment().equals(other.table().garment())
                && one.table().source().equals(other.table().source());
    }

    private static void judge(EaseLine line, Garment garment, Cloth cloth, EaseTables tables, List<Finding> findings) {
        double ease = line.ease().orElseThrow();
        boolean relies = line.stretchNeeded().isPresent() && ease < -NONE;
        if (relies) {
            judgeStretch(line, cloth, tables, findings);
        }
        boolean presses = line.level().limb() || line.level().kind() == LevelKind.NECK;
        if (presses && line.percent().orElseThrow() < PRESSES_BELOW) {
            findings.add(about("not-for-compression", Severity.CAUTION, line)
                    .with("ease.percent", line.percent().getAsDouble()));
        }
        List<Minimum> asked =
                line.minimums().stream().filter(m -> garment.fits(m.garment())).toList();
        if (relies || asked.isEmpty()) {
            return;
        }
        Minimum least = asked.get(0);
        Minimum most = least;
        for (Minimum minimum : asked) {
            least = minimum.low() < least.low() ? minimum : least;
            most = minimum.low() > most.low() ? minimum : most;
        }
        if (least.isMissedBy(ease)) {
            findings.add(below("ease-below-minimum", Severity.CAUTION, line, least));
        } else if (most.isMissedBy(ease)) {
            findings.add(below("ease-below-some-minimum", Severity.NOTE, line, most));
        }
    }

    private static Finding below(String code, Severity severity, EaseLine line, Minimum minimum) {
        return about(code, severity, line)
                .with("ease", line.ease().orElseThrow())
                .with("minimum", minimum.low())
                .with("source", minimum.source())
                .with("standing", minimum.standing());
    }

    private static void judgeStretch(EaseLine line, Cloth cloth, EaseTables tables, List<Finding> findings) {
        double needed = line.stretchNeeded().orElseThrow();
        if (cloth.across().isEmpty()) {
            boolean knit = cloth.knit();
            findings.add(about(
                            knit ? "stretch-unknown" : "garment-smaller-than-body",
                            knit ? Severity.CAUTION : Severity.FAULT,
                            line)
                    .with("needed.percent", needed)
                    .with("short", -line.ease().orElseThrow()));
            return;
        }
        double has = cloth.across().getAsDouble();
        Finding finding = about("stretch-too-little", Severity.FAULT, line)
                .with("needed.percent", needed)
                .with("cloth.percent", has);
        if (needed > has) {
            findings.add(finding);
            return;
        }
        tables.margin()
                .filter(m -> needed > has * m.atRestPercent() / 100)
                .ifPresent(m -> findings.add(about("stretch-little-left", Severity.CAUTION, line)
                        .with("needed.percent", needed)
                        .with("cloth.percent", has)
                        .with("rest.percent", m.atRestPercent())
                        .with("source", m.source())
                        .with("standing", m.standing())));
    }

    private static Finding about(String code, Severity severity, EaseLine line) {
        return line.girth().named(Finding.of(code, severity, ""));
    }
}
