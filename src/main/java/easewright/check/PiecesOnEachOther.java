package easewright.check;

import easewright.geom.Box;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Pieces of no size that lie on each other and are about as large: sizes of a nest, most likely, of which all would be
 * added up in one girth.
 */
final class PiecesOnEachOther implements Rule {
    /** What they have in common is at least this part of what they cover together. */
    private static final double SAME_PLACE = 0.75;

    /** A number that a drawing program or the reader gave to an element. */
    private static final Pattern NUMBERED = Pattern.compile("[A-Za-z]*[-_ #]*\\d[-_ #\\d]*");

    private static final Pattern LAST_NUMBER = Pattern.compile("[\\s_-]*\\d+$");

    /** More pieces than this are not compared with each other. */
    private static final int MOST = 300;

    /** A piece without a size; its name is only looked at where it lies on another. */
    private static final class Laid {
        private final Piece piece;
        private final Box box;
        private final double area;
        private String stem;
        private boolean numbered;

        private Laid(Piece piece) {
            this.piece = piece;
            box = piece.outline().box();
            area = Math.abs(piece.outline().signedArea());
        }

        private Laid named() {
            if (stem == null) {
                stem = LAST_NUMBER.matcher(piece.name()).replaceFirst("");
                numbered = NUMBERED.matcher(piece.name()).matches();
            }
            return this;
        }

        boolean liesOn(Laid other) {
            return inSamePlace(other) && named().mayBe(other.named());
        }

        private boolean inSamePlace(Laid other) {
            Optional<Box> shared = box.shared(other.box);
            if (shared.isEmpty() || Math.min(area, other.area) < SAME_PLACE * Math.max(area, other.area)) {
                return false;
            }
            Box both = box.union(other.box);
            return shared.get().width() * shared.get().height() >= SAME_PLACE * both.width() * both.height();
        }

        /** A front and a back may be drafted on each other; what has only a number, or the same name, may be a size. */
        private boolean mayBe(Laid other) {
            return numbered || other.numbered || stem.equals(other.stem);
        }
    }

    /** Once a piece that has to be looked at lies on another, all that do so are told, as before it was changed. */
    @Override
    public List<Finding> look(Sight sight) {
        List<Laid> all = sight.pattern().pieces().stream()
                .filter(p -> p.size().isEmpty() && p.side() == Side.BOTH)
                .limit(MOST)
                .map(Laid::new)
                .toList();
        Set<String> wanted = sight.pieces().stream().map(Piece::id).collect(Collectors.toSet());
        boolean any = all.stream()
                .filter(s -> wanted.contains(s.piece.id()))
                .anyMatch(one -> all.stream().anyMatch(other -> other != one && one.liesOn(other)));
        List<String> names = new ArrayList<>();
        for (Laid one : any ? all : List.<Laid>of()) {
            if (all.stream().anyMatch(other -> other != one && one.liesOn(other))) {
                names.add(one.piece.name());
            }
        }
        return names.isEmpty()
                ? List.of()
                : List.of(Finding.of("pieces-on-each-other", Severity.CAUTION, "")
                        .with("pieces", names)
                        .with("count", names.size()));
    }
}
