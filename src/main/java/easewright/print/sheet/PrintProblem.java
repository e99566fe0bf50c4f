package easewright.print.sheet;

import easewright.pattern.Problem;
import java.util.Map;
import java.util.TreeMap;

/** Why nothing can be printed: the code of its words in the bundle, {@code problem.<code>}, and values for them. */
public final class PrintProblem extends Problem {
    private static final long serialVersionUID = 1L;

    private PrintProblem(String code, Map<String, Object> values) {
        super(code, values);
    }

    /** That no size is wanted of a pattern that comes in several. */
    public static PrintProblem noSizeChosen() {
        return of("print-no-size-chosen");
    }

    /** No piece is wanted. */
    public static PrintProblem nothingChosen() {
        return of("print-nothing-chosen");
    }

    static PrintProblem of(String code) {
        return new PrintProblem(code, Map.of());
    }

    PrintProblem with(String key, Object value) {
        Map<String, Object> more = new TreeMap<>(values());
        more.put(key, value);
        return new PrintProblem(code(), more);
    }
}
