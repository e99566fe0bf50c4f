package easewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What may be written after the name of a command: said once, for reading a command line and for the help.
 *
 * @param command its name
 * @param places  what stands without an option name, in order; only the last may be left out
 * @param options everything else, none of which is needed as far as the grammar goes
 */
record Grammar(String command, List<Place> places, List<Option> options) {
    /** Something that stands at its place, under the label it has in the help and the key of its line in the bundle. */
    record Place(String label, String words, boolean needed) {}

    Grammar {
        places = List.copyOf(places);
        options = List.copyOf(options);
    }

    static Grammar of(String command) {
        return new Grammar(command, List.of(), List.of());
    }

    Grammar place(String label, String words) {
        List<Place> more = new ArrayList<>(places);
        more.add(new Place(label, words, true));
        return new Grammar(command, more, options);
    }

    /** At the last place, something that may be left out. */
    Grammar placeOrNone(String label, String words) {
        List<Place> more = new ArrayList<>(places);
        more.add(new Place(label, words, false));
        return new Grammar(command, more, options);
    }

    /** Yes or no. */
    Grammar flag(String name, String words) {
        return and(new Option(List.of(name), "", words, false));
    }

    /** At most one value. */
    Grammar value(String name, String label, String words) {
        return and(new Option(List.of(name), label, words, false));
    }

    /** Any number of values. */
    Grammar values(String name, String label, String words) {
        return and(new Option(List.of(name), label, words, true));
    }

    Grammar and(Option option) {
        List<Option> more = new ArrayList<>(options);
        more.add(option);
        return new Grammar(command, places, more);
    }

    Optional<Option> option(String name) {
        for (Option option : options) {
            if (option.names().contains(name)) {
                return Optional.of(option);
            }
        }
        return Optional.empty();
    }
}
