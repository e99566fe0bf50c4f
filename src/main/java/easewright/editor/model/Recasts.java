package easewright.editor.model;

import easewright.alter.Alteration;
import easewright.alter.OneChange;
import easewright.alter.OtherSize;
import easewright.alter.Refusal;
import easewright.alter.Replay;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.alter.Ways;
import easewright.alter.Within;
import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Seams that no change of what is sewn there can match, but that fit when a change at the seams is made in another way:
 * on both sides of the seam by the same amount in all, or so that both sides change alike.
 */
final class Recasts {
    /** What is offered leaves no more than this part of what the seam is off. */
    private static final double BETTER = 0.5;

    private final Desk desk;
    private final List<Step> course;

    private Recasts(Desk desk) {
        this.desk = desk;
        this.course = Step.course(desk.pattern());
    }

    /**
     * @param matched what is offered already
     */
    static List<FollowUp> of(Desk desk, List<FollowUp> matched) {
        Recasts recasts = new Recasts(desk);
        List<FollowUp> all = new ArrayList<>();
        for (MateWalk walk : desk.reading().measures().mates()) {
            if (!Cutting.same(walk.drift()) && matched.stream().noneMatch(f -> f.isAbout(walk))) {
                recasts.offer(walk).ifPresent(all::add);
            }
        }
        return all;
    }

    /** The last change that is to be made in another way. */
    private Optional<FollowUp> offer(MateWalk walk) {
        for (int i = course.size() - 1; i >= 0; i--) {
            Optional<FollowUp> offer = course.get(i).on() ? offer(walk, i) : Optional.empty();
            if (offer.isPresent()) {
                return offer;
            }
        }
        return Optional.empty();
    }

    private Optional<FollowUp> offer(MateWalk walk, int at) {
        try {
            Alteration made = Ways.from(course.get(at).note());
            Scope scope = Scope.of(course.get(at).note());
            Alteration change = made instanceof Within within ? within.change() : made;
            if (!(change instanceof SeamChange seams) || !scope.size().equals(walk.size())) {
                return Optional.empty();
            }
            List<EdgeRef> added = partners(seams, walk.mate(), scope);
            if (added.isEmpty() && seams.even()) {
                return Optional.empty();
            }
            List<Step> wanted = new ArrayList<>();
            for (OneChange each : OneChange.course(course)) {
                boolean meant = each.steps().stream().anyMatch(s -> s == course.get(at));
                for (Step step : each.steps()) {
                    wanted.add(meant ? new Step(otherwise(step.note(), scope, added), true) : step);
                }
            }
            Pattern result = new Replay(desk.pattern(), desk.history().states()).to(wanted);
            return Measures.of(result)
                    .mate(walk)
                    .filter(now -> Math.abs(now.drift()) <= BETTER * Math.abs(walk.drift()))
                    .map(now -> followUp(walk, now, seams.level(), added, result));
        } catch (StepRefused | Refusal cannotBeMadeSo) {
            return Optional.empty();
        }
    }

    /**
     * A change at the seams in another way; what was made alike in several sizes is made so in all of them.
     *
     * @param where the size in which the edges are named
     * @param added the edges that it takes besides; none where both sides of the seam are to change alike
     */
    private ChangeNote otherwise(ChangeNote note, Scope where, List<EdgeRef> added) throws Refusal {
        Scope scope = Scope.of(note);
        Alteration made = Ways.from(note);
        SeamChange seams = (SeamChange) (made instanceof Within within ? within.change() : made);
        OtherSize there = new OtherSize(
                where.part(desk.pattern()).alone(), scope.part(desk.pattern()).alone());
        List<EdgeRef> edges = new ArrayList<>();
        for (EdgeRef edge : added) {
            edges.add(there.edge(edge));
        }
        return Within.of(scope, edges.isEmpty() ? evened(seams) : taking(seams, edges))
                .note();
    }

    private FollowUp followUp(MateWalk walk, MateWalk now, String level, List<EdgeRef> added, Pattern result) {
        Words words = desk.words();
        String key = added.isEmpty() ? "editor.follow.even" : "editor.follow.both-sides";
        List<String> seams =
                added.stream().map(e -> HereWords.seam(desk, e)).distinct().toList();
        Map<String, Object> values = new HashMap<>(SeamOffers.told(walk, MateSides.of(desk.pattern(), walk.mate())));
        // Each by its own lengths, so that who takes those from each other finds it.
        values.put("would", words.of("editor.follow.would", SeamOffers.told(now, MateSides.of(result, now.mate()))));
        values.put("level", level);
        values.put("seams", seams);
        String said = words.of(key, values);
        FollowUp.Press instead = new FollowUp.Press(
                new Said("editor.follow.instead", Map.of()),
                new Said("editor.follow.instead.tried", Map.of("level", level)),
                result,
                List.of(),
                false);
        return new FollowUp(walk.mate().name(), walk.size(), said, "", List.of(instead), true);
    }

    /**
     * The edges of a seam that a change left out while it took those of the other side.
     *
     * @param scope where the change was made; its edges are called as they are there
     */
    private List<EdgeRef> partners(SeamChange change, Mate mate, Scope scope) {
        Pattern garment = scope.size()
                .map(size -> PatternPart.ofSize(desk.pattern(), size).alone())
                .orElse(desk.pattern());
        PatternPart part = PatternPart.ofSide(garment, scope.side());
        List<EdgeRef> one = inPart(mate.first(), garment, part);
        List<EdgeRef> two = inPart(mate.second(), garment, part);
        boolean first = takes(change, one, part.alone());
        boolean second = takes(change, two, part.alone());
        return first == second ? List.of() : first ? two : one;
    }

    private static boolean takes(SeamChange change, List<EdgeRef> side, Pattern part) {
        return change.shares().stream().anyMatch(s -> Partners.has(part, side, s.edge()));
    }

    private static List<EdgeRef> inPart(List<EdgeRef> side, Pattern garment, PatternPart part) {
        return side.stream()
                .flatMap(r -> garment.piece(r.piece()).flatMap(p -> part.idInPart(p.id())).stream()
                        .map(id -> EdgeRef.of(id, r.edge())))
                .toList();
    }

    private static SeamChange taking(SeamChange change, List<EdgeRef> added) {
        List<Share> shares = new ArrayList<>(change.shares());
        double weight = shares.get(0).weight();
        added.forEach(e -> shares.add(new Share(e, weight)));
        return change.withShares(shares.toArray(Share[]::new));
    }

    private static SeamChange evened(SeamChange c) {
        return new SeamChange(
                c.level(),
                c.amount(),
                c.shares(),
                c.taper(),
                c.carryToHem(),
                c.keep(),
                c.fixed(),
                c.oneSide(),
                c.acceptProtected(),
                true);
    }
}
