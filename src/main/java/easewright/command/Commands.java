package easewright.command;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.ResourceBundle;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The front door of the commands. */
@Command(name = "easewright", mixinStandardHelpOptions = true, version = "Easewright 0.1.0")
public final class Commands {
    /** Done, and nothing is wrong with the pattern. */
    public static final int DONE = 0;
    /** Done, but the pattern has faults. */
    public static final int FAULTS = 1;
    /** The file cannot be read or the change cannot be made; nothing was written. */
    public static final int REFUSED = 2;
    /** The command line is wrong. */
    public static final int USAGE = 64;

    private static final Map<String, Class<?>> ALL = all();

    private Commands() {}

    private static Map<String, Class<?>> all() {
        Map<String, Class<?>> all = new LinkedHashMap<>();
        all.put("measure", MeasureCommand.class);
        all.put("ease", EaseCommand.class);
        all.put("change", ChangeCommand.class);
        all.put("check", CheckCommand.class);
        all.put("report", ReportCommand.class);
        all.put("draft", DraftCommand.class);
        return all;
    }

    /** Reading the options of a command takes as long as measuring a piece, so only the one asked for is read. */
    private static CommandLine line(String... arguments) {
        CommandLine line = new CommandLine(new Commands());
        Class<?> asked = arguments.length == 0 ? null : ALL.get(arguments[0]);
        if (asked != null) {
            line.addSubcommand(arguments[0], asked);
        } else {
            ALL.forEach(line::addSubcommand);
        }
        return line;
    }

    /**
     * Runs one command.
     *
     * @param out results
     * @param err messages
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = line(arguments)
                .setResourceBundle(ResourceBundle.getBundle("easewright.text.messages"))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setOverwrittenOptionsAllowed(false)
                .setExpandAtFiles(false)
                .setOut(out)
                .setErr(err);
        line.setParameterExceptionHandler((e, args) -> {
            err.println(e.getMessage());
            err.println(english()
                    .of(
                            "command.usage-hint",
                            Map.of(
                                    "command",
                                    e.getCommandLine().getCommandSpec().qualifiedName())));
            return USAGE;
        });
        line.setExecutionExceptionHandler((e, command, parsed) -> {
            err.println(words(e));
            return REFUSED;
        });
        line.setExecutionStrategy(new CommandLine.RunLast());
        int code = guarded(line, err, arguments);
        out.flush();
        err.flush();
        return code;
    }

    private static int guarded(CommandLine line, PrintWriter err, String... arguments) {
        if (arguments.length == 0) {
            line.usage(err);
            return USAGE;
        }
        try {
            return line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError e) {
            err.println(english().problem("file-too-much", Map.of()));
            return REFUSED;
        }
    }

    private static String words(Exception e) {
        if (e instanceof Trouble trouble) {
            return english().problem(trouble.code(), trouble.values());
        }
        String what = e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage());
        return english().problem("not-foreseen", Map.of("what", what));
    }

    static Words english() {
        return Words.english(LengthUnit.CM);
    }
}
