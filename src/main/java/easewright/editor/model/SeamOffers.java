package easewright.editor.model;

import easewright.alter.SeamMatch;
import easewright.check.EasedIn;
import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.suggest.BandUnderlap;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Ways out for seams that do not fit and that nothing better is offered for, such as those that were drawn so: either side
 * made as long as the other, or what they differ by marked as ease.
 */
final class SeamOffers {
    /** Less than this is no ease, mm. */
    private static final double NO_EASE = 0.05;

    /** A seam that is off by less is as equal as a tape can tell, mm. */
    private static final double SEEN = 0.5;

    private final Desk desk;
    private final Words words;

    private SeamOffers(Desk desk) {
        this.desk = desk;
        this.words = desk.words();
    }

    /**
     * @param before  the pattern before its first change
     * @param matched what is offered already
     */
    static List<FollowUp> of(Desk desk, Pattern before, List<FollowUp> matched) {
        SeamOffers offers = new SeamOffers(desk);
        GarmentMeasures is = desk.reading().measures();
        GarmentMeasures was = before == desk.pattern() ? is : Measures.of(before);
        List<FollowUp> all = new ArrayList<>();
        for (MateWalk walk : is.mates()) {
            if (!Cutting.same(walk.drift()) && matched.stream().noneMatch(f -> f.isAbout(walk))) {
                all.add(offers.offer(walk, was));
            }
        }
        return all;
    }

    /**
     * After changes, what can be done about seams that are off by so little that nobody need do it: who wants to know finds
     * by how much, and the way out.
     */
    static List<FollowUp> still(Desk desk) {
        SeamOffers offers = new SeamOffers(desk);
        GarmentMeasures is = desk.reading().measures();
        return desk.pattern().changes().isEmpty() || desk.trial().isPresent()
                ? List.of()
                : is.mates().stream()
                        .filter(walk -> Cutting.same(walk.drift()) && Math.abs(walk.drift()) >= SEEN)
                        .map(walk -> offers.still(walk, is))
                        .toList();
    }

    private FollowUp still(MateWalk walk, GarmentMeasures is) {
        MateSides sides = MateSides.of(desk.pattern(), walk.mate());
        List<FollowUp.Press> presses = new ArrayList<>();
        for (SeamMatch.Choice choice : SeamMatch.all(desk.pattern(), is, is, walk)) {
            Map<String, Object> values = Map.of(
                    "edge", HereWords.seam(desk, choice.edge()),
                    "by", Math.abs(choice.by()),
                    "by.signed", choice.by());
            presses.add(new FollowUp.Press(
                    new Said("editor.follow.still." + (choice.by() > 0 ? "longer" : "shorter"), values),
                    new Said("editor.follow.length.tried", values),
                    choice.altered().pattern(),
                    choice.altered().findings(),
                    false));
        }
        boolean plain = Math.abs(walk.mate().declaredEase()) < NO_EASE;
        Map<String, Object> values = new HashMap<>(told(walk, sides));
        values.put("apart", Math.abs(walk.drift()));
        values.put("longer", walk.first() > walk.second() ? sides.first() : sides.second());
        String said = words.of(plain ? "editor.follow.still" : "editor.follow.still-ease", values);
        return new FollowUp(walk.mate().name(), walk.size(), said, "", presses, false);
    }

    /**
     * What could be done instead about a seam that fits when a change is made in another way: the piece that was not
     * changed matched to the other.
     */
    static FollowUp orMatched(FollowUp offer, Desk desk, Pattern before) {
        GarmentMeasures is = desk.reading().measures();
        SeamOffers offers = new SeamOffers(desk);
        return is.mates().stream()
                .filter(offer::isAbout)
                .flatMap(walk -> SeamMatch.of(desk.pattern(), Measures.of(before), is, walk).stream()
                        .limit(1)
                        .map(choice -> offers.length(choice, walk)))
                .findFirst()
                .map(offer::or)
                .orElse(offer);
    }

