package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Side;
import java.util.List;

/** Writes the marks of one piece. */
final class PieceMarksWriter {
    private final Piece piece;
    private final List<KeptMark> kept;
    private final MarkupBuilder out;

    private PieceMarksWriter(Piece piece, List<KeptMark> kept, MarkupBuilder out) {
        this.piece = piece;
        this.kept = kept;
        this.out = out;
    }

    /**
     * @param kept marks of the piece that could not be used
     */
    static void write(Piece piece, List<KeptMark> kept, MarkupBuilder out) throws SvgProblem {
        new PieceMarksWriter(piece, kept, out).piece();
    }

    private void piece() throws SvgProblem {
        Box box = piece.outline().box();
        out.open("piece").text("ref", piece.id()).text("name", piece.name());
        if (piece.size().isPresent()) {
            out.text("size", piece.size().get());
        }
        if (piece.side() != Side.BOTH) {
            out.text("side", MarkWords.word(piece.side()));
        }
        out.text("line", MarkWords.word(piece.drawn()))
                .number("allowance", piece.allowance())
                .text("cut", String.valueOf(piece.times()));
        if (piece.layers() > 1) {
            out.text("layers", String.valueOf(piece.layers()));
        }
        out.yesNo("fold", piece.onFold())
                .text(
                        "box",
                        MarkWords.place(new Point(box.minX(), box.minY())) + " "
                                + MarkWords.place(new Point(box.maxX(), box.maxY())));
        for (Edge edge : piece.edges()) {
            edge(edge);
        }
        for (LevelMark level : piece.levels()) {
            level(level);
        }
        for (Dart dart : piece.darts()) {
            dart(dart);
        }
        for (Notch notch : piece.notches()) {
            out.open("notch").text("name", notch.name()).place("at", notch.at()).close();
        }
        if (piece.grain().isPresent()) {
            out.open("grain")
                    .place("from", piece.grain().get().from())
                    .place("to", piece.grain().get().to())
                    .close();
        }
        for (Rider rider : piece.riders()) {
            out.open("rider").text("ref", rider.id()).text("kind", MarkWords.word(rider.kind()));
            if (rider.original().isPresent()) {
                out.text("original", MarkWords.path(rider.original().get()));
            }
            out.close();
        }
        if (piece.original().isPresent()) {
            out.open("original")
                    .text("d", MarkWords.path(piece.original().get()))
                    .close();
        }
        for (KeptMark mark : kept) {
            if (mark.twin() || !replaced(mark.kind(), mark.name().orElse(""))) {
                out.verbatim(mark.markup());
            }
        }
        out.close();
    }

    private void edge(Edge edge) throws SvgProblem {
        out.open("edge")
                .text("name", edge.name())
                .text("role", MarkWords.word(edge.role()))
                .place("from", edge.from());
        if (!edge.from().equals(edge.to())) {
            Curve run = edge.on(piece.outline());
            out.place("via", run.pointAtLength(run.length() / 2));
        }
        out.place("to", edge.to());
        if (edge.isProtected() != edge.role().protectedByDefault()) {
            out.yesNo("protected", edge.isProtected());
        }
        if (edge.allowance().isPresent()) {
            out.number("allowance", edge.allowance().getAsDouble());
        }
        out.close();
    }

    private void level(LevelMark mark) throws SvgProblem {
        out.open("at").text("level", mark.level());
        if (mark.through().isPresent()) {
            out.place("through", mark.through().get());
        }
        if (mark.along().isPresent()) {
            out.text("along", mark.along().get());
        }
        if (mark.turn() != 0) {
            out.number("turn", mark.turn());
        }
        if (!mark.counts()) {
            out.yesNo("counts", false);
        }
        if (mark.overlapSaid().isPresent()) {
            out.number("overlap", mark.overlap());
        }
        if (mark.span() != LevelMark.Span.NEAREST) {
            out.text("span", MarkWords.word(mark.span()));
        }
        if (mark.reference().isPresent()) {
            out.place("reference", mark.reference().get());
        }
        out.close();
    }

    private void dart(Dart dart) throws SvgProblem {
        out.open("dart").text("name", dart.name());
        if (dart.edge().isPresent()) {
            out.text("edge", dart.edge().get());
        }
        out.place("mouth", dart.mouth1()).place("point", dart.point()).place("mouth2", dart.mouth2());
        if (dart.otherPoint().isPresent()) {
            out.place("point2", dart.otherPoint().get());
        }
        out.close();
    }

    /** Whether the piece now has a mark of the same kind and name. */
    private boolean replaced(String kind, String name) {
        return switch (kind) {
            case "edge" -> piece.edge(name).isPresent();
            case "at" -> piece.level(name).isPresent();
            case "dart" -> piece.darts().stream().anyMatch(d -> d.name().equals(name));
            case "notch" -> piece.notches().stream().anyMatch(n -> n.name().equals(name));
            case "rider" -> piece.riders().stream().anyMatch(r -> r.id().equals(name));
            case "grain" -> piece.grain().isPresent();
            case "original" -> piece.original().isPresent();
            default -> false;
        };
    }
}
