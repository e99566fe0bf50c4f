package easewright.evidence;

import easewright.draft.KnitTopDraft;
import easewright.draft.SampleBodies;
import easewright.draft.SkirtDraft;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.Measures;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Bodies of a public survey, as wearers. */
class AnsurTest extends Topic {
    private static final Source SURVEY =
            Source.published("ANSUR II, 1,986 women (NATICK/TR-15/007, 2014), docs/sources.md 2.3");

    /** Percentile 5, 50 and 95, mm; waist at the navel. */
    private static final Map<String, double[]> WOMEN = Map.of(
            "Bust girth", new double[] {824.2, 940, 1094},
            "Waist girth", new double[] {710, 852, 1040},
            "Hip girth", new double[] {901.2, 1018.5, 1155.8},
            "Upper-arm girth", new double[] {259, 304, 360},
            "Neck base girth", new double[] {340, 370, 405},
            "Shoulder length", new double[] {120, 135, 153},
            "Across back width", new double[] {326.2, 373, 423},
            "Back neck point to waist", new double[] {384, 424.5, 470});

    /** One of them: SubjectId 13147. */
    private static final Map<String, Double> ONE =
            Map.of("Bust girth", 978.0, "Waist girth", 822.0, "Hip girth", 975.0, "Upper-arm girth", 307.0);

    private final List<Check> checks = new ArrayList<>();

    @Override
    String title() {
        return "Bodies of a survey";
    }

    @Override
    String words() {
        return "Garments drafted for women of the 5th, 50th and 95th percentile of a survey and for one of the women,"
                + " with the ease of the sample garments. Expected is the survey's girth plus the ease asked for; got is"
                + " what the finished pieces measure. What the survey has no figure for is taken from a sample body.";
    }

    @Override
    List<Check> checks() {
        checks.clear();
        for (int i = 0; i < 3; i++) {
            String who = "P" + new int[] {5, 50, 95}[i];
            int at = i;
            Body body = body(who, name -> WOMEN.containsKey(name) ? WOMEN.get(name)[at] : null);
            girths(who + ", skirt", new SkirtDraft(body, 50, 25, 600).draft().pattern());
            girths(
                    who + ", knit top",
                    new KnitTopDraft(body, -30, 70, -10, 35).draft().pattern());
        }
        Body one = body("13147", ONE::get);
        girths("subject 13147, skirt", new SkirtDraft(one, 50, 25, 600).draft().pattern());
        Pattern skirt = new SkirtDraft(one, 50, 25, 600).draft().pattern();
        double percent = EaseSheet.of(skirt, Measures.of(skirt), EaseTables.standard()).lines().stream()
                .filter(l -> l.level().name().equals("hip"))
                .findFirst()
                .orElseThrow()
                .percent()
                .orElseThrow();
        checks.add(Check.number("subject 13147, 5 cm on a hip of 97.5 cm", SURVEY, "%", 5000 / 975.0, percent, 1e-3));
        return List.copyOf(checks);
    }

    private void girths(String who, Pattern pattern) {
        pattern.wishes().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(wish -> {
            double body = pattern.body().girth(wish.getKey()).orElseThrow();
            double got = Measures.of(pattern).girth(wish.getKey()).orElseThrow().finished();
            checks.add(Check.number(
                    who + ", " + wish.getKey() + " with "
                            + Math.round(wish.getValue().mm()) + " mm",
                    SURVEY,
                    "mm",
                    body + wish.getValue().mm(),
                    got,
                    0.005));
        });
    }

    private interface Figures {
        Double of(String name);
    }

    private static Body body(String who, Figures figures) {
        List<BodyMeasure> measures = new ArrayList<>();
        for (BodyMeasure sample : SampleBodies.MAREN.measures()) {
            Double mm = figures.of(sample.name());
            measures.add(mm == null ? sample : new BodyMeasure(sample.name(), sample.level(), mm, "survey"));
        }
        return new Body(who, measures);
    }
}
