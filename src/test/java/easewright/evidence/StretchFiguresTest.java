package easewright.evidence;

import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.ease.StretchSaid;
import easewright.ease.Tubes;
import easewright.editor.model.StretchTest;
import easewright.measure.Measures;
import easewright.pattern.Cloth;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** Negative ease, the stretch it asks for, and the stretch of a cloth. */
class StretchFiguresTest extends Topic {
    private static final Source DEMAND = Source.calculated("d = r/(1 − r), docs/sources.md 1.3");
    private static final Source W15 = Source.calculated("worked example W15, docs/sources.md 4.6");
    private static final Source HAND = Source.published("hand test, sewfullife.com and others, docs/sources.md 5");
    private static final Source ARMSTRONG =
            Source.fromMemory("H. J. Armstrong, Patternmaking for Fashion Design, ch. 27");
    private static final double[][] DEMANDS = {
        {2, 2.04}, {3, 3.09}, {5, 5.26}, {8, 8.70}, {10, 11.11}, {15, 17.65}, {20, 25.00}, {25, 33.33}, {30, 42.86}
    };

    @Override
    String title() {
        return "Stretch and negative ease";
    }

    @Override
    String words() {
        return "A garment smaller than the body by r asks the cloth for a stretch of d at rest. The stretch of a cloth"
                + " is what a fold of known length gains when it is pulled.";
    }

    @Override
    List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (double[] row : DEMANDS) {
            EaseLine line = line(1000 - 10 * row[0], 1000);
            checks.add(Check.number(
                    "stretch asked for by a garment " + (int) row[0] + " % smaller",
                    DEMAND,
                    "%",
                    row[1],
                    line.stretchNeeded().getAsDouble(),
                    0.005));
        }
        EaseLine w15 = line(810, 900);
        checks.add(Check.number(
                "body 90 cm, garment 81 cm: ease", W15, "mm", -90, w15.ease().getAsDouble(), 1e-6));
        checks.add(
                Check.number("the same in percent", W15, "%", -10, w15.percent().getAsDouble(), 1e-6));
        checks.add(Check.number(
                "stretch it asks for", W15, "%", 11.11, w15.stretchNeeded().getAsDouble(), 0.005));
        checks.add(Check.number(
                "body 90 cm, garment 63 cm: stretch it asks for",
                W15,
                "%",
                42.86,
                line(630, 900).stretchNeeded().getAsDouble(),
                0.005));
        checks.add(hand("4 in to 5 in", 125, 25));
        checks.add(hand("4 in to 7 in", 175, 75));
        checks.add(hand("4 in to 10 in", 250, 150));
        checks.add(hand("10 cm to 14 cm", 140, 40));
        checks.add(classOf("5 in to 6 1/4 in", 25, "moderate"));
        checks.add(classOf("5 in to 7 1/2 in", 50, "stretchy"));
        checks.add(classOf("5 in to 10 in", 100, "super-stretch or rib"));
        return checks;
    }

    private static EaseLine line(double garment, double body) {
        Pattern tube = Tubes.tube(LevelKind.HIP, garment, body, Cloth.knit(100));
        return EaseSheet.of(tube, Measures.of(tube), EaseTables.standard())
                .lines()
                .get(0);
    }

    /** The program asks for a fold marked at 10 cm, so that lengths are given to it in proportion. */
    private static Check hand(String subject, double ofTenCentimetres, double percent) {
        return Check.number(
                "cloth that goes from " + subject,
                HAND,
                "%",
                percent,
                StretchTest.percent(ofTenCentimetres, StretchTest.marked(LengthUnit.CM))
                        .getAsDouble(),
                1e-9);
    }

    private static Check classOf(String subject, double percent, String word) {
        Pattern tube = Tubes.tube(LevelKind.HIP, 900, 900, Cloth.knit(percent));
        StretchSaid said = EaseSheet.of(tube, Measures.of(tube), EaseTables.standard())
                .stretch()
                .orElseThrow();
        return Check.words(
                "cloth that goes from " + subject,
                ARMSTRONG,
                word,
                said.named().get(0).is().get(0).word());
    }
}
