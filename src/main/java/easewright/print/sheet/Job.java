package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.pattern.SidePair;
import easewright.print.Cautions.Caution;
import easewright.print.MovedBy;
import easewright.print.Reading;
import easewright.print.ink.Leaf.Group;
import easewright.print.ink.Picture;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An order with all that is needed to fill it. */
record Job(
        PrintOrder order, Reading reading, List<PaperPiece> pieces, Sizes sizes, List<Caution> cautions, Words words) {
    /** Least distance between pieces, mm: room for the scissors. */
    static final double GAP = 6;

    Job {
        pieces = List.copyOf(pieces);
        cautions = List.copyOf(cautions);
    }

    /** The pieces that are printed, as they are in the pattern. */
    List<Piece> drawn() {
        return pieces.stream().map(PaperPiece::piece).toList();
    }

    static Job of(PrintOrder order, Optional<Reading> before, Reading after, List<Caution> cautions, Words words)
            throws PrintProblem {
        Pattern pattern = after.pattern();
        if (pattern.scale().proof() == Scale.Proof.UNPROVED) {
            throw PrintProblem.of("print-scale-unproved").with("name", order.name());
        }
        Sizes sizes = Sizes.of(pattern.pieces());
        PieceLabel label =
                new PieceLabel(after, MovedBy.of(before.map(Reading::pattern).orElse(pattern), pattern), order, words);
        List<PaperPiece> ready = new ArrayList<>();
        for (Piece piece : chosen(order, pattern, sizes)) {
            CutLine cut = CutLine.of(piece);
            ready.add(new PaperPiece(
                    piece,
                    after.measures().piece(piece.id()).orElseThrow(),
                    cut,
                    PaperPiece.upright(piece),
                    SidePair.with(pattern, piece),
                    label.lines(piece, cut, sizes.of(piece))));
        }
        return new Job(order, after, ready, sizes, cautions, words);
    }

    private static List<Piece> chosen(PrintOrder order, Pattern pattern, Sizes sizes) throws PrintProblem {
        List<Piece> chosen = new ArrayList<>(order.pieces().isEmpty() ? pattern.pieces() : List.of());
        for (String name : order.pieces()) {
            List<Piece> meant = pattern.pieces().stream()
                    .filter(p -> p.id().equals(name.strip()) || p.name().equalsIgnoreCase(name.strip()))
                    .toList();
            if (meant.isEmpty()) {
                throw PrintProblem.of("print-piece-unknown")
                        .with("piece", name.strip())
                        .with(
                                "known",
                                pattern.pieces().stream().map(Piece::name).toList());
            }
            meant.stream().filter(p -> !chosen.contains(p)).forEach(chosen::add);
        }
        if (!order.size().isBlank()) {
            if (sizes.all().stream().noneMatch(order.size().strip()::equalsIgnoreCase)) {
                throw PrintProblem.of(sizes.all().isEmpty() ? "print-no-sizes" : "print-size-unknown")
                        .with("size", order.size().strip())
                        .with("known", List.copyOf(sizes.all()));
            }
            chosen.removeIf(p -> !sizes.of(p).isEmpty()
                    && !sizes.of(p).equalsIgnoreCase(order.size().strip()));
        }
        if (chosen.isEmpty()) {
            throw PrintProblem.nothingChosen();
        }
        return chosen;
    }

    /** @param turning whether pieces may be turned upside down */
    List<Cutout> cutouts(boolean turning) {
        return pieces.stream().map(p -> p.cutout(turning)).toList();
    }

    /** Every piece can be switched off by itself, and all of a size together. */
    List<Group> groups(PaperPiece paper) {
        Piece piece = paper.piece();
        Group own = new Group("piece " + piece.id(), piece.name());
        String size = sizes.of(piece);
        return size.isEmpty()
                ? List.of(own)
                : List.of(new Group("size " + size, words.of("print.label.size", Map.of("size", size))), own);
    }

    /** The piece drawn where it was laid; the place is from its upright cutout onto the plane. */
    Picture picture(PaperPiece paper, Affine laid, double large) {
        return picture(paper, laid, large, List.of());
    }

    /**
     * The same.
     *
     * @param joins stretches where paper is cut and joined, which its label should not lie across, as pairs of ends
     */
    Picture picture(PaperPiece paper, Affine laid, double large, List<Point[]> joins) {
        return new PieceMarks(paper, laid, words, large).picture(joins);
    }

    /** The title for a page that stands for the whole. */
    String title() {
        return order.name();
    }

    /** For whom and when. */
    String byline() {
        String wearer = reading.pattern().body().name();
        String day = PieceLabel.day(order.date());
        return wearer.isBlank() ? day : words.of("print.byline", Map.of("wearer", wearer, "date", day));
    }
}
