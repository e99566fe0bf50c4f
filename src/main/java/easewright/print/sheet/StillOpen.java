package easewright.print.sheet;

import easewright.alter.Truing;
import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What does not fit yet on the pieces of a job: who holds the paper sees no notes. Only what cannot be sewn as it is; what
 * many sewers accept stays with the notes.
 */
final class StillOpen {
    /** More would push the map off the page; that there are more is told. */
    private static final int MOST_TOLD = 4;

    private static final int MOST_NAMED = 6;

    private StillOpen() {}

    /** A paragraph each; empty where everything fits. */
    static List<String> of(Job job) {
        Words words = job.words();
        List<String> seams = job.reading().measures().mates().stream()
                .filter(walk -> Math.abs(walk.drift()) > Cutting.WORKS && isPrinted(job, walk))
                .map(walk -> seam(walk, job.reading().pattern(), words))
                .toList();
        List<String> said = new ArrayList<>(seams.subList(0, Math.min(MOST_TOLD, seams.size())));
        if (seams.size() > MOST_TOLD) {
            said.add(words.of("print.open.more", Map.of("count", seams.size() - MOST_TOLD)));
        }
        List<String> untrue = untrue(job);
        if (untrue.size() > MOST_NAMED) {
            said.add(words.of("print.open.lines-many", Map.of("count", untrue.size())));
        } else if (!untrue.isEmpty()) {
            said.add(words.of("print.open.lines", Map.of("pieces", untrue)));
        }
        return said;
    }

    private static boolean isPrinted(Job job, MateWalk walk) {
        Pattern pattern = job.reading().pattern();
        Set<String> printed = job.pieces().stream().map(p -> p.piece().id()).collect(Collectors.toSet());
        return Stream.concat(walk.mate().first().stream(), walk.mate().second().stream())
                .flatMap(edge -> pattern.piece(edge.piece()).stream())
                .map(Piece::id)
                .anyMatch(printed::contains);
    }

    /** Of the side that is too long, whatever is to be eased in. */
    private static String seam(MateWalk walk, Pattern pattern, Words words) {
        MateSides sides = MateSides.of(pattern, walk.mate());
        boolean first = walk.drift() > 0;
        String said = words.of(
                "print.open.seam",
                Map.of(
                        "mate",
                        walk.mate().name(),
                        "one",
                        first ? sides.first() : sides.second(),
                        "other",
                        first ? sides.second() : sides.first(),
                        "off",
                        Math.abs(walk.drift())));
        return walk.size()
                .map(size -> words.of("sizes.one", Map.of("sizes", size, "said", said)))
                .orElse(said);
    }

    /** Names of the printed pieces whose lines do not meet yet as they will be sewn. */
    private static List<String> untrue(Job job) {
        Set<String> names = job.reading().findings().stream()
                .filter(Truing::tells)
                .map(Finding::piece)
                .collect(Collectors.toSet());
        return job.pieces().stream()
                .map(p -> p.piece().name())
                .filter(names::contains)
                .distinct()
                .toList();
    }
}
