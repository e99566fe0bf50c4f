package easewright.command;

import easewright.alter.Alteration;
import easewright.alter.CentreChange;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.geom.Point;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Turns what was asked for into an alteration. */
final class Method {
    private Method() {}

    static Alteration alteration(Asked asked, Pattern pattern, LengthUnit unit) throws Trouble {
        Level level = asked.level(pattern);
        double amount = asked.amount(unit);
        return switch (asked.method().strip().toLowerCase(Locale.ROOT)) {
            case "seam" -> seam(asked, pattern, level, amount);
            case "centre", "center" -> centre(asked, pattern, level, amount, false);
            case "wedge" -> centre(asked, pattern, level, amount, true);
            default -> throw new Trouble("method-not-known", Map.of("text", asked.method()));
        };
    }

    private static Alteration seam(Asked asked, Pattern pattern, Level level, double amount) throws Trouble {
        List<String> names = new ArrayList<>();
        List<Point> places = new ArrayList<>();
        for (String text : asked.keep()) {
            if (text.indexOf('/') >= 0) {
                places.add(Asked.place(pattern, text));
            } else {
                names.add(known(pattern, text.strip()));
            }
        }
        return new SeamChange(
                level.name(),
                amount,
                asked.shares(pattern),
                asked.taperKind(),
                asked.carry(),
                names,
                places,
                asked.oneSide(),
                asked.accept());
    }

    private static Alteration centre(Asked asked, Pattern pattern, Level level, double amount, boolean wedge)
            throws Trouble {
        List<Share> shares = asked.shares(pattern);
        if (shares.size() != 1) {
            throw new Trouble("centre-edge-needed", Map.of("text", asked.method()));
        }
        if (asked.keep().size() > 1) {
            throw new Trouble("centre-one-keep", Map.of("text", asked.keep()));
        }
        String keep = asked.keep().isEmpty() ? "" : known(pattern, asked.keep().get(0));
        return new CentreChange(level.name(), amount, shares.get(0).edge(), wedge, keep, asked.accept());
    }

    /** A name that some piece knows: a notch, a level or an edge. */
    private static String known(Pattern pattern, String name) throws Trouble {
        List<String> names = new ArrayList<>();
        pattern.levels().forEach(l -> names.add(l.name()));
        pattern.pieces().forEach(p -> {
            p.notches().stream().map(Notch::name).forEach(names::add);
            p.edges().forEach(e -> names.add(e.name()));
        });
        return names.stream()
                .filter(n -> n.equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new Trouble(
                        "keep-not-known",
                        Map.of("text", name, "known", names.stream().distinct().toList())));
    }
}
