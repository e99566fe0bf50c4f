package easewright.svg;

import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One file as it is at other scales than the one it was opened at. */
final class AtScales {
    private final SvgFile file;

    /** The one that was asked for last; whoever works out another finds the same, so that nobody has to wait. */
    private volatile SvgFile last;

    AtScales(SvgFile file) {
        this.file = file;
    }

    /** The file at the scale of a pattern, and with it what rests. */
    SvgFile of(Pattern changed) throws SvgProblem {
        SvgFile now = at(changed.scale());
        Optional<Pattern> resting = now.resting();
        return resting.isEmpty() || resting.get().scale().isAs(changed.scale())
                ? now
                : now.withResting(all(changed.scale(), List.of(resting.get())).get(0));
    }

    /** As {@link SvgFile#atScale} has it. */
    Pattern pattern(Pattern present, double mmPerUnit, boolean statedToo) throws SvgProblem {
        SvgFile then = at(present.scale());
        SvgFile now = at(mmPerUnit);
        Pattern rescaled = new Rescaling(then.drawn(), now.drawn()).of(present);
        Scale before = present.scale();
        Scale after = rescaled.scale();
        double factor = Math.sqrt(after.mmPerUnitX() / before.mmPerUnitX() * after.mmPerUnitY() / before.mmPerUnitY());
        return statedToo ? StatedLengths.scaled(rescaled, factor) : rescaled;
    }

    /** As {@link SvgFile#allAt} has it. */
    List<Pattern> all(Scale scale, List<Pattern> patterns) throws SvgProblem {
        Map<Scale, Rescaling> ways = new HashMap<>();
        SvgFile now = null;
        List<Pattern> all = new ArrayList<>();
        for (Pattern pattern : patterns) {
            Scale from = pattern.scale();
            if (!from.isAs(scale) && !ways.containsKey(from)) {
                now = now == null ? at(scale) : now;
                ways.put(from, new Rescaling(at(from).drawn(), now.drawn()));
            }
            all.add(from.isAs(scale) ? pattern : ways.get(from).of(pattern));
        }
        return all;
    }

    private SvgFile at(Scale wanted) throws SvgProblem {
        if (wanted.isAs(file.pattern().scale())) {
            return file;
        }
        SvgFile other = at(wanted.mmPerUnitX());
        if (!other.pattern().scale().isAs(wanted)) {
            throw new SvgProblem("scale-not-writable", Map.of("file", file.name()));
        }
        return other;
    }

    private SvgFile at(double mmPerUnit) throws SvgProblem {
        SvgFile known = last;
        Scale scale = known == null ? file.pattern().scale() : known.pattern().scale();
        if (known == null || scale.mmPerUnitX() != mmPerUnit) {
            known = file.reread(file.options().withScale(mmPerUnit));
            last = known;
        }
        return known;
    }
}
