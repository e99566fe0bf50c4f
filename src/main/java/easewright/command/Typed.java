package easewright.command;

import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads the lengths that one command was given, and tells which of them had no unit and what they were taken for. */
final class Typed {
    private final LengthUnit unit;
    private final Map<String, Double> bare = new LinkedHashMap<>();

    /**
     * @param unit what a length without a unit is taken for
     */
    Typed(LengthUnit unit) {
        this.unit = unit;
    }

    LengthUnit unit() {
        return unit;
    }

    /** Words in that unit. */
    Words words() {
        return Commands.english(unit);
    }

    /**
     * The length, mm.
     *
     * @throws Unreadable if it is none
     */
    double mm(String text) throws Unreadable {
        double mm = Lengths.parse(text, unit);
        if (!Lengths.saysItsUnit(text)) {
            bare.put(text.strip(), mm);
        }
        return mm;
    }

    /** Says of each length without a unit what it was taken for. */
    void tell(Voice voice) {
        Words words = words();
        bare.forEach((text, mm) ->
                voice.err().println(words.of("command.unit-taken", Map.of("text", text, "unit", unit.symbol()))));
        bare.clear();
    }
}