    private FollowUp offer(MateWalk walk, GarmentMeasures was) {
        Pattern pattern = desk.pattern();
        MateSides sides = MateSides.of(pattern, walk.mate());
        EasedIn eased = EasedIn.of(pattern, walk.mate(), walk.first(), walk.second());
        // So large a difference was never drawn by mistake: other edges are meant, or fullness.
        List<SeamMatch.Choice> choices = eased == EasedIn.GATHERED
                ? List.of()
                : SeamMatch.of(pattern, was, desk.reading().measures(), walk);
        boolean onPurpose = fitted(walk, was);
        List<SeamMatch.Choice> back = choices.stream()
                .filter(choice -> onPurpose && isBack(choice, walk, was))
                .toList();
        List<FollowUp.Press> presses = new ArrayList<>();
        List<String> care = new ArrayList<>();
        BandUnderlap.of(pattern, walk).ifPresent(band -> underlap(band, presses, care));
        choices.stream().filter(c -> !back.contains(c)).forEach(c -> presses.add(length(c, walk)));
        choices.stream().map(this::where).distinct().map(words::of).forEach(care::add);
        for (SeamMatch.Choice choice : choices) {
            if (choice.side() != Side.BOTH) {
                String piece =
                        pattern.piece(choice.edge().piece()).map(Piece::name).orElse("");
                care.add(words.of("editor.follow.sided." + choice.side().name(), Map.of("piece", piece)));
            }
            String girths = FollowUp.girths(choice.girths(), words);
            if (!girths.isEmpty()) {
                care.add(words.of(
                        "editor.follow.girths." + (choice.by() > 0 ? "longer" : "shorter"),
                        Map.of("edge", HereWords.seam(desk, choice.edge()), "girths", girths)));
            }
        }
        if (choices.isEmpty() && eased != EasedIn.GATHERED) {
            care.add(words.of("editor.follow.none"));
        }
        ease(walk, eased, onPurpose, presses, care);
        back.forEach(choice -> presses.add(length(choice, walk, "editor.follow.back.")));
        boolean plain = Math.abs(walk.mate().declaredEase()) < NO_EASE;
        String off = plain ? "editor.follow.off" : "editor.follow.off-ease";
        String said = words.of(Cutting.works(walk.drift()) ? "editor.follow.works" : off, told(walk, sides));
        boolean changed = !presses.isEmpty() && onPurpose;
        return new FollowUp(walk.mate().name(), walk.size(), said, String.join(" ", care), presses, changed);
    }

    static Map<String, Object> told(MateWalk walk, MateSides sides) {
        return Map.of(
                "mate", walk.mate().name(),
                "one", sides.first(),
                "other", sides.second(),
                "first", walk.first(),
                "second", walk.second(),
                "ease.signed", walk.mate().declaredEase(),
                "drift.signed", walk.drift());
    }

    /** Whether it takes back at this seam what was changed: it is on the one side that was. */
    private static boolean isBack(SeamMatch.Choice choice, MateWalk walk, GarmentMeasures was) {
        boolean first = choice.by() * walk.drift() < 0;
        return SeamMatch.firstAlone(was, walk).equals(Optional.of(first));
    }

    /** Whether the seam fitted before the first change, so that it is the changes that ask for it. */
    private static boolean fitted(MateWalk walk, GarmentMeasures was) {
        return was.mates().stream()
                .filter(w ->
                        w.mate().name().equals(walk.mate().name()) && w.size().equals(walk.size()))
                .anyMatch(w -> Cutting.same(w.drift()));
    }

    /** Which place of an edge gives way. */
    private String where(SeamMatch.Choice choice) {
        boolean waist = desk.pattern()
                .edge(choice.edge())
                .filter(e -> e.role() == EdgeRole.WAIST)
                .isPresent();
        return choice.atHem()
                ? "editor.follow.at-hem"
                : switch (choice.how()) {
                    case SLASHED -> "editor.follow.slashed";
                    case AT_ENDS -> waist ? "editor.follow.at-ends.waist" : "editor.follow.at-ends";
                    case AT_LOWER_END -> "editor.follow.at-lower-end";
                    case AT_UPPER_END -> "editor.follow.at-upper-end";
                };
    }

    private FollowUp.Press length(SeamMatch.Choice choice, MateWalk walk) {
        return length(choice, walk, "editor.follow.");
    }

