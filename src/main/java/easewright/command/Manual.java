package easewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The help, and the authority on what a command line means. */
final class Manual {
    private static final String VERSION = "Easewright 0.1.0";

    private final CommandLine line;

    Manual(List<Grammar> grammars, Voice voice) {
        CommandSpec all = spec("easewright");
        for (Grammar grammar : grammars) {
            all.addSubcommand(grammar.command(), spec(grammar));
        }
        line = new CommandLine(all)
                .setResourceBundle(Commands.english().bundle())
                .setOverwrittenOptionsAllowed(false)
                .setExpandAtFiles(false)
                .setOut(voice.out())
                .setErr(voice.err());
    }

    private static CommandSpec spec(String name) {
        return CommandSpec.create().name(name).version(VERSION).mixinStandardHelpOptions(true);
    }

    private static CommandSpec spec(Grammar grammar) {
        CommandSpec spec = spec(grammar.command());
        int index = 0;
        for (Grammar.Place place : grammar.places()) {
            spec.addPositional(PositionalParamSpec.builder()
                    .index(String.valueOf(index))
                    .required(true)
                    .arity("1")
                    .paramLabel(place.label())
                    .descriptionKey(place.words())
                    .type(String.class)
                    .build());
            index++;
        }
        for (Option option : grammar.options()) {
            OptionSpec.Builder builder =
                    OptionSpec.builder(option.names().toArray(String[]::new)).descriptionKey(option.words());
            if (option.flag()) {
                builder.arity("0").type(boolean.class);
            } else if (option.many()) {
                builder.arity("1").paramLabel(option.label()).type(List.class).auxiliaryTypes(String.class);
            } else {
                builder.arity("1").paramLabel(option.label()).type(String.class);
            }
            spec.addOption(builder.build());
        }
        return spec;
    }

    void usage(PrintWriter to) {
        line.usage(to);
    }

    /**
     * Reads a command line of any form.
     *
     * @return what its command was given; nothing if help or the version was asked for, which then was printed
     * @throws Misuse if the line is wrong
     */
    Optional<Given> read(String... arguments) throws Misuse {
        try {
            ParseResult parsed = line.parseArgs(arguments);
            if (CommandLine.executeHelpRequest(parsed) != null) {
                return Optional.empty();
            }
            if (parsed.hasSubcommand()) {
                return Optional.of(given(parsed.subcommand()));
            }
        } catch (ParameterException e) {
            throw new Misuse("command-line", Map.of("reason", e.getMessage()));
        }
        throw new Misuse("command-missing", Map.of());
    }

    private static Given given(ParseResult parsed) {
        List<String> places = new ArrayList<>();
        for (PositionalParamSpec place : parsed.matchedPositionals()) {
            places.addAll(place.stringValues());
        }
        Map<String, List<String>> options = new HashMap<>();
        for (OptionSpec option : parsed.matchedOptions()) {
            String name = option.names()[option.names().length - 1];
            options.put(name, option.arity().max() == 0 ? List.of() : List.copyOf(option.stringValues()));
        }
        return new Given(places, options);
    }
}
