package easewright.evidence;

import easewright.pattern.BodyMeasure;
import easewright.text.BodyFile;
import java.util.ArrayList;
import java.util.List;

/** Names of body measurements after ISO 8559-1. */
class BodyNamesTest extends Topic {
    /** Clause, name, and the level at which that girth is compared. */
    private static final String[][] GIRTHS = {
        {"5.3.2", "Neck girth", "neck"},
        {"5.3.4", "Bust girth", "bust"},
        {"5.3.8", "Under bust girth", "underbust"},
        {"5.3.13", "Hip girth", "hip"},
        {"5.3.16", "Upper-arm girth", "upper arm"},
        {"5.3.19", "Wrist girth", "wrist"},
        {"5.3.20", "Thigh girth", "thigh"},
        {"5.3.22", "Knee girth", "knee"},
        {"5.3.24", "Calf girth", "calf"}
    };

    /** Clause and name of lengths that the drafts ask for. */
    private static final String[][] LENGTHS = {
        {"5.4.1", "Shoulder length"},
        {"5.4.4", "Across back width"},
        {"5.4.5", "Back neck point to waist"},
        {"5.4.6", "Scye depth length"},
        {"5.4.7", "Across front width"},
        {"5.4.10", "Side neck point to bust point"},
        {"5.4.21", "Side waist to hip"},
        {"5.4.22", "Outside leg length"},
        {"5.2.3", "Bust point width"},
        {"5.7.4", "Straight body rise"}
    };

    @Override
    String title() {
        return "Names of body measurements";
    }

    @Override
    String words() {
        return "A line of a body file that uses the standard's name must reach the level it belongs to without further"
                + " words, and a length must stay a length. The standard itself was not at hand: names and clauses"
                + " come from a copy of its table of contents.";
    }

    @Override
    List<Check> checks() throws Exception {
        List<Check> checks = new ArrayList<>();
        for (String[] row : GIRTHS) {
            checks.add(check(row[0], row[1], row[2], standing(row[0])));
        }
        checks.add(check(
                "5.3.10", "Waist girth", "waist", Source.fromMemory("ISO 8559-1:2017, 5.3.10, docs/sources.md 2.1")));
        for (String[] row : LENGTHS) {
            checks.add(check(row[0], row[1], "no level", standing(row[0])));
        }
        return checks;
    }

    private static Source standing(String clause) {
        return Source.secondHand("ISO 8559-1:2017, " + clause + ", docs/sources.md 2.1");
    }

    private static Check check(String clause, String name, String level, Source source) throws Exception {
        BodyMeasure read = BodyFile.parse(name + ": 50 cm (clause " + clause + ")\n", "me.txt")
                .measures()
                .get(0);
        String got = read.level().isEmpty() ? "no level" : read.level();
        return Check.words(name, source, name + ", " + level, read.name() + ", " + got);
    }
}
