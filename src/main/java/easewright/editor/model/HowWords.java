package easewright.editor.model;

import easewright.alter.Setting;
import easewright.alter.Taper;
import easewright.pattern.EdgeRef;
import easewright.pattern.Side;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** How a change is made, in the words of its settings: the way, the seams, the taper, the side. */
public final class HowWords {
    /** So many letters have room on the one line that there is. */
    private static final int ROOM = 52;

    private HowWords() {}

    /** On one line: of seams whose names are too long for it, only how many take part. */
    public static String line(Desk desk, Wanted wanted) {
        String whole = whole(desk, wanted);
        return whole.length() <= ROOM ? whole : said(desk, wanted, true);
    }

    /** With the names of all that takes part. */
    public static String whole(Desk desk, Wanted wanted) {
        return said(desk, wanted, false);
    }

    private static String said(Desk desk, Wanted wanted, boolean counted) {
        Words words = desk.words();
        List<String> parts = new ArrayList<>();
        if (wanted.atSeams()) {
            parts.add(seams(desk, wanted, counted));
            atSeams(wanted, words, parts);
        }
        wanted.other().ifPresent(o -> {
            parts.add(decapitalized(words.of("way." + o.method() + ".name")));
            WayForm.of(o, desk).fields().forEach(f -> field(f, words, parts));
        });
        if (wanted.maySided()) {
            parts.add(words.of(
                    wanted.side() == Side.BOTH ? "editor.here.side.BOTH" : "editor.here.how." + wanted.side()));
        }
        return words.of("editor.here.how", Map.of("settings", String.join(", ", parts)));
    }

    private static String seams(Desk desk, Wanted wanted, boolean counted) {
        Words words = desk.words();
        List<EdgeRef> all = desk.holds().stream().map(Hold::edge).distinct().toList();
        List<EdgeRef> taking =
                all.stream().filter(e -> !wanted.leftOut().contains(e)).toList();
        if (taking.isEmpty()) {
            return decapitalized(words.of("editor.way.seams"));
        }
        if (counted && taking.size() > 1) {
            return words.of(
                    taking.size() == all.size() ? "editor.here.how.at.all" : "editor.here.how.at.some",
                    Map.of("count", taking.size(), "all", all.size()));
        }
        List<String> names = taking.stream()
                .map(e -> HereWords.seam(desk, e, "editor.here.how.seam"))
                .toList();
        return words.of("editor.here.how.at", Map.of("seams", names));
    }

    private static void atSeams(Wanted wanted, Words words, List<String> parts) {
        parts.add(words.of(wanted.taper() == Taper.SMOOTH ? "editor.here.smooth" : "editor.here.straight"));
        if (wanted.carry()) {
            parts.add(words.of("editor.here.how.carry"));
        }
        if (wanted.even()) {
            parts.add(words.of("editor.here.how.even"));
        }
        if (!wanted.beyond().isEmpty()) {
            parts.add(words.of("editor.here.how.more"));
        }
    }

    /** What is chosen in one setting of a form; places are seen on the table. */
    private static void field(WayForm.Field field, Words words, List<String> parts) {
        if (field.kind() == Setting.Kind.FLAG) {
            if (field.texts().contains("yes")) {
                parts.add(field.label());
            }
            return;
        }
        List<String> chosen = field.options().stream()
                .filter(o -> field.texts().contains(o.text()))
                .map(WayForm.Option::label)
                .toList();
        if (!chosen.isEmpty()) {
            parts.add(words.listed(chosen));
        }
    }

    private static String decapitalized(String name) {
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
