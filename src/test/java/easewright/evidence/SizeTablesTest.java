package easewright.evidence;

import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.ease.Tubes;
import easewright.measure.Measures;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Cloth;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.text.BodyFile;
import java.util.ArrayList;
import java.util.List;

/** A published size table, typed in as it is printed, through body file and ease sheet. */
class SizeTablesTest extends Topic {
    private static final Source D5585 = Source.published("ASTM D5585-11e1, Table 1, misses, docs/sources.md 2.2");
    private static final String[] SIZES = {"00", "0", "2", "4", "6", "8", "10", "12", "14", "16", "18", "20"};

    /** As printed, in inches. */
    private static final String[] BUST = {
        "31 1/8", "31 3/4", "33", "34 1/8", "35 1/4", "36 1/4", "37 1/4", "38 3/4", "40 3/8", "42 1/8", "44", "46"
    };

    private static final String[] WAIST = {
        "25 3/8", "26 1/8", "26 7/8", "27 5/8", "28 1/2", "29 1/2", "30 1/2", "32 1/4", "34", "36", "38 1/4", "40 1/2"
    };

    /** The garment's girth, the same for all sizes: 50 in. */
    private static final int EIGHTHS = 400;

    @Override
    String title() {
        return "A size table through body file and ease sheet";
    }

    @Override
    String words() {
        return "Bust and waist (straight) of twelve sizes, typed into a body file as the table prints them. The garment"
                + " measures 50 in at every level; the ease expected is worked out in whole eighths of an inch.";
    }

    @Override
    List<Check> checks() throws Exception {
        List<Check> checks = new ArrayList<>();
        for (int i = 0; i < SIZES.length; i++) {
            checks.add(check("Bust girth", LevelKind.BUST, SIZES[i], BUST[i]));
            checks.add(check("Waist girth", LevelKind.WAIST, SIZES[i], WAIST[i]));
        }
        return checks;
    }

    private static Check check(String name, LevelKind kind, String size, String inches) throws Exception {
        Body read = BodyFile.parse("unit: in\n" + name + " @L: " + inches + "\n", "me.txt");
        Pattern tube = Tubes.tube(kind, EIGHTHS / 8.0 * 25.4, 1, Cloth.WOVEN)
                .withBody(new Body("misses " + size, List.of(onL(read.measures().get(0)))));
        double got = EaseSheet.of(tube, Measures.of(tube), EaseTables.standard())
                .lines()
                .get(0)
                .ease()
                .orElseThrow();
        double expected = (EIGHTHS - eighths(inches)) * 254 / 80.0;
        return Check.number("size " + size + ", " + name + " " + inches + " in", D5585, "mm", expected, got, 1e-6);
    }

    private static BodyMeasure onL(BodyMeasure measure) {
        return new BodyMeasure(measure.name(), "L", measure.mm(), measure.takenAt());
    }

    private static int eighths(String inches) {
        String[] parts = inches.split(" ");
        int sum = 8 * Integer.parseInt(parts[0]);
        if (parts.length > 1) {
            String[] fraction = parts[1].split("/");
            sum += Integer.parseInt(fraction[0]) * 8 / Integer.parseInt(fraction[1]);
        }
        return sum;
    }
}
