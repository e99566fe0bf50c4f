package easewright.editor.mark;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.suggest.Sheet;
import easewright.suggest.TwoLines;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Closed lines that are no outline of a piece, and what the user can say of them: that one is sewn, that it is cut, that
 * it is a piece of its own.
 */
public final class OtherLines {
    /** An inner line that holds less of its piece than this is a pocket or a hole and no line of the piece. */
    private static final double LEAST_OF_AREA = 0.3;

    private OtherLines() {}

    /**
     * A closed line.
     *
     * @param line   as a piece would take it along
     * @param bare   the piece that it would be
     * @param piece  id of the piece that it lies in or around, if any
     * @param around whether it lies around it
     * @param known  whether it goes along with that piece as its cutting or stitching line
     */
    public record Other(Rider line, Piece bare, Optional<String> piece, boolean around, boolean known) {
        public String id() {
            return line.id();
        }
    }

    /** All on the sheet: first those that belong to no piece. */
    public static List<Other> on(Sheet sheet) {
        List<Other> all = new ArrayList<>();
        for (Piece bare : LoosePieces.on(sheet)) {
            Rider line = new Rider(bare.id(), Rider.Kind.INNER, bare.outline().segments());
            Optional<Piece> piece = piece(bare.outline(), sheet.pattern());
            boolean around =
                    piece.filter(p -> area(bare.outline()) > area(p.outline())).isPresent();
            all.add(new Other(line, bare, piece.map(Piece::id), around, false));
        }
        for (Piece piece : sheet.pattern().pieces()) {
            for (Rider rider : piece.riders()) {
                Optional<Outline> drawn =
                        rider.kind() == Rider.Kind.ATTACHED ? Optional.empty() : TwoLines.outline(piece, rider);
                if (drawn.isPresent()) {
                    Outline outline = drawn.get();
                    boolean known = rider.kind() == Rider.Kind.PARALLEL;
                    if (known || area(outline) >= LEAST_OF_AREA * area(piece.outline())) {
                        boolean around = area(outline) > area(piece.outline());
                        all.add(new Other(
                                rider, Piece.bare(rider.id(), outline), Optional.of(piece.id()), around, known));
                    }
                }
            }
        }
        return List.copyOf(all);
    }

    private static double area(Outline outline) {
        return Math.abs(outline.signedArea());
    }

    /** The piece beside which the line runs, else the smallest that it lies in or around. */
    private static Optional<Piece> piece(Outline line, Pattern pattern) {
        Comparator<Piece> smallest = Comparator.comparingDouble(p -> area(p.outline()));
        return pattern.pieces().stream()
                .filter(p -> TwoLines.beside(p, line).isPresent())
                .min(smallest)
                .or(() -> pattern.pieces().stream()
                        .filter(p -> holds(p.outline(), line) || holds(line, p.outline()))
                        .min(smallest));
    }

    private static boolean holds(Outline outer, Outline inner) {
        return outer.box().grown(1).contains(inner.box())
                && inner.segments().stream()
                        .map(Segment::start)
                        .allMatch(p -> outer.contains(p) || outer.comesWithin(p, 1));
    }

    /**
     * The one that a click means.
     *
     * @param all     those on the sheet
     * @param pattern the pattern on it
     * @param reach   how far the pointer draws things to itself, mm
     */
    static Optional<Other> at(List<Other> all, Pattern pattern, Point at, double reach) {
        List<Other> near = all.stream().filter(o -> away(o, at) <= reach).toList();
        double piece = pattern.pieces().stream()
                .filter(p -> p.outline().box().distance(at) <= reach)
                .mapToDouble(p -> p.outline().nearest(at).distance())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        return near.stream().min(Comparator.comparingDouble(o -> away(o, at))).filter(o -> away(o, at) <= piece);
    }

    private static double away(Other other, Point at) {
        Outline outline = other.bare().outline();
        double box = outline.box().distance(at);
        List<Segment> line = other.line().segments();
        return box > 100
                ? box
                : LoosePieces.isClosed(line)
                        ? outline.nearest(at).distance()
                        : new Curve(line).nearest(at).distance();
    }

    /**
     * The outer line is cut and the inner one sewn. A piece on which nothing is marked yet becomes the inner line, since
     * darts are cut into it; else each stays what it is, and the other goes along.
     *
     * @param pattern without changes ({@link SaidLater})
     * @param was     id by which the line that is the piece's own could go along ({@link easewright.svg.Strokes})
     * @return the pattern, and the id of the piece in it
     * @throws MarkRefused {@code line-of-several}, {@code line-open}
     */
    static Said said(Pattern pattern, Other other, String was) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, other.piece().orElseThrow());
        boolean sewnIsNew = !other.around() && piece.edges().isEmpty();
        return sewnIsNew && TwoLines.canChange(piece, other.line())
                ? changed(pattern, other, was)
                : new Said(pattern.withPiece(TwoLines.along(piece, other.line())), piece.id());
    }

    /** What comes of it, and the id of the piece. */
    record Said(Pattern pattern, String piece) {}

    /**
     * The other one of both lines is the piece's own from now on: it is shown as its outline, measured and changed.
     *
     * @param pattern without changes ({@link SaidLater})
     * @param was     as in {@link #said}
     * @throws MarkRefused {@code line-of-several}, {@code line-open}
     */
    static Said changed(Pattern pattern, Other other, String was) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, other.piece().orElseThrow());
        if (!TwoLines.canChange(piece, other.line())) {
            throw new MarkRefused(
                    TwoLines.isOneLine(piece) ? "line-open" : "line-of-several", Map.of("piece", piece.name()));
        }
        Piece now = TwoLines.changed(piece, other.line(), was);
        List<Piece> pieces =
                pattern.pieces().stream().map(p -> p == piece ? now : p).toList();
        return new Said(EdgeRefs.moved(pattern, piece, now.id()).withPieces(pieces), now.id());
    }

    /** The line is a piece of its own, and belongs to no other. */
    static Pattern ownPiece(Sheet sheet, Other other) {
        Pattern pattern = sheet.pattern();
        Optional<Piece> old = other.piece().flatMap(pattern::piece);
        Pattern free = old.map(p -> pattern.withPiece(p.toBuilder()
                        .riders(p.riders().stream()
                                .filter(r -> !r.id().equals(other.id()))
                                .toList())
                        .build()))
                .orElse(pattern);
        Sheet freed = new Sheet(free, sheet.loose(), sheet.captions(), sheet.layers());
        return LoosePieces.with(freed, other.bare());
    }
}
