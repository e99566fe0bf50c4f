package easewright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import easewright.alter.Altered;
import easewright.alter.Refusal;
import easewright.check.Checks;
import easewright.ease.EaseTables;
import easewright.pattern.ChangeNote;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import easewright.print.Reading;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code change FILE}: this much more or less, here, and a new file with it. */
@Command(name = "change", mixinStandardHelpOptions = true)
final class ChangeCommand implements Callable<Integer> {
    @Mixin
    Source source;

    @Mixin
    Target target;

    @ArgGroup(exclusive = true, multiplicity = "1")
    What what;

    /** One change by options, or several from a list. */
    static final class What {
        @ArgGroup(exclusive = false)
        ChangeOptions one;

        @Option(names = "--list", paramLabel = "CHANGES.json", descriptionKey = "option.list")
        Path list;
    }

    @Option(names = "--in-place", descriptionKey = "option.in-place")
    boolean inPlace;

    @Option(names = "--try", descriptionKey = "option.try")
    boolean onlyTry;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() throws Trouble {
        Words words = source.words();
        int places = (target.output == null ? 0 : 1) + (inPlace ? 1 : 0) + (onlyTry ? 1 : 0);
        if (places != 1) {
            throw new ParameterException(spec.commandLine(), words.of("command.output-needed"));
        }
        Path chosen = target.output == null ? source.file : target.output;
        Source.Opened opened = source.open();
        if (!onlyTry) {
            target.check(chosen, source.file, inPlace);
        }
        Pattern before = opened.pattern();
        if (before.scale().proof() == Scale.Proof.UNPROVED) {
            throw new Trouble("scale-needed", Map.of("file", source.file.toString()));
        }
        List<Finding> findings = new ArrayList<>();
        Pattern after = changed(before, findings);
        byte[] bytes = written(opened, after, findings);
        Reading readBefore = opened.reading(before);
        Reading readAfter = opened.reading(after);
        findings.addAll(
                Checks.compare(before, readBefore.measures(), after, readAfter.measures(), EaseTables.standard()));
        Noticed noticed = Noticed.in(opened, readAfter).and(findings);
        if (!onlyTry) {
            Target.save(chosen, bytes);
        }
        PrintWriter out = spec.commandLine().getOut();
        if (source.json) {
            Json json = new Json(words);
            ObjectNode document = json.document(opened, readAfter, noticed);
            document.set("changes", notes(after.changes()));
            document.set("before", json.reading(readBefore));
            document.set("after", json.reading(readAfter));
            out.println(json.text(document));
        } else {
            new ChangeSheet(out, words).print(readBefore, readAfter);
            noticed.print(out, words);
        }
        String said = onlyTry ? "command.not-saved" : "command.saved";
        spec.commandLine().getErr().println(words.of(said, Map.of("file", chosen.toString())));
        return noticed.exitCode();
    }

    private Pattern changed(Pattern before, List<Finding> findings) throws Trouble {
        List<Asked> asked = what.list == null ? List.of(what.one.asked()) : ChangeList.read(what.list);
        Pattern pattern = before;
        for (Asked each : asked) {
            try {
                Altered altered = Method.alteration(each, pattern, source.unit).apply(pattern);
                findings.addAll(altered.findings());
                pattern = altered.pattern();
            } catch (Refusal refusal) {
                throw Said.of(refusal);
            }
        }
        return pattern;
    }

    private byte[] written(Source.Opened opened, Pattern after, List<Finding> findings) throws Trouble {
        try {
            findings.addAll(opened.svg().consequences(after));
            return opened.svg().write(after);
        } catch (SvgProblem e) {
            throw Said.of(e, source.file);
        }
    }

    private static ArrayNode notes(List<ChangeNote> notes) {
        ArrayNode array = Json.array();
        for (ChangeNote note : notes) {
            ObjectNode node = array.addObject().put("method", note.method());
            note.settings().forEach(node::put);
        }
        return array;
    }
}
