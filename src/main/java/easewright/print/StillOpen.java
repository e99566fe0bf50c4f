package easewright.print;

import easewright.alter.Truing;
import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What does not fit yet on the pieces of a print or a report: who holds the paper sees no notes. Only what cannot be sewn
 * as it is; what many sewers accept stays with the notes.
 */
public final class StillOpen {
    /** More would push the map off the page; that there are more is told. */
    private static final int MOST_TOLD = 4;

    private static final int MOST_NAMED = 6;

    /** Less than this is no ease, mm. */
    private static final double NO_EASE = 0.05;

    private StillOpen() {}

    /**
     * A paragraph each; empty where everything fits.
     *
     * @param pieces those on the paper
     */
    public static List<String> of(Reading reading, List<Piece> pieces, Words words) {
        List<String> seams = seams(reading, pieces, words);
        List<String> said = new ArrayList<>(seams.subList(0, Math.min(MOST_TOLD, seams.size())));
        if (seams.size() > MOST_TOLD) {
            said.add(words.of("print.open.more", Map.of("count", seams.size() - MOST_TOLD)));
        }
        List<String> untrue = untrue(reading, pieces);
        if (untrue.size() > MOST_NAMED) {
            said.add(words.of("print.open.lines-many", Map.of("count", untrue.size())));
        } else if (!untrue.isEmpty()) {
            said.add(words.of("print.open.lines", Map.of("pieces", untrue)));
        }
        return said;
    }

    /** Each once, with the sizes in which it is off by as much. */
    private static List<String> seams(Reading reading, List<Piece> pieces, Words words) {
        Set<String> printed = pieces.stream().map(Piece::id).collect(Collectors.toSet());
        Map<String, List<String>> sizes = new LinkedHashMap<>();
        for (MateWalk walk : reading.measures().mates()) {
            if (!Cutting.works(walk.drift()) && isPrinted(printed, reading.pattern(), walk)) {
                sizes.computeIfAbsent(seam(walk, reading.pattern(), words), said -> new ArrayList<>())
                        .addAll(walk.size().stream().toList());
            }
        }
        return sizes.entrySet().stream()
                .map(e -> e.getValue().isEmpty() ? e.getKey() : inSizes(e.getKey(), e.getValue(), words))
                .toList();
    }

    private static String inSizes(String said, List<String> sizes, Words words) {
        return words.of(sizes.size() == 1 ? "sizes.one" : "sizes.some", Map.of("sizes", sizes, "said", said));
    }

    private static boolean isPrinted(Set<String> printed, Pattern all, MateWalk walk) {
        Pattern garment =
                walk.size().map(s -> PatternPart.ofSize(all, s).alone()).orElse(all);
        return Stream.concat(walk.mate().first().stream(), walk.mate().second().stream())
                .flatMap(edge -> garment.piece(edge.piece()).stream())
                .map(Piece::id)
                .anyMatch(printed::contains);
    }

    /** Where nothing is to be eased in, of the side that is too long. */
    private static String seam(MateWalk walk, Pattern pattern, Words words) {
        MateSides sides = MateSides.of(pattern, walk.mate());
        double ease = walk.mate().declaredEase();
        boolean plain = Math.abs(ease) < NO_EASE;
        boolean first = !plain || walk.drift() > 0;
        // Taken from the lengths as they are shown elsewhere, so that the same figure is found there.
        Map<String, Object> values = new HashMap<>();
        values.put("first", walk.first());
        values.put("second", walk.second());
        values.put("ease.signed", ease);
        values.put("drift.signed", walk.drift());
        values.put("mate", walk.mate().name());
        values.put("one", first ? sides.first() : sides.second());
        values.put("other", first ? sides.second() : sides.first());
        values.put("apart", Math.abs(walk.drift()));
        return words.of(plain ? "print.open.seam" : "print.open.seam-ease", values);
    }

    /** Names of the printed pieces whose lines do not meet yet as they will be sewn. */
    private static List<String> untrue(Reading reading, List<Piece> pieces) {
        Set<String> names = reading.findings().stream()
                .filter(Truing::tells)
                .map(Finding::piece)
                .collect(Collectors.toSet());
        return pieces.stream()
                .map(Piece::name)
                .filter(names::contains)
                .distinct()
                .toList();
    }
}
