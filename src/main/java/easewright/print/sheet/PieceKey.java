package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.print.sheet.Nest.Laid;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * What the lines and arrows mean on just the pieces of a job. Whoever takes the only line of a piece without an allowance
 * for its cutting line cuts the garment too small, so what is said never speaks of a line that these pieces do not have.
 */
final class PieceKey {
    /** Beyond this many names, what the pieces say themselves is referred to. */
    private static final int MOST_NAMED = 6;

    private PieceKey() {}

    /** Which line is for the scissors, which for the needle. */
    static String lines(Job job) {
        return said(job, "print.plan.lines", paper -> paper.cut().stitched());
    }

    /** How the pieces lie to the selvedge. */
    static String grain(Job job) {
        return said(job, "print.plan.grain", paper -> paper.piece().grain().isPresent());
    }

    /** A paragraph each: which way up pieces for either side are cut, as far as there are any, and how they lie to the selvedge. */
    static List<String> sides(Job job) {
        Words words = job.words();
        List<String> said = new ArrayList<>();
        if (job.pieces().stream().anyMatch(p -> p.pair().isEmpty() && p.piece().times() > 1)) {
            said.add(words.of("print.plan.pairs"));
        }
        said.addAll(leftAndRight(job));
        said.add(grain(job));
        return said;
    }

    /** How pieces are cut that were one for both sides; empty where there are none. */
    static List<String> leftAndRight(Job job) {
        Words words = job.words();
        return job.pieces().stream()
                .flatMap(p -> p.pair().stream())
                .distinct()
                .map(pair -> words.of(
                        pair.halves() ? "print.plan.halves" : "print.plan.sides",
                        Map.of("left", pair.left().name(), "right", pair.right().name())))
                .toList();
    }

    /** Which way up the pieces lie; to be said where some are turned, too. */
    static String way(Job job, List<Laid> laid) {
        Words words = job.words();
        List<String> turned = laid.stream()
                .filter(l -> Cutout.isUpsideDown(l.place()))
                .map(l -> job.pieces().get(l.shape()).piece().name())
                .distinct()
                .toList();
        if (turned.isEmpty()) {
            return words.of("print.plan.way" + byGrain(job));
        }
        String named = turned.size() > MOST_NAMED
                ? words.of("print.plan.way.turned-many")
                : words.of("print.plan.way.turned", Map.of("pieces", turned));
        return named + " " + words.of("print.plan.way.others" + byGrain(job));
    }

    /** The same before it is known which pieces are to be turned. */
    static String way(Job job, boolean turning) {
        Words words = job.words();
        return turning
                ? words.of("print.plan.way.turned-many") + " " + words.of("print.plan.way.others" + byGrain(job))
                : words.of("print.plan.way" + byGrain(job));
    }

    /** What the line ends in where some pieces are turned for their grain: then not all lie as they were drawn. */
    private static String byGrain(Job job) {
        boolean any = job.pieces().stream().anyMatch(paper -> !paper.upright().equals(Affine.IDENTITY));
        return any ? ".grain" : "";
    }

    private static String said(Job job, String key, Predicate<PaperPiece> has) {
        Words words = job.words();
        List<PaperPiece> bare = job.pieces().stream().filter(has.negate()).toList();
        if (bare.isEmpty()) {
            return words.of(key);
        }
        if (bare.size() == job.pieces().size()) {
            return words.of(key + ".bare");
        }
        List<String> names =
                bare.stream().map(paper -> paper.piece().name()).distinct().toList();
        return names.size() > MOST_NAMED
                ? words.of(key + ".mixed-many")
                : words.of(key + ".mixed", Map.of("pieces", names));
    }
}
