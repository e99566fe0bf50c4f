package easewright.command;

import easewright.alter.Proposal;
import easewright.alter.TrueUp;
import easewright.alter.TrueUp.Tried;
import easewright.alter.Truing;
import easewright.check.Checks;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.print.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code true FILE}: what is untrue and how it could be put right; puts it right where asked to. */
final class TrueCommand implements Job {
    @Override
    public Grammar grammar() {
        return Target.grammar(Source.grammar("true"))
                .values("--place", "PLACE", "option.place")
                .flag("--all", "option.all")
                .flag("--accept", "option.true-accept")
                .flag("--in-place", "option.in-place")
                .flag("--try", "option.try");
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Source source = Source.of(given);
        Target target = Target.of(given);
        boolean all = given.has("--all");
        List<String> wanted = given.texts("--place");
        boolean onlyTry = given.has("--try");
        boolean inPlace = given.has("--in-place");
        int outputs = (target.output().isPresent() ? 1 : 0) + (inPlace ? 1 : 0) + (onlyTry ? 1 : 0);
        if (all && !wanted.isEmpty() || !all && wanted.isEmpty() && outputs > 0) {
            throw new Misuse("true-which", Map.of());
        }
        boolean shows = !all && wanted.isEmpty();
        if (!shows && outputs != 1) {
            throw new Misuse("output-needed", Map.of());
        }
        Source.Opened opened = source.open();
        Pattern before = opened.pattern();
        boolean accept = given.has("--accept");
        if (shows) {
            List<Tried> alone = Truing.proposals(before).stream()
                    .filter(p -> inSize(p, source.size()))
                    .map(p -> TrueUp.one(before, p, true))
                    .toList();
            return shown(alone, source, opened, voice);
        }
        Path chosen = target.output().orElse(source.file());
        if (!onlyTry) {
            target.check(chosen, source.file(), inPlace);
        }
        ChangeCommand.requireScale(before, source);
        List<Tried> tried = all ? TrueUp.all(before, accept) : named(before, wanted, accept);
        return done(tried, before, opened, source, onlyTry ? Optional.empty() : Optional.of(chosen), voice);
    }

    private static boolean inSize(Proposal proposal, Optional<String> size) {
        return size.isEmpty() || proposal.size().isEmpty() || proposal.size().equals(size);
    }

    private static int shown(List<Tried> alone, Source source, Source.Opened opened, Voice voice) {
        Reading reading = opened.reading(opened.pattern());
        Noticed noticed = Noticed.in(opened, reading);
        TrueSheet sheet = new TrueSheet(opened.pattern(), source.words());
        if (source.json()) {
            Json json = new Json(source.words());
            Node document = json.document(opened, reading, noticed);
            sheet.put(document.putArray("truings"), alone);
            voice.out().println(json.text(document));
        } else {
            sheet.print(voice.out(), alone, true);
        }
        return noticed.exitCode();
    }

    /** Those that were named, in this order; the first that cannot be made ends it. */
    private static List<Tried> named(Pattern before, List<String> wanted, boolean accept) throws Trouble {
        List<Proposal> known = Truing.proposals(before);
        List<Tried> all = new ArrayList<>();
        Pattern now = before;
        for (String text : wanted) {
            Optional<Proposal> proposal = TruePlace.find(known, text, before);
            if (proposal.isEmpty()) {
                List<String> names =
                        known.stream().map(p -> TruePlace.of(p, before)).toList();
                throw new Trouble("place-not-untrue", Map.of("text", text, "known", names));
            }
            Tried tried = TrueUp.one(now, proposal.get(), accept);
            if (tried.refusal().isPresent()) {
                throw Said.of(tried.refusal().get());
            }
            all.add(tried);
            now = tried.done().orElseThrow().pattern();
        }
        return all;
    }

    private static int done(
            List<Tried> tried, Pattern before, Source.Opened opened, Source source, Optional<Path> chosen, Voice voice)
            throws Trouble {
        Pattern after = before;
        List<Finding> findings = new ArrayList<>();
        for (Tried each : tried) {
            if (each.done().isPresent()) {
                after = each.done().get().pattern();
                findings.addAll(each.done().get().findings());
            }
        }
        byte[] bytes = ChangeCommand.written(opened, source.file(), chosen.orElse(source.file()), after, findings);
        Reading was = opened.reading(before);
        Reading is = opened.reading(after);
        findings.addAll(
                Checks.compare(was.pattern(), was.measures(), was.sheet(), is.pattern(), is.measures(), is.sheet()));
        Noticed noticed = Noticed.in(opened, is).and(findings);
        if (chosen.isPresent()) {
            Target.save(chosen.get(), bytes);
        }
        TrueSheet sheet = new TrueSheet(before, source.words());
        if (source.json()) {
            Json json = new Json(source.words());
            Node document = json.document(opened, is, noticed);
            sheet.put(document.putArray("truings"), tried);
            document.put("changes", Json.changes(after.changes()));
            document.put("before", json.reading(was));
            document.put("after", json.reading(is));
            voice.out().println(json.text(document));
        } else {
            sheet.print(voice.out(), tried, false);
            new ChangeSheet(voice.out(), source.words()).print(was, is);
            noticed.printSince(Noticed.in(opened, was), voice.out(), source.words());
        }
        String said = chosen.isPresent() ? "command.saved" : "command.not-saved";
        String file = chosen.orElse(source.file()).toString();
        voice.err().println(source.words().of(said, Map.of("file", file)));
        return noticed.exitCode();
    }
}
