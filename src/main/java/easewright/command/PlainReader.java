package easewright.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a command line that is written out plainly: options by their full names, a value after a space or an equals
 * sign, nothing missing and nothing left over. All others are the {@link Manual}'s, which understands every form and
 * says what is wrong; asking it takes as long as measuring a piece, which is why the plain form is read here.
 */
final class PlainReader {
    private PlainReader() {}

    /** What was given, or nothing if the line is not plain. */
    static Optional<Given> read(Grammar grammar, List<String> arguments) {
        List<String> places = new ArrayList<>();
        Map<String, List<String>> values = new HashMap<>();
        for (int i = 0; i < arguments.size(); i++) {
            String argument = arguments.get(i);
            if (!argument.startsWith("-")) {
                places.add(argument);
                continue;
            }
            int equals = argument.startsWith("--") ? argument.indexOf('=') : -1;
            Optional<Option> option = grammar.option(equals < 0 ? argument : argument.substring(0, equals));
            if (option.isEmpty() || option.get().flag() && equals >= 0) {
                return Optional.empty();
            }
            String value = "";
            if (equals >= 0) {
                value = argument.substring(equals + 1);
            } else if (!option.get().flag()) {
                i++;
                if (i == arguments.size() || !isValue(arguments.get(i))) {
                    return Optional.empty();
                }
                value = arguments.get(i);
            }
            if (!put(values, option.get(), value)) {
                return Optional.empty();
            }
        }
        long needed = grammar.places().stream().filter(Grammar.Place::needed).count();
        boolean fits =
                places.size() >= needed && places.size() <= grammar.places().size();
        return fits ? Optional.of(new Given(places, values)) : Optional.empty();
    }

    /** False where an option that goes once is given again. */
    private static boolean put(Map<String, List<String>> values, Option option, String value) {
        boolean first = !values.containsKey(option.name());
        List<String> sofar = values.computeIfAbsent(option.name(), name -> new ArrayList<>());
        if (!option.flag()) {
            sofar.add(value);
        }
        return first || option.many();
    }

    /** A dash before a figure is a minus; before anything else it may begin an option. */
    private static boolean isValue(String argument) {
        return !argument.startsWith("-") || argument.length() > 1 && Character.isDigit(argument.charAt(1));
    }
}
