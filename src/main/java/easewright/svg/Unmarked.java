package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.pattern.Finding;
import easewright.pattern.NumberedNames;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A shape that looks like a piece but has no marks in a marked file is mentioned, not guessed at. */
final class Unmarked {
    private final Drawing drawing;
    private final List<Box> pages = new ArrayList<>();
    private final Set<String> known = new HashSet<>();

    /** Ids of shapes of which at least one stroke is known. */
    private final Set<String> touched = new HashSet<>();

    private Unmarked(Drawing drawing, Pattern pattern, Opening.MarksState marks) {
        this.drawing = drawing;
        drawing.page().ifPresent(pages::add);
        marks.page().flatMap(p -> p.page(drawing.scale())).ifPresent(pages::add);
        known.addAll(pattern.noPieces());
        List<Piece> marked = new ArrayList<>(pattern.pieces());
        marks.resting().pattern().ifPresent(resting -> marked.addAll(resting.pieces()));
        for (Piece piece : marked) {
            if (piece.id().indexOf(' ') >= 0) {
                known.addAll(List.of(piece.id().split(" ")));
            }
            known.add(piece.id());
            touched.add(withoutStroke(piece.id()));
            for (Rider rider : piece.riders()) {
                known.add(rider.id());
                touched.add(withoutStroke(rider.id()));
            }
        }
    }

    /** @param marks with what the page was before it was made larger: what was drawn round it lies round it no more */
    static void tell(Drawing drawing, Pattern pattern, Opening.MarksState marks, List<Finding> findings) {
        Unmarked unmarked = new Unmarked(drawing, pattern, marks);
        if (!unmarked.mayBe()) {
            return;
        }
        int number = pattern.pieces().size();
        for (Piece piece : BarePattern.of(drawing).pattern().pieces()) {
            if (!unmarked.isKnown(piece.id())
                    && !unmarked.liesRound(piece.outline().box())
                    && !TestSquares.isSquare(piece.outline())) {
                number++;
                String name = NumberedNames.isNumbered(piece.name()) ? NumberedNames.of(number) : piece.name();
                findings.add(Finding.of("shape-unmarked", Severity.NOTE, name).with("line", piece.id()));
            }
        }
    }

    private boolean isKnown(String id) {
        return known.contains(id)
                || touched.contains(id)
                || known.contains(withoutStroke(id))
                || known.containsAll(List.of(id.split(" ")));
    }

    /** The id of the shape, of one that names a stroke of it. */
    private static String withoutStroke(String id) {
        int stroke = id.lastIndexOf('#');
        return stroke < 0 ? id : id.substring(0, stroke);
    }

    /** Mostly every closed shape has its marks, and nobody need ask which of the others are pieces. */
    private boolean mayBe() {
        for (DrawnShape shape : drawing.all()) {
            if (shape.shown() && !known.contains(shape.id()) && !touched.contains(shape.id())) {
                for (SubPath line : shape.subPaths()) {
                    if (line.chain() instanceof Outline outline && mayBe(outline)) {
                        return true;
                    }
                }
            }
        }
        for (JoinedOutline joined : drawing.joined().outlines()) {
            if (!isKnown(joined.ref(drawing.all())) && mayBe(joined.outline())) {
                return true;
            }
        }
        return false;
    }

    private boolean liesRound(Box box) {
        return pages.stream().anyMatch(page -> SheetFrame.liesRound(box, page));
    }

    private boolean mayBe(Outline outline) {
        Box box = outline.box();
        boolean small = box.width() * box.height() < BarePattern.LEAST_AREA;
        return !small && !liesRound(box) && !TestSquares.isSquare(outline);
    }
}
