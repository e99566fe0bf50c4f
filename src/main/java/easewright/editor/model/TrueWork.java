package easewright.editor.model;

import easewright.alter.Altered;
import easewright.alter.Moved;
import easewright.alter.Proposal;
import easewright.alter.Refusal;
import easewright.alter.TrueUp;
import easewright.alter.Truing;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What could be made to fit or be made true in a pattern. Nothing of it is done unasked.
 *
 * @param pattern the pattern it is about
 * @param offers  what can be done about seams that do not fit
 * @param still   the same of those that after changes are off by so little that for cutting it is the same
 * @param places  where lines are not true as they will be sewn; of a nest, in the sizes in which something is done
 * @param others  other sizes that have such places
 */
public record TrueWork(
        Pattern pattern, List<FollowUp> offers, List<FollowUp> still, List<Place> places, List<String> others) {
    /** A line that moves, or an edge that becomes longer, by less is not worth a word, mm. */
    private static final double NOTICED = 0.05;

    public TrueWork {
        offers = List.copyOf(offers);
        still = List.copyOf(still);
        places = List.copyOf(places);
        others = List.copyOf(others);
    }

    /**
     * One place that is not true.
     *
     * @param words   what is untrue
     * @param brings  what putting it right moves and changes, or why it cannot be put right here
     * @param redraws what it redraws although it is protected, to stand beside the press; empty for nothing
     * @param result  the pattern with it put right; empty where that cannot be
     */
    public record Place(
            String words, String brings, String redraws, Optional<Pattern> result, Optional<Pointed> pointed) {}

    /** Nothing to be done. */
    public static TrueWork none(Pattern pattern) {
        return new TrueWork(pattern, List.of(), List.of(), List.of(), List.of());
    }

    /** All there is. Takes a moment: for a thread of its own. */
    public static TrueWork of(Desk desk) {
        List<Place> places = new ArrayList<>();
        Set<String> others = new LinkedHashSet<>();
        List<String> sizes = desk.sizesTaking();
        for (Proposal proposal : Truing.proposals(desk.pattern(), desk.reading().measures())) {
            if (isIn(proposal, sizes)) {
                places.add(place(desk, proposal));
            } else {
                proposal.size().ifPresent(others::add);
            }
        }
        List<FollowUp> offers = FollowUp.isAsked(desk) ? FollowUp.of(desk) : List.of();
        return new TrueWork(desk.pattern(), offers, SeamOffers.still(desk), places, List.copyOf(others));
    }

    /** Whether it is untrue in one of the sizes, or in a pattern that comes in one. */
    private static boolean isIn(Proposal proposal, List<String> sizes) {
        return proposal.size().map(sizes::contains).orElse(true);
    }

    /** How many places can be put right. */
    public long possible() {
        return places.stream().filter(p -> p.result().isPresent()).count();
    }

    /** How many of them redraw what is protected. */
    public long redrawing() {
        return places.stream()
                .filter(p -> p.result().isPresent() && !p.redraws().isEmpty())
                .count();
    }

    /**
     * The pattern with every place put right that can be, each a change of its own, also those that become untrue on the way.
     *
     * @param sizes        in which to do so; every other stays the same objects. None where the pattern comes in one
     * @param protectedToo whether those that redraw what is protected are meant as well
     */
    public static Pattern all(Pattern pattern, List<String> sizes, boolean protectedToo) {
        Pattern now = pattern;
        Set<List<Object>> tried = new HashSet<>();
        Optional<Proposal> next = next(now, sizes, tried);
        while (next.isPresent()) {
            // What is refused stays in the list, with the reason.
            now = TrueUp.one(now, next.get(), protectedToo)
                    .done()
                    .map(Altered::pattern)
                    .orElse(now);
            next = next(now, sizes, tried);
        }
        return now;
    }

    /** The first that was not tried; each is, once. */
    private static Optional<Proposal> next(Pattern now, List<String> sizes, Set<List<Object>> tried) {
        return Truing.proposals(now).stream()
                .filter(proposal -> isIn(proposal, sizes) && tried.add(place(proposal)))
                .findFirst();
    }

    private static List<Object> place(Proposal proposal) {
        return List.of(
                proposal.size(), proposal.truing().matter(), proposal.truing().target());
    }

    private static Place place(Desk desk, Proposal proposal) {
        Words words = desk.words();
        Pattern before = desk.pattern();
        String said = words.of(proposal.finding());
        String what = Truing.isLittle(proposal.finding()) ? said + " " + words.of("true.little") : said;
        try {
            Altered altered = proposal.apply(before);
            TrueDrawn drawn = TrueDrawn.of(altered, before);
            return new Place(
                    what,
                    brings(altered, before, drawn, words),
                    redraws(proposal, words),
                    Optional.of(altered.pattern()).filter(p -> !p.equals(before)),
                    pointed(before, proposal.finding(), Optional.of(drawn)));
        } catch (Refusal refusal) {
            return new Place(
                    what,
                    words.problem(refusal.code(), refusal.values()),
                    "",
                    Optional.empty(),
                    pointed(before, proposal.finding(), Optional.empty()));
        }
    }

    private static Optional<Pointed> pointed(Pattern pattern, Finding finding, Optional<TrueDrawn> drawn) {
        List<Segment> lines = drawn.map(TrueDrawn::lines).orElse(List.of());
        Optional<Point> at = finding.values().get("x") instanceof Double x
                        && finding.values().get("y") instanceof Double y
                ? Optional.of(new Point(x, y))
                : lines.stream().findFirst().map(Segment::start);
        return pattern.piece(finding.piece())
                .map(p -> new Pointed(
                        p.id(),
                        at,
                        drawn.map(d -> d.onOthers(p.id())).orElse(List.of()),
                        drawn.map(TrueDrawn::pieces).orElse(Set.of()),
                        lines,
                        drawn.isPresent()));
    }

    private static String brings(Altered altered, Pattern before, TrueDrawn drawn, Words words) {
        List<String> said = new ArrayList<>();
        if (altered.findings().stream().anyMatch(f -> f.code().equals("trued-in-one-curve"))) {
            said.add(words.of("editor.true.in-one-curve"));
        }
        double most =
                altered.moved().stream().mapToDouble(TrueWork::farthest).max().orElse(0);
        double notch = drawn.ways().stream().mapToDouble(Line::length).max().orElse(0);
        if (most > NOTICED) {
            said.add(words.of("editor.true.moves", Map.of("most", most)));
        } else if (notch > NOTICED) {
            said.add(words.of("editor.true.moves-notch", Map.of("most", notch)));
        } else if (altered.moved().isEmpty()) {
            said.add(words.of("editor.true.moves-beside"));
        }
        if (!drawn.edges().isEmpty()) {
            said.add(words.of("editor.true.redrawn", Map.of("edges", drawn.named(words))));
        }
        said.addAll(darts(altered, before, words));
        List<String> lengths = new ArrayList<>();
        for (Finding finding : altered.findings()) {
            if (finding.values().get("by.signed") instanceof Double by
                    && Math.abs(by) > NOTICED
                    && finding.values().get("edge") instanceof String edge) {
                String line = by > 0 ? "editor.true.length.longer" : "editor.true.length.shorter";
                lengths.add(words.of(line, Map.of("piece", finding.piece(), "edge", edge, "by", Math.abs(by))));
            }
        }
        said.add(
                lengths.isEmpty()
                        ? words.of("editor.true.lengths-kept")
                        : words.of("editor.true.lengths", Map.of("lengths", String.join("; ", lengths))));
        return String.join(" ", said);
    }

    /** What becomes of the darts: their legs are no edges. */
    private static List<String> darts(Altered altered, Pattern before, Words words) {
        List<String> said = new ArrayList<>();
        for (Piece now : altered.pattern().pieces()) {
            List<Dart> was = before.piece(now.id()).map(Piece::darts).orElse(List.of());
            for (int i = 0; i < Math.min(was.size(), now.darts().size()); i++) {
                Dart is = now.darts().get(i);
                double wider = is.intake() - was.get(i).intake();
                double leg = is.mouth1().distance(is.point())
                        - was.get(i).mouth1().distance(was.get(i).point());
                double other = is.mouth2().distance(is.point())
                        - was.get(i).mouth2().distance(was.get(i).point());
                if (Math.max(Math.abs(wider), Math.max(Math.abs(leg), Math.abs(other))) > NOTICED) {
                    said.add(words.of(
                            "editor.true.dart",
                            Map.of(
                                    "dart", is.name(),
                                    "wider.signed", wider,
                                    "one.signed", leg,
                                    "other.signed", other)));
                }
            }
        }
        return said;
    }

    private static String redraws(Proposal proposal, Words words) {
        List<String> edges = proposal.protectedEdges().stream()
                .map(e -> e.replace("/", " "))
                .distinct()
                .toList();
        return edges.isEmpty() ? "" : words.of("editor.true.protected", Map.of("edges", edges));
    }

    /** The farthest that a place of the new run lies from the old one, mm. */
    private static double farthest(Moved moved) {
        double most = 0;
        for (Segment segment : moved.after().segments()) {
            for (double t = 0; t <= 1; t += 0.125) {
                most = Math.max(most, distance(moved.before(), segment.at(t)));
            }
        }
        return most;
    }

    private static double distance(Curve curve, Point p) {
        return curve.segments().stream()
                .mapToDouble(s -> s.at(s.nearest(p)).distance(p))
                .min()
                .orElse(0);
    }
}
