package easewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

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
                    .required(place.needed())
                    .arity(place.needed() ? "1" : "0..1")
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
    Optional<Given> read(List<String> arguments) throws Misuse {
        try {
            ParseResult parsed = line.parseArgs(arguments.toArray(String[]::new));
            if (CommandLine.executeHelpRequest(parsed) != null) {
                return Optional.empty();
            }
            if (parsed.hasSubcommand()) {
                return Optional.of(given(parsed.subcommand()));
            }
        } catch (UnmatchedArgumentException e) {
            throw unmatched(e);
        } catch (MissingParameterException e) {
            throw missing(e);
        } catch (OverwrittenOptionException e) {
            String option = e.getOverwritten() instanceof OptionSpec spec ? spec.longestName() : "";
            throw new Misuse("option-twice", Map.of("option", option));
        } catch (ParameterException e) {
            throw new Misuse("command-line", Map.of("reason", e.getMessage()));
        }
        throw new Misuse("command-missing", Map.of());
    }

    private static Misuse missing(MissingParameterException e) {
        ArgSpec first = e.getMissing().get(0);
        return first instanceof OptionSpec option
                ? new Misuse("value-missing", Map.of("option", option.longestName(), "what", option.paramLabel()))
                : new Misuse("place-missing", Map.of("what", first.paramLabel()));
    }

    /** Words that belong to nothing: a command or an option that does not exist, or something left over. */
    private static Misuse unmatched(UnmatchedArgumentException e) {
        CommandSpec command = e.getCommandLine().getCommandSpec();
        String word = e.getUnmatched().get(0);
        if (word.startsWith("-")) {
            List<String> known = new ArrayList<>();
            command.options().forEach(option -> known.addAll(List.of(option.names())));
            String name = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
            return new Misuse("option-unknown", Map.of("text", name, "command", command.name(), "known", known));
        }
        if (command.parent() == null) {
            List<String> known = List.copyOf(e.getCommandLine().getSubcommands().keySet());
            return new Misuse("command-unknown", Map.of("text", word, "known", known));
        }
        return new Misuse("word-left-over", Map.of("text", word));
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
