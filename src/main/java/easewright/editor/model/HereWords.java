package easewright.editor.model;

import easewright.ease.EaseLine;
import easewright.measure.Girth;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.print.AllRound;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What "this much, here" says about a change that is being tried. */
public final class HereWords {
    /** Half of what a tape shows, mm. */
    private static final double NOTICED = 0.5;

    private HereWords() {}

    /**
     * The heading, which names the size at work where there are several: its choice may lie out of sight. Where more than
     * one takes part the ticks below it name them.
     */
    public static String title(Desk desk) {
        int sizes = desk.sizesTaking().size();
        return sizes > 1
                ? desk.words().of("editor.here.title.many", Map.of("count", sizes))
                : inSizes(desk, "editor.here.title");
    }

    /** What the amount is, as it is heard. */
    public static String amount(Desk desk) {
        return inSizes(desk, "editor.here.amount");
    }

    private static String inSizes(Desk desk, String key) {
        List<String> sizes = desk.sizesTaking();
        return switch (sizes.size()) {
            case 0 -> desk.words().of(key);
            case 1 -> desk.words().of(key + ".size", Map.of("size", sizes.get(0)));
            default -> desk.words().of(key + ".sizes", Map.of("sizes", sizes));
        };
    }

    /**
     * What the girth and ease become and how far each seam moves, and on which side alone; an invitation while nothing is
     * tried.
     */
    public static String outcome(Desk desk) {
        String came = came(desk);
        Optional<Side> only = desk.shownTrial()
                .filter(t -> t.offer().isEmpty())
                .map(t -> t.wanted().side())
                .filter(side -> side != Side.BOTH);
        return only.map(side -> desk.words().of("editor.here.only." + side) + "\n" + came)
                .orElse(came);
    }

    /** The same on one line: of a girth aimed at that is alike in all sizes, only what it becomes, and on which side. */
    public static Optional<String> brief(Desk desk) {
        Optional<Wanted> aimed = desk.wanted().filter(w -> w.aimsAtGirth() && w.amount() != 0);
        Optional<Trial.Shown> tried = desk.shownTrial().filter(t -> t.offer().isEmpty());
        Optional<EaseLine> before = aimed.flatMap(w -> line(desk.reading(), w));
        Optional<EaseLine> after = aimed.flatMap(w -> tried.flatMap(t -> line(t.reading(), w)));
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        BySize each = desk.sizesTaking().size() > 1 ? inEach(desk, aimed.get(), desk.words()) : new BySize();
        if (!each.isEmpty() && !each.isAlike()) {
            return Optional.empty();
        }
        String hem = aimed.get().goesToHem() ? ".hem" : "";
        String came =
                desk.words().of(kind(before.get(), after.get()) + ".brief" + hem, fromTo(before.get(), after.get()));
        Side side = aimed.get().side();
        return Optional.of(
                side == Side.BOTH ? came : desk.words().of("editor.here.brief." + side, Map.of("came", came)));
    }

    private static String came(Desk desk) {
        Words words = desk.words();
        Optional<Wanted> wanted = desk.wanted();
        Optional<FollowUp.Press> offer = desk.shownTrial().flatMap(Trial.Shown::offer);
        if (offer.isPresent()) {
            return offer.get().tried().in(words) + " " + girths(desk.reading(), desk.shownReading(), words);
        }
        if (wanted.isEmpty() || wanted.get().amount() == 0) {
            return words.of(
                    wanted.map(Wanted::atSeams).orElse(true) ? "editor.here.invite" : "editor.here.invite-way",
                    Map.of(
                            "round",
                            AllRound.of(
                                    desk.pattern(), wanted.map(Wanted::level).orElse(""), words),
                            "unit",
                            words.of("editor.here.unit." + desk.unit().name().toLowerCase(Locale.ROOT))));
        }
        String next =
                wanted.get().other().map(o -> WayForm.nextToChoose(o, words)).orElse("");
        if (!next.isEmpty()) {
            return next;
        }
        if (!wanted.get().aimsAtGirth()) {
            return desk.shownTrial()
                    .map(t -> girths(desk.reading(), t.reading(), words))
                    .orElse("");
        }
        Optional<EaseLine> before = line(desk.reading(), wanted.get());
        Optional<EaseLine> after = desk.shownTrial().flatMap(t -> line(t.reading(), wanted.get()));
        if (before.isEmpty() || after.isEmpty()) {
            return "";
        }
        BySize each = desk.sizesTaking().size() > 1 ? inEach(desk, wanted.get(), words) : new BySize();
        boolean alike = each.isEmpty() || each.isAlike();
        String what = alike
                ? words.of(kind(before.get(), after.get()), fromTo(before.get(), after.get()))
                : String.join(
                        " ",
                        each.lines(words, "editor.here.in-size", wanted.get().level()));
        String down = wanted.get().goesToHem() ? what + " " + words.of("editor.here.to-hem") : what;
        String moved = wanted.get().atSeams() ? down + " " + each(desk, wanted.get()) : down;
        Girth girth = after.get().girth();
        String sided = girth.sided() && girth.side() == Side.BOTH
                ? moved + " "
                        + words.of(
                                "editor.here.sides", Map.of("left", girth.on(Side.LEFT), "right", girth.on(Side.RIGHT)))
                : moved;
        String told = each.isAlike() ? sided + " " + words.of("editor.here.alike") : sided;
        List<String> also = changed(
                desk.reading(),
                desk.shownReading(),
                g -> !g.level().name().equals(wanted.get().level()),
                words);
        return also.isEmpty() ? told : told + " " + words.of("editor.here.girths-also", Map.of("girths", also));
    }