    private FollowUp.Press length(SeamMatch.Choice choice, MateWalk walk, String called) {
        boolean longer = choice.by() > 0;
        boolean once = Math.abs(Math.abs(choice.by()) - Math.abs(walk.drift())) < NO_EASE;
        Map<String, Object> values = Map.of(
                "edge", HereWords.seam(desk, choice.edge()),
                "by", Math.abs(choice.by()),
                "by.signed", choice.by(),
                "first", walk.first(),
                "second", walk.second(),
                "ease.signed", walk.mate().declaredEase(),
                "apart", Math.abs(walk.drift()));
        String key = called + (longer ? "longer" : "shorter");
        return new FollowUp.Press(
                new Said(once ? key : key + ".each", values),
                new Said("editor.follow.length.tried", values),
                choice.altered().pattern(),
                choice.altered().findings(),
                false);
    }

    /** Only who sews it knows at which end, and whether it is one. */
    private void underlap(BandUnderlap band, List<FollowUp.Press> presses, List<String> care) {
        String piece =
                desk.pattern().piece(band.band().piece()).map(Piece::name).orElse("");
        Map<String, Object> values = Map.of("piece", piece, "by", band.mm());
        band.ends(desk.pattern())
                .forEach((end, atEnd) -> presses.add(new FollowUp.Press(
                        new Said("editor.follow.underlap." + end.name(), values),
                        new Said("editor.follow.underlap.tried", values),
                        band.parted(desk.pattern(), atEnd),
                        List.of(),
                        true)));
        care.add(words.of("editor.follow.underlap", Map.of("piece", piece)));
    }

    /** One mark is meant for all sizes: where they do not differ alike, it is left to the page Marks. */
    private void ease(
            MateWalk walk, EasedIn eased, boolean onPurpose, List<FollowUp.Press> presses, List<String> care) {
        Mate mate = walk.mate();
        double most = EasedIn.most(desk.pattern(), mate);
        double total = mate.declaredEase() + walk.drift();
        boolean none = Math.abs(total) < NO_EASE;
        // What somebody has just widened on purpose may be meant to be gathered, also where it is less than most
        // gathers.
        boolean fullness = eased == EasedIn.TOO_MUCH && onPurpose;
        boolean gathered = eased == EasedIn.GATHERED || fullness;
        if (eased == EasedIn.TOO_MUCH && !fullness) {
            care.add(words.of("editor.follow.ease.too-much", Map.of("most", most)));
        } else if (eased == EasedIn.CAP_SHORT && !none) {
            care.add(words.of("editor.follow.ease.cap-short"));
        } else if (!isAlike(mate, none ? 0 : total)) {
            care.add(words.of("editor.follow.ease.sizes"));
        } else {
            double mm = none ? 0 : total;
            Mate marked = new Mate(mate.name(), mate.first(), mate.second(), mm);
            Pattern result = desk.pattern()
                    .withMates(desk.pattern().mates().stream()
                            .map(m -> m.equals(mate) ? marked : m)
                            .toList());
            // As the lengths beside it are shown, which differ by all that is to be eased in.
            Map<String, Object> values = Map.of(
                    "mate", mate.name(), "apart", Math.abs(total), "first", walk.first(), "second", walk.second());
            String key = "editor.follow.ease." + (none ? "none" : gathered ? "gathered" : "mark");
            presses.add(new FollowUp.Press(
                    new Said(key, values), new Said(key + ".tried", values), result, List.of(), true));
            if (!none) {
                String told = fullness ? "fullness" : gathered ? "gathered.care" : "care";
                care.add(words.of("editor.follow.ease." + told, Map.of("most", most)));
            }
        }
    }

    /** Whether a seam fits in every size with so much to ease in, mm. */
    private boolean isAlike(Mate mate, double mm) {
        return !PatternPart.severalSizes(desk.pattern())
                || Measures.of(desk.pattern()).mates().stream()
                        .filter(walk -> walk.mate().equals(mate))
                        .allMatch(walk -> Cutting.same(walk.first() - walk.second() - mm));
    }
}
