package easewright.svg;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a drawing without marks probably holds: every closed shape of at least 4 cm² that is not inside a bigger one
 * is a piece, and the lines inside it ride along. {@link PieceOutlines} has the exceptions.
 *
 * @param findings what was left out
 */
public record BarePattern(Pattern pattern, List<Finding> findings) {
    /** Smallest area of a piece, mm² (4 cm²). */
    public static final double LEAST_AREA = 400;

    /** A piece with more lines inside is hatched or traced, and marks that name each of them would swamp the file. */
    private static final int MOST_RIDERS = 5000;

    public BarePattern {
        findings = List.copyOf(findings);
    }

    public static BarePattern of(Drawing drawing) {
        PieceOutlines outlines = PieceOutlines.of(drawing);
        List<Finding> findings = new ArrayList<>(outlines.findings());
        List<PieceOutline> drawn = new ArrayList<>(outlines.pieces());
        drawn.sort(Comparator.comparingInt(PieceOutline::order));
        Map<PieceOutline, String> names = new IdentityHashMap<>();
        List<String> called = PieceNames.of(drawn);
        for (int i = 0; i < drawn.size(); i++) {
            names.put(drawn.get(i), called.get(i));
        }
        findings.addAll(OutlineNotes.on(drawing, outlines.pieces(), names::get));
        Map<PieceOutline, List<Rider>> riders = RidersAlong.of(drawing, outlines.pieces());
        List<Piece> pieces = new ArrayList<>();
        for (PieceOutline outline : drawn) {
            List<Rider> along = riders.get(outline);
            if (along.size() > MOST_RIDERS) {
                findings.add(Finding.of("inner-lines-many", Severity.CAUTION, names.get(outline))
                        .with("count", along.size()));
                along = List.of();
            }
            pieces.add(Piece.bare(outline.id(), outline.area().outline()).toBuilder()
                    .name(names.get(outline))
                    .riders(along)
                    .build());
        }
        boolean lettering = outlines.letters()
                || drawing.all().stream().anyMatch(shape -> shape.shown() && Ring.looksLikeLettering(shape));
        if (drawing.captions().isEmpty() && lettering) {
            findings.add(Finding.of("words-as-shapes", Severity.NOTE, ""));
        }
        if (pieces.isEmpty() && drawing.all().stream().anyMatch(DrawnShape::shown)) {
            findings.add(Finding.of("no-pieces", Severity.FAULT, ""));
        }
        return new BarePattern(Pattern.bare(pieces, drawing.scale()), findings);
    }
}
