package easewright.editor.model;

import easewright.alter.Setting;
import easewright.alter.Taper;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.pattern.EdgeRef;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * At the seams there are a few settings beside the amount, or a form with all of them. Who goes from one to the other
 * finds there what was chosen before; what the few do not show holds on beside them, and is told.
 */
public final class SeamsInFull {
    private static final Way SEAMS = Ways.all().get(0);

    private static final String TAPER = "taper";
    private static final String CARRY = "carry-to-hem";
    private static final String EVEN = "even";
    private static final String EDGE = "edge";
    private static final String KEEP = "keep";
    private static final List<String> YES = List.of("yes");
    private static final List<String> NO = List.of("no");

    /** What the few settings show as well. */
    private static final Set<String> SHOWN = Set.of("level", SEAMS.amount(), TAPER, CARRY, EVEN, EDGE);

    private SeamsInFull() {}

    /** Whether this is the way at the seams. */
    public static boolean is(String method) {
        return SEAMS.method().equals(method);
    }

    /**
     * The wish in another way.
     *
     * @param method of a way, or empty for the few settings at the seams
     */
    public static Wanted to(String method, Wanted wanted, Desk desk) {
        Wanted few = wanted.other()
                .filter(o -> is(o.method()))
                .map(o -> few(wanted, o, desk))
                .orElse(wanted);
        return few.withOther(
                is(method) ? Optional.of(all(few, desk)) : Ways.of(method).map(OtherWay::of));
    }

    /** The wish at another level: the seams are others there, and it need not go down to the hem. */
    static Wanted at(Wanted fresh, Wanted before) {
        OtherWay still = elsewhere(fresh, new OtherWay(SEAMS.method(), before.beyond()));
        return fresh.withBeyond(still.texts())
                .withOther(before.other()
                        .map(o -> is(o.method())
                                ? elsewhere(fresh, o).with(EDGE, List.of()).with(CARRY, yes(fresh.carry()))
                                : o));
    }

    /** The level at work cannot stay unchanged. */
    private static OtherWay elsewhere(Wanted fresh, OtherWay way) {
        List<String> keep = way.texts(KEEP).stream()
                .filter(name -> !name.equals(fresh.level()))
                .toList();
        return keep.equals(way.texts(KEEP)) ? way : set(way, KEEP, keep);
    }

    private static OtherWay set(OtherWay way, String key, List<String> values) {
        Map<String, List<String>> texts = new LinkedHashMap<>(way.texts());
        texts.remove(key);
        OtherWay without = new OtherWay(way.method(), texts);
        return values.isEmpty() ? without : without.with(key, values);
    }

    /** What holds beyond the few settings, as the form has it; empty for nothing. */
    static Optional<OtherWay> beyond(Wanted wanted) {
        return wanted.beyond().isEmpty()
                ? Optional.empty()
                : Optional.of(new OtherWay(SEAMS.method(), wanted.beyond()));
    }

    /** What is still set beyond the few settings, in one line; empty for nothing. */
    public static String stillSet(Wanted wanted, Words words) {
        List<String> said = new ArrayList<>();
        for (Setting setting : SEAMS.settings()) {
            List<String> values = wanted.beyond().getOrDefault(setting.key(), List.of());
            String name = words.of("way." + SEAMS.method() + ".setting." + setting.key());
            if (!values.isEmpty()) {
                said.add(
                        switch (setting.kind()) {
                            case FLAG -> name;
                            case PLACES ->
                                words.of("editor.here.still-set.places", Map.of("name", name, "count", values.size()));
                            default -> words.of("editor.here.still-set.values", Map.of("name", name, "values", values));
                        });
            }
        }
        return said.isEmpty() ? "" : words.of("editor.here.still-set", Map.of("settings", String.join("; ", said)));
    }

    /** The wish without what is set beyond the few settings. */
    public static Wanted withoutBeyond(Wanted wanted) {
        return wanted.withBeyond(Map.of());
    }

    /**
     * The form with what is chosen among the few settings, and what holds beside them.
     *
     * @param taking the seams that take part; empty for all
     */
    static OtherWay form(Wanted wanted, List<EdgeRef> taking) {
        return new OtherWay(SEAMS.method(), wanted.beyond())
                .with(TAPER, List.of(wanted.taper().name().toLowerCase(Locale.ROOT)))
                .with(CARRY, yes(wanted.carry()))
                .with(EVEN, yes(wanted.even()))
                .with(EDGE, taking.stream().map(EdgeRef::toString).toList());
    }

    private static OtherWay all(Wanted wanted, Desk desk) {
        return form(
                wanted,
                wanted.leftOut().isEmpty()
                        ? List.of()
                        : seams(desk).filter(e -> !wanted.leftOut().contains(e)).toList());
    }

    private static Wanted few(Wanted wanted, OtherWay all, Desk desk) {
        Set<EdgeRef> out = new HashSet<>();
        if (!all.texts(EDGE).isEmpty()) {
            seams(desk).filter(e -> !all.texts(EDGE).contains(e.toString())).forEach(out::add);
        }
        boolean straight = all.texts(TAPER).contains(Taper.STRAIGHT.name().toLowerCase(Locale.ROOT));
        Map<String, List<String>> beyond = new LinkedHashMap<>(all.texts());
        beyond.keySet().removeAll(SHOWN);
        beyond.values().removeIf(v -> v.isEmpty() || v.equals(NO));
        return wanted.withLeftOut(out)
                .withTaper(straight ? Taper.STRAIGHT : Taper.SMOOTH)
                .withCarry(all.texts(CARRY).equals(YES))
                .withEven(all.texts(EVEN).equals(YES))
                .withBeyond(beyond);
    }

    private static List<String> yes(boolean flag) {
        return flag ? YES : List.of();
    }

    /** The seams that the level at work meets, of the pieces without what is being tried. */
    private static Stream<EdgeRef> seams(Desk desk) {
        return desk.reading().measures().girths().stream()
                .filter(g -> desk.level().equals(Optional.of(g.level())))
                .flatMap(g -> Hold.of(desk.pattern(), g).stream())
                .map(Hold::edge)
                .distinct();
    }
}
