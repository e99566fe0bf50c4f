package easewright.command;

import easewright.alter.Altered;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.check.Checks;
import easewright.check.Offers;
import easewright.check.Proportion;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import easewright.print.Reading;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** {@code change FILE}: this much more or less, here, and a new file with it. */
final class ChangeCommand implements Job {
    @Override
    public Grammar grammar() {
        return ChangeOptions.grammar(Target.grammar(Source.grammar("change"))
                .flag("--in-place", "option.in-place")
                .flag("--try", "option.try")
                .flag("--anyway", "option.anyway")
                .value("--list", "CHANGES.json", "option.list"));
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Source source = Source.of(given);
        Target target = Target.of(given);
        Words words = source.words();
        boolean inPlace = given.has("--in-place");
        boolean onlyTry = given.has("--try");
        if ((target.output().isPresent() ? 1 : 0) + (inPlace ? 1 : 0) + (onlyTry ? 1 : 0) != 1) {
            throw new Misuse("output-needed", Map.of());
        }
        List<Asked> asked = inSize(asked(given), source.size());
        Path chosen = target.output().orElse(source.file());
        Source.Opened opened = source.open();
        if (!onlyTry) {
            target.check(chosen, source.file(), inPlace);
        }
        Pattern before = opened.pattern();
        requireScale(before, source);
        List<Finding> findings = new ArrayList<>();
        Pattern after = changed(before, asked, source.typed(), findings);
        source.typed().tell(voice);
        byte[] bytes = written(opened, source.file(), chosen, after, findings);
        Reading readBefore = opened.reading(before);
        Reading readAfter = opened.reading(after);
        findings.addAll(Checks.compare(
                readBefore.pattern(),
                readBefore.measures(),
                readBefore.sheet(),
                readAfter.pattern(),
                readAfter.measures(),
                readAfter.sheet()));
        findings.addAll(Offers.of(before, after));
        Noticed noticed = Noticed.in(opened, readAfter).and(findings);
        if (!given.has("--anyway")) {
            refuseIfOutOfProportion(findings);
        }
        if (!onlyTry) {
            Target.save(chosen, bytes);
        }
        if (source.json()) {
            Json json = new Json(words);
            Node document = json.document(opened, readAfter, noticed);
            document.put("changes", Json.changes(after.changes()));
            document.put("before", json.reading(readBefore));
            document.put("after", json.reading(readAfter));
            voice.out().println(json.text(document));
        } else {
            new ChangeSheet(voice.out(), words).print(readBefore, readAfter);
            noticed.printSince(Noticed.in(opened, readBefore), voice.out(), words);
        }
        String said = onlyTry ? "command.not-saved" : "command.saved";
        voice.err().println(words.of(said, Map.of("file", chosen.toString())));
        return noticed.exitCode();
    }

    /** One change by options, or several from a list. */
    private static List<Asked> asked(Given given) throws Trouble {
        Optional<Path> list = given.path("--list");
        if (list.isPresent() == ChangeOptions.any(given)) {
            throw new Misuse("change-needed", Map.of());
        }
        if (list.isPresent()) {
            return ChangeList.read(list.get());
        }
        return List.of(ChangeOptions.asked(given));
    }

    private static Pattern changed(Pattern before, List<Asked> asked, Typed typed, List<Finding> findings)
            throws Trouble {
        Pattern pattern = before;
        List<Asked> forEachSize = new ArrayList<>();
        for (Asked each : asked) {
            forEachSize.addAll(each.eachSize(before));
        }
        for (Asked each : forEachSize) {
            try {
                Altered altered = each.alteration(pattern, typed).apply(pattern);
                findings.addAll(altered.findings());
                pattern = altered.pattern();
            } catch (Refusal refusal) {
                throw inSize(Said.of(refusal), each);
            } catch (Trouble trouble) {
                throw inSize(trouble, each);
            }
        }
        return pattern;
    }

    /** Whoever changes several sizes has to know which of them refused. */
    private static Trouble inSize(Trouble trouble, Asked asked) {
        return asked.called().isEmpty()
                ? trouble
                : new Trouble(
                        "change-refused-in-size",
                        Map.of(
                                "size",
                                asked.called().get(),
                                "reason",
                                Commands.english().problem(trouble.code(), trouble.values())));
    }

    /** Where one size is looked at and no other named, that one is changed. */
    private static List<Asked> inSize(List<Asked> asked, Optional<String> looked) {
        return asked.stream()
                .map(a -> looked.isPresent() && !a.texts().containsKey(Scope.SIZE)
                        ? a.with(Scope.SIZE, List.of(looked.get()))
                        : a)
                .toList();
    }

    private static void refuseIfOutOfProportion(List<Finding> findings) throws Trouble {
        Optional<Finding> slip = findings.stream().filter(Proportion::says).findFirst();
        if (slip.isPresent()) {
            Map<String, Object> values = new TreeMap<>(slip.get().values());
            values.put("piece", slip.get().piece());
            String code = values.containsKey("level") ? "girth-out-of-proportion" : "edge-out-of-proportion";
            throw new Trouble(code, values);
        }
    }

    /** A line can be moved by an amount only where it is known how long it is. */
    static void requireScale(Pattern pattern, Source source) throws Trouble {
        if (pattern.scale().proof() == Scale.Proof.UNPROVED) {
            throw new Trouble("scale-needed", Map.of("file", source.file().toString()));
        }
    }

    /**
     * @param file   the input, as errors name it
     * @param output the file for which it is written
     */
    static byte[] written(Source.Opened opened, Path file, Path output, Pattern after, List<Finding> findings)
            throws Trouble {
        try {
            SvgFile.Written written = opened.svg().writing(after);
            findings.addAll(written.consequences());
            return opened.svg().named(written.bytes(), String.valueOf(output.getFileName()));
        } catch (SvgProblem e) {
            throw Said.of(e, file);
        }
    }
}
