package easewright.svg;

import static java.util.function.Predicate.not;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which closed outlines of a drawing without marks are pieces: those that lie in no other, and the smaller sizes of a
 * nest; but neither the frame of the sheet nor letters. What is left out is told.
 *
 * @param pieces   the largest first
 * @param findings what was left out
 * @param letters  whether some outlines are letters
 */
record PieceOutlines(List<PieceOutline> pieces, List<Finding> findings, boolean letters) {
    private static final int MOST_PIECES = 2000;

    /** Of equals, the one drawn first. */
    private static final Comparator<PieceOutline> LARGEST_FIRST = Comparator.comparingDouble(
                    (PieceOutline o) -> o.area().area())
            .reversed()
            .thenComparingInt(PieceOutline::order);

    PieceOutlines {
        pieces = List.copyOf(pieces);
        findings = List.copyOf(findings);
    }

    static PieceOutlines of(Drawing drawing) {
        List<Finding> findings = new ArrayList<>();
        List<PieceOutline> all = withoutFrames(outlines(drawing), drawing, findings);
        Set<List<Integer>> letters = LetterRows.in(drawing.all(), all);
        List<PieceOutline> outer = new ArrayList<>();
        List<PieceOutline> inside = new ArrayList<>();
        List<PieceOutline> lettering = new ArrayList<>();
        int leftOut = 0;
        for (PieceOutline outline : all) {
            if (outer.stream().anyMatch(piece -> piece.holds(outline))) {
                inside.add(outline);
            } else if (letters.contains(List.of(outline.order(), outline.subPath()))
                    || lettering.stream().anyMatch(letter -> letter.holds(outline))) {
                lettering.add(outline);
            } else if (outer.size() < MOST_PIECES) {
                outer.add(outline);
            } else {
                leftOut++;
            }
        }
        List<PieceOutline> pieces = new ArrayList<>(outer);
        pieces.addAll(new SizesInside(drawing, outer).among(inside));
        pieces.sort(LARGEST_FIRST);
        if (!lettering.isEmpty()) {
            findings.add(Finding.of("letters-left-out", Severity.NOTE, "").with("count", lettering.size()));
        }
        if (leftOut > 0) {
            findings.add(Finding.of("pieces-left-out", Severity.FAULT, "")
                    .with("most", MOST_PIECES)
                    .with("count", leftOut));
        }
        return new PieceOutlines(pieces, findings, !lettering.isEmpty());
    }

    private static List<PieceOutline> outlines(Drawing drawing) {
        List<DrawnShape> all = drawing.all();
        List<PieceOutline> outlines = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            DrawnShape shape = all.get(i);
            if (shape.shown()) {
                for (Ring ring : Ring.ofPieces(shape)) {
                    Area area = Area.of(ring.outline(), i, ring.subPath());
                    Optional<String> name = PieceNames.own(shape)
                            .or(() -> TestSquares.words(ring.outline(), drawing.captions()))
                            .or(() -> PieceNames.given(shape));
                    outlines.add(new PieceOutline(area, i, Optional.empty(), ring.subPath(), ring.ref(shape), name));
                }
            }
        }
        for (JoinedOutline joined : drawing.joined().outlines()) {
            int first = joined.parts().get(0).shape();
            Area area = Area.of(joined.outline(), first, 0);
            if (area.area() >= BarePattern.LEAST_AREA) {
                Optional<String> name =
                        joined.label().isEmpty() ? PieceNames.given(all.get(first)) : Optional.of(joined.label());
                outlines.add(new PieceOutline(area, first, Optional.of(joined), 0, joined.ref(all), name));
            }
        }
        outlines.sort(LARGEST_FIRST);
        return outlines;
    }

    /** A border may lie in the frame of the page, and is one as soon as that is left out. */
    private static List<PieceOutline> withoutFrames(
            List<PieceOutline> outlines, Drawing drawing, List<Finding> findings) {
        List<PieceOutline> rest = outlines;
        List<PieceOutline> frames;
        do {
            List<Area> areas = rest.stream().map(PieceOutline::area).toList();
            frames = rest.stream()
                    .filter(o -> SheetFrame.is(o.area(), areas, drawing.page()))
                    .toList();
            for (PieceOutline frame : frames) {
                String name = frame.name().orElse("");
                String code = name.isEmpty() ? "page-frame-unnamed-left-out" : "page-frame-left-out";
                findings.add(Finding.of(code, Severity.NOTE, name));
            }
            rest = rest.stream().filter(not(frames::contains)).toList();
        } while (!frames.isEmpty());
        return rest;
    }
}
