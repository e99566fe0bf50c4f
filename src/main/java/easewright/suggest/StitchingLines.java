package easewright.suggest;

import easewright.pattern.Caption;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Finds stitching lines inside cutting lines, or words that say whether the allowance is drawn. */
final class StitchingLines {
    private static final double LEAST_OF_AREA = 0.3;

    private static final Pattern INCLUDED = Pattern.compile(
            "seam allowances? .*(?<!not )\\binclude|includ\\w+ .*seam allowance|with seam allowance",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LEFT_OUT = Pattern.compile(
            "no seam allowance|without seam allowance|add seam allowance|allowances? (is |are )?not included"
                    + "|does not include .*seam allowance",
            Pattern.CASE_INSENSITIVE);

    private StitchingLines() {}

    static List<Suggestion> find(Sheet sheet) {
        List<Suggestion> found = new ArrayList<>();
        OptionalDouble written = written(sheet);
        for (Piece piece : sheet.pattern().pieces()) {
            boolean open = piece.edges().isEmpty()
                    && piece.drawn() == LineKind.STITCHING
                    && piece.riders().stream().noneMatch(r -> r.kind() == Rider.Kind.PARALLEL);
            if (open) {
                Optional<StitchingLine> inner = inner(piece);
                if (inner.isPresent()) {
                    found.add(inner.get());
                } else if (written.isPresent()) {
                    Piece after = piece.toBuilder()
                            .drawn(LineKind.CUTTING, written.getAsDouble())
                            .build();
                    found.add(new StitchingLine(piece.id(), after, Reason.of("allowance-written", 0.8)));
                }
            }
        }
        return found;
    }

    /** The allowance that the sheet says is included in all outlines. */
    private static OptionalDouble written(Sheet sheet) {
        for (Caption caption : sheet.captions()) {
            String words = caption.words();
            if (LEFT_OUT.matcher(words).find()) {
                return OptionalDouble.empty();
            }
            if (INCLUDED.matcher(words).find() && WrittenLength.in(words).isPresent()) {
                return WrittenLength.in(words);
            }
        }
        return OptionalDouble.empty();
    }

    private static Optional<StitchingLine> inner(Piece piece) {
        double area = Math.abs(piece.outline().signedArea());
        return SewnInside.in(piece, Rider.Kind.INNER).stream()
                .filter(i -> i.area() >= LEAST_OF_AREA * area && i.area() < area)
                .sorted(Comparator.comparingDouble(SewnInside::area).reversed())
                .flatMap(i -> suggestion(piece, i).stream())
                .findFirst();
    }

    private static Optional<StitchingLine> suggestion(Piece piece, SewnInside inner) {
        LineInside lies = new LineInside(inner.outline(), piece.outline());
        if (!lies.isStitchingLine()) {
            return Optional.empty();
        }
        double allowance = Rounding.meant(lies.usual());
        Map<String, Object> values = Map.of("usual", allowance, "most", Rounding.meant(lies.most()));
        Optional<LineInside.Span> spread = lies.spread();
        Reason reason = reason(
                inner,
                spread.isPresent(),
                values,
                Grading.between(inner.outline(), piece.outline()).isPresent());
        String line = inner.riders().get(0).id();
        boolean ownElement = !inner.open()
                && inner.riders().size() == 1
                && !line.contains("#")
                && piece.riders().stream().noneMatch(r -> r.id().startsWith(piece.id() + "#"));
        return Optional.of(new StitchingLine(
                piece.id(),
                ownElement ? swapped(piece, inner, allowance) : kept(piece, inner, allowance),
                reason,
                spread.map(s -> OptionalDouble.of(s.least())).orElse(OptionalDouble.empty()),
                spread.map(s -> OptionalDouble.of(s.most())).orElse(OptionalDouble.empty())));
    }

    /**
     * @param byEdge whether edges have distances of their own: then it is even along each, and not all round
     * @param graded whether it may as well be a smaller size, which somebody has not taken it for
     */
    private static Reason reason(SewnInside inner, boolean byEdge, Map<String, Object> values, boolean graded) {
        if (inner.riders().size() > 1) {
            String code = byEdge ? "lines-inside-line-by-edge" : "lines-inside-line";
            return new Reason(code, values, graded ? 0.4 : 0.8);
        }
        String toOutline = byEdge ? "line-inside-to-outline-by-edge" : "line-inside-to-outline";
        String code = inner.open() ? toOutline : byEdge ? "line-inside-line-by-edge" : "line-inside-line";
        double sure = inner.open() ? 0.85 : 0.9;
        return new Reason(code, values, graded ? 0.4 : sure);
    }

    /** The inner outline becomes the piece, and the outer one goes along around it. */
    private static Piece swapped(Piece piece, SewnInside inner, double allowance) {
        Rider line = inner.riders().get(0);
        List<Rider> riders = new ArrayList<>();
        riders.add(new Rider(piece.id(), Rider.Kind.PARALLEL, piece.outline().segments()));
        piece.riders().stream().filter(r -> r != line).forEach(riders::add);
        return Piece.bare(line.id(), inner.outline()).toBuilder()
                .name(piece.name())
                .drawn(LineKind.STITCHING, allowance)
                .cut(piece.times(), piece.onFold())
                .layers(piece.layers())
                .riders(riders)
                .build();
    }

    /** Both are drawn by one element, or the inner one is not closed: the outer line stays the piece's own. */
    private static Piece kept(Piece piece, SewnInside inner, double allowance) {
        List<Rider> riders = piece.riders().stream()
                .map(r -> inner.riders().contains(r) ? r.as(Rider.Kind.PARALLEL) : r)
                .toList();
        return piece.toBuilder()
                .drawn(LineKind.CUTTING, allowance)
                .riders(riders)
                .build();
    }
}
