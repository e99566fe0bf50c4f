package easewright.command;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The front door of the commands. */
public final class Commands {
    /** Done, and nothing is wrong with the pattern. */
    public static final int DONE = 0;
    /** Done, but the pattern has faults. */
    public static final int FAULTS = 1;
    /** The file cannot be read or the change cannot be made; nothing was written. */
    public static final int REFUSED = 2;
    /** The command line is wrong. */
    public static final int USAGE = 64;

    private static final List<String> ALL =
            List.of("measure", "ease", "change", "true", "methods", "check", "print", "report", "draft");

    private Commands() {}

    private static Optional<Job> job(String name) {
        return Optional.ofNullable(
                switch (name) {
                    case "measure" -> new MeasureCommand();
                    case "ease" -> new EaseCommand();
                    case "change" -> new ChangeCommand();
                    case "true" -> new TrueCommand();
                    case "methods" -> new MethodsCommand();
                    case "check" -> new CheckCommand();
                    case "print" -> new PrintCommand();
                    case "report" -> new ReportCommand();
                    case "draft" -> new DraftCommand();
                    default -> null;
                });
    }

    /**
     * Runs one command.
     *
     * @param out results
     * @param err messages
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        int code = guarded(new Voice(out, err), arguments);
        out.flush();
        err.flush();
        return code;
    }

    private static int guarded(Voice voice, String... arguments) {
        if (arguments.length == 0) {
            manual(voice).usage(voice.err());
            return USAGE;
        }
        Optional<Given> given = Optional.empty();
        try {
            Optional<Job> job = job(arguments[0]);
            given = given(job, voice, arguments);
            return job.isEmpty() || given.isEmpty() ? DONE : job.get().run(given.get(), voice);
        } catch (Misuse e) {
            say(e, given, voice);
            String command = job(arguments[0]).isPresent() ? "easewright " + arguments[0] : "easewright";
            voice.err().println(english().of("command.usage-hint", Map.of("command", command)));
            return USAGE;
        } catch (Trouble e) {
            say(e, given, voice);
        } catch (StackOverflowError | OutOfMemoryError e) {
            voice.err().println(english().problem("file-too-much", Map.of()));
        } catch (RuntimeException e) {
            String what = e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage());
            voice.err().println(english().problem("not-foreseen", Map.of("what", what)));
        }
        return REFUSED;
    }

    private static Optional<Given> given(Optional<Job> job, Voice voice, String... arguments) throws Misuse {
        List<String> line = List.of(arguments);
        Optional<Given> given = Optional.empty();
        if (job.isPresent()) {
            Grammar grammar = job.get().grammar();
            line = Joined.amounts(grammar, line);
            given = PlainReader.read(grammar, line.subList(1, line.size()));
        }
        return given.isPresent() ? given : manual(voice).read(line);
    }

    /** In the unit that was asked for, as far as it is known. */
    private static void say(Trouble trouble, Optional<Given> given, Voice voice) {
        Words words = given.flatMap(g -> g.text("--unit"))
                .flatMap(LengthUnit::named)
                .map(Commands::english)
                .orElse(english());
        voice.err().println(words.problem(trouble.code(), trouble.values()));
        Meant.by(trouble).ifPresent(name -> voice.err().println(words.of("command.meant", Map.of("name", name))));
    }

    private static Manual manual(Voice voice) {
        List<Grammar> grammars = new ArrayList<>();
        for (String name : ALL) {
            job(name).ifPresent(job -> grammars.add(job.grammar()));
        }
        return new Manual(grammars, voice);
    }

    static Words english() {
        return english(LengthUnit.CM);
    }

    static Words english(LengthUnit unit) {
        return Words.english(unit).forCommands();
    }
}
