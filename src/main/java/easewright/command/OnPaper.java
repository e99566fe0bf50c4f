package easewright.command;

import easewright.alter.AllSizes;
import easewright.alter.Refusal;
import easewright.print.Cautions;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.Use;
import easewright.text.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A command that puts a pattern on paper: opens it, reads it as it is and as it was before the changes recorded in it,
 * and saves what becomes of that.
 */
abstract class OnPaper implements Job {
    private static final String SIZES = "--sizes";

    private final String name;
    private final String outputNeeded;
    private final String kindUnknown;

    /**
     * @param name         of the command
     * @param outputNeeded code of the trouble where no file is named to write
     * @param kindUnknown  code of the trouble where its name says nothing of what to write
     */
    OnPaper(String name, String outputNeeded, String kindUnknown) {
        this.name = name;
        this.outputNeeded = outputNeeded;
        this.kindUnknown = kindUnknown;
    }

    /**
     * What is put on paper.
     *
     * @param source  how it was opened
     * @param opened  the file
     * @param output  where the result goes
     * @param before  as it was before its changes; empty where none are recorded
     * @param now     as it is
     * @param uses    what the garment is said to be
     * @param noticed everything there is to notice now
     */
    record Matter(
            Source source,
            Source.Opened opened,
            Path output,
            Optional<Reading> before,
            Reading now,
            Set<Use> uses,
            Noticed noticed) {
        /** What to call the pattern: its file without the ending. */
        String title() {
            return String.valueOf(source.file().getFileName()).replaceFirst("(?i)\\.svgz?$", "");
        }

        LocalDate date() {
            return LocalDate.now(ZoneId.systemDefault());
        }

        /** What stands on paper is said as in the window, to whoever comes to read it. */
        Words words() {
            return Words.english(source.typed().unit());
        }

        List<Cautions.Caution> cautions() {
            return Cautions.of(before, now, uses);
        }
    }

    /**
     * What came of it.
     *
     * @param json what a program is told
     * @param said key of the line that tells it is saved
     */
    record Made(byte[] bytes, Node json, String said, Map<String, ?> values) {}

    /** Adds the options that only this command has. */
    abstract Grammar grammar(Grammar common);

    /** Whether a file may be called so; its ending says what is written. */
    abstract boolean canBeCalled(String lowerCaseName);

    abstract Made make(Given given, Matter matter) throws Trouble;

    @Override
    public final Grammar grammar() {
        return grammar(Target.grammar(Source.grammar(name))
                .value(SIZES, "SIZES", "option.sizes-on-paper")
                .value("--paper", "PAPER", "option." + name + "-paper")
                .value("--kind", "WORDS", "option.kind"));
    }

    @Override
    public final int run(Given given, Voice voice) throws Trouble {
        Source source = Source.of(given);
        Target target = Target.of(given);
        Path output = target.output().orElseThrow(() -> new Misuse(outputNeeded, Map.of()));
        target.check(output, source.file(), false);
        if (!canBeCalled(String.valueOf(output.getFileName()).toLowerCase(Locale.ROOT))) {
            throw new Misuse(kindUnknown, Map.of("file", output.toString()));
        }
        Set<Use> uses = PrintOptions.uses(given);
        Source.Opened opened = source.open();
        List<String> sizes = sizes(given, opened);
        Reading now = opened.reading(opened.pattern(), sizes);
        Optional<Reading> before = Past.of(opened.pattern()).map(p -> opened.reading(p, sizes));
        Noticed noticed = Noticed.in(opened, now);
        Made made = make(given, new Matter(source, opened, output, before, now, uses, noticed));
        source.typed().tell(voice);
        Target.save(output, made.bytes());
        if (source.json()) {
            voice.out().println(new Json(source.words()).text(made.json()));
        }
        voice.err().println(source.words().of(made.said(), made.values()));
        return noticed.exitCode();
    }

    /** The sizes asked for, in the order in which they are named; none for all. */
    private static List<String> sizes(Given given, Source.Opened opened) throws Trouble {
        Optional<String> text = given.text(SIZES);
        if (text.isEmpty()) {
            return opened.size().stream().toList();
        }
        if (given.has("--size")) {
            throw new Misuse("size-and-sizes", Map.of());
        }
        try {
            return AllSizes.named(List.of(text.get()), opened.pattern());
        } catch (Refusal refusal) {
            throw Said.of(refusal);
        }
    }
}
