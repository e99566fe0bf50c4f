package easewright.editor.model;

import easewright.alter.Taper;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.pattern.EdgeRef;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * At the seams there are a few settings beside the amount, or a form with all of them. Who goes from one to the other
 * finds there what was chosen before, as far as both have it.
 */
public final class SeamsInFull {
    private static final Way SEAMS = Ways.all().get(0);

    private static final String TAPER = "taper";
    private static final String CARRY = "carry-to-hem";
    private static final String EVEN = "even";
    private static final String EDGE = "edge";
    private static final String KEEP = "keep";
    private static final List<String> YES = List.of("yes");

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
        if (is(method) && wanted.atSeams()) {
            return wanted.withOther(Optional.of(all(wanted, desk)));
        }
        Wanted other = wanted.withOther(Ways.of(method).map(OtherWay::of));
        return other.atSeams()
                ? wanted.other()
                        .filter(o -> is(o.method()))
                        .map(o -> few(other, o, desk))
                        .orElse(other)
                : other;
    }

    /** The form as it is at another level: the seams are others there, and it need not go down to the hem. */
    static OtherWay at(Wanted fresh, OtherWay way) {
        return is(way.method())
                ? way.with(EDGE, List.of())
                        .with(CARRY, yes(fresh.carry()))
                        .with(
                                KEEP,
                                way.texts(KEEP).stream()
                                        .filter(name -> !name.equals(fresh.level()))
                                        .toList())
                : way;
    }

    private static OtherWay all(Wanted wanted, Desk desk) {
        List<String> taking = wanted.leftOut().isEmpty()
                ? List.of()
                : seams(desk)
                        .filter(e -> !wanted.leftOut().contains(e))
                        .map(EdgeRef::toString)
                        .toList();
        return OtherWay.of(SEAMS)
                .with(TAPER, List.of(wanted.taper().name().toLowerCase(Locale.ROOT)))
                .with(CARRY, yes(wanted.carry()))
                .with(EVEN, yes(wanted.even()))
                .with(EDGE, taking);
    }

    private static Wanted few(Wanted wanted, OtherWay all, Desk desk) {
        Set<EdgeRef> out = new HashSet<>();
        if (!all.texts(EDGE).isEmpty()) {
            seams(desk).filter(e -> !all.texts(EDGE).contains(e.toString())).forEach(out::add);
        }
        boolean straight = all.texts(TAPER).contains(Taper.STRAIGHT.name().toLowerCase(Locale.ROOT));
        return wanted.withLeftOut(out)
                .withTaper(straight ? Taper.STRAIGHT : Taper.SMOOTH)
                .withCarry(all.texts(CARRY).equals(YES))
                .withEven(all.texts(EVEN).equals(YES));
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
