package easewright.draft;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Pattern;
import easewright.pattern.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The lines below the heading of a drawing. */
final class Facts {
    private Facts() {}

    static List<String> of(Body body, Pattern pattern) {
        List<String> girths = new ArrayList<>();
        for (BodyMeasure measure : body.measures()) {
            Wish ease = pattern.wishes().get(measure.level());
            if (ease != null) {
                girths.add(String.format(
                        Locale.ROOT, "%s %s cm, ease %s cm", measure.name(), cm(measure.mm()), cm(ease.mm())));
            }
        }
        return List.of(
                "Drafted for " + body.name() + ". " + String.join(" · ", girths) + ".",
                "Thin lines are stitching lines, heavy lines cutting lines. At full scale the square measures 5 cm.");
    }

    /** Centimetres without trailing zeros, to the half millimetre. */
    static String cm(double mm) {
        double value = Math.rint(mm * 20) / 200;
        String text = String.format(Locale.ROOT, "%.3f", value).replace('-', '\u2212');
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