    /** Told of the ease, or of the girth where no body is known. */
    private static String kind(EaseLine before, EaseLine after) {
        return before.ease().isPresent() && after.ease().isPresent() ? "editor.here.ease" : "editor.here.girth";
    }

    private static Map<String, Object> fromTo(EaseLine before, EaseLine after) {
        boolean ease = before.ease().isPresent() && after.ease().isPresent();
        return Map.of(
                "level",
                before.level().name(),
                "from",
                ease ? before.ease().getAsDouble() : before.finished(),
                "to",
                ease ? after.ease().getAsDouble() : after.finished());
    }

    /** What it becomes in each of several sizes. */
    private static BySize inEach(Desk desk, Wanted wanted, Words words) {
        BySize each = new BySize();
        SeveralRead several = desk.shownTrial().orElseThrow().several();
        List<String> sizes = several.sizes();
        Reading before = several.before();
        Reading after = several.after();
        for (String size : sizes) {
            Optional<EaseLine> was = line(before, wanted, size);
            Optional<EaseLine> is = line(after, wanted, size);
            if (was.isPresent() && is.isPresent()) {
                each.add(size, words.of(kind(was.get(), is.get()) + ".in-size", fromTo(was.get(), is.get())));
            }
        }
        return each;
    }

    /** How far each seam moves: alike, unless sewn seams are to change by the same length. */
    private static String each(Desk desk, Wanted wanted) {
        List<Hold> taking = desk.takingHolds();
        int sewn = Math.max(1, Hold.sewn(taking));
        List<Double> moves = wanted.even() ? moves(desk, wanted, taking) : List.of();
        double least = moves.stream().mapToDouble(m -> m).min().orElse(0);
        double most = moves.stream().mapToDouble(m -> m).max().orElse(0);
        if (most - least >= NOTICED) {
            return desk.words()
                    .of("editor.here.each.even", Map.of("seams", sewn, "least.signed", least, "most.signed", most));
        }
        return desk.words()
                .of(
                        sewn == 1 ? "editor.here.each.one" : "editor.here.each",
                        Map.of("seams", sewn, "amount.signed", wanted.amount() / sewn));
    }

    /** How far each seam that takes part moves at the level, mm. */
    private static List<Double> moves(Desk desk, Wanted wanted, List<Hold> taking) {
        List<Hold> before = holds(desk.pattern(), desk.reading(), wanted);
        List<Double> moves = new ArrayList<>();
        for (Hold is : holds(desk.shown(), desk.shownReading(), wanted)) {
            if (taking.stream().anyMatch(h -> h.edge().equals(is.edge()))) {
                before.stream()
                        .filter(was ->
                                was.edge().equals(is.edge()) && was.outward().dot(is.outward()) > 0)
                        .findFirst()
                        .ifPresent(was -> moves.add(is.at().minus(was.at()).dot(was.outward())));
            }
        }
        return moves;
    }

    private static List<Hold> holds(Pattern pattern, Reading reading, Wanted wanted) {
        return lines(reading, wanted)
                .flatMap(l -> Hold.of(pattern, l.girth()).stream())
                .toList();
    }

    /** Which girths changed by a change that does not aim at one. */
    static String girths(Reading before, Reading after, Words words) {
        List<String> changed = changed(before, after, g -> true, words);
        return changed.isEmpty()
                ? words.of("editor.here.no-girth")
                : words.of("editor.here.girths", Map.of("girths", String.join(", ", changed)));
    }

    /** Those of the girths that changed, each by how much. */
    private static List<String> changed(Reading before, Reading after, Predicate<Girth> which, Words words) {
        List<String> changed = new ArrayList<>();
        for (Girth now : after.measures().girths()) {
            double by = now.finished()
                    - before.measures().girth(now).map(Girth::finished).orElse(now.finished());
            if (which.test(now) && Math.abs(by) >= NOTICED) {
                changed.add(words.of("editor.here.girth-by", Map.of("level", now.name(), "by.signed", by)));
            }
        }
        return changed;
    }

    /** A seam as a chip names it. */
    public static String seam(Desk desk, EdgeRef edge) {
        return seam(desk, edge, "editor.here.seam");
    }

    /** A seam by its piece and its edge. */
    static String seam(Desk desk, EdgeRef edge, String key) {
        // A change on one side makes pieces that are known only while it is tried.
        String piece = desk.shownTrial()
                .flatMap(t -> t.altered().pattern().piece(edge.piece()))
                .or(() -> desk.pattern().piece(edge.piece()))
                .map(desk.sizesTaking().size() > 1 ? Piece::plainName : Piece::name)
                .orElse(edge.piece());
        return desk.words().of(key, Map.of("piece", piece, "edge", edge.edge()));
    }

    static Optional<EaseLine> line(Reading reading, Wanted wanted) {
        return lines(reading, wanted).findFirst();
    }

    private static Optional<EaseLine> line(Reading reading, Wanted wanted, String size) {
        return lines(reading, wanted)
                .filter(l -> l.girth().size().equals(Optional.of(size)))
                .findFirst();
    }

    private static Stream<EaseLine> lines(Reading reading, Wanted wanted) {
        return reading.sheet().lines().stream()
                .filter(l -> l.level().name().equals(wanted.level())
                        && l.girth().side().belongsTo(wanted.side()));
    }
}
