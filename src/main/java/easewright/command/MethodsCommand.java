package easewright.command;

import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code methods}: every way of changing a pattern, with its settings. */
final class MethodsCommand implements Job {
    @Override
    public Grammar grammar() {
        return Grammar.of("methods")
                .placeOrNone("METHOD", "option.method-described")
                .flag("--json", "option.json-plain");
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Words words = Commands.english();
        List<Way> ways = ways(given);
        if (given.has("--json")) {
            voice.out().println(new Json(words).text(json(ways, words)));
        } else {
            text(ways, voice.out(), words);
        }
        return Commands.DONE;
    }

    /** All of them, or the one that is named. */
    private static List<Way> ways(Given given) throws Trouble {
        if (given.places().isEmpty()) {
            return Ways.all();
        }
        return List.of(Asked.by(given.places().get(0)).way());
    }

    private static void text(List<Way> ways, PrintWriter out, Words words) {
        Page page = new Page(out);
        for (Way way : ways) {
            String key = "way." + way.method();
            page.text(words.of("methods.way", Map.of("name", words.of(key + ".name"), "method", way.method())));
            page.text("  ", words.of(key + ".what"));
            page.text("  ", words.of(key + ".hint"));
            Table table = new Table();
            for (Setting setting : listed(way)) {
                table.row(written(way, setting, words), meaning(way, setting, words));
            }
            table.print(out);
            page.line();
        }
        page.text(words.of("methods.places"));
        page.text(words.of("methods.several"));
    }

    /** The settings, those that go by one name only once. */
    private static List<Setting> listed(Way way) {
        Set<String> names = new HashSet<>();
        return way.settings().stream()
                .filter(setting -> names.add(Shorthand.name(way, setting)))
                .toList();
    }

    /** A setting as it is written on a command line. */
    private static String written(Way way, Setting setting, Words words) {
        Optional<Shorthand> option = Shorthand.of(way, setting);
        boolean flag = setting.kind() == Setting.Kind.FLAG;
        String value = setting.kind() == Setting.Kind.CHOICE
                ? String.join("|", setting.choices())
                : words.of("methods.value." + setting.kind());
        if (option.isEmpty()) {
            return "--set " + setting.key() + "=" + value;
        }
        if (option.get().option().equals(Shorthand.KEEP) && way.setting("fixed").isPresent()) {
            value = words.of("methods.value.KEEP");
        }
        return flag ? option.get().option() : option.get().option() + " " + value;
    }

    private static String meaning(Way way, Setting setting, Words words) {
        String hint = words.of("way." + way.method() + ".setting." + setting.key() + ".hint");
        if (setting.key().equals("keep") && way.setting("fixed").isPresent()) {
            hint = words.of("methods.keep");
        }
        if (setting.required()) {
            return hint + " " + words.of("methods.needed");
        }
        return setting.standard().isEmpty()
                ? hint
                : hint + " " + words.of("methods.standard", Map.of("standard", setting.standard()));
    }

    private static Node json(List<Way> ways, Words words) {
        Node root = new Node();
        Node.Rows methods = root.putArray("methods");
        for (Way way : ways) {
            Node node = methods.addObject()
                    .put("method", way.method())
                    .put("what", words.of("way." + way.method() + ".what"))
                    .put("amount", way.amount());
            Node.Rows settings = node.putArray("settings");
            for (Setting setting : way.settings()) {
                Node one = settings.addObject()
                        .put("key", setting.key())
                        .put("kind", setting.kind().name().toLowerCase(Locale.ROOT))
                        .put("list", setting.kind().isList())
                        .put("required", setting.required())
                        .put("standard", setting.standard());
                one.put("choices", setting.choices());
                Shorthand.of(way, setting).ifPresent(s -> one.put("option", s.option()));
            }
        }
        return root;
    }
}
