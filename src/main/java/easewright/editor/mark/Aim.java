package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which place the hand means with the tool it holds. */
final class Aim {
    /** A pointer this many times its reach from an outline still means it, where nothing but an outline will do. */
    private static final double FAR = 6;

    private static final double ON_LINE = 0.01;

    private final Sheet sheet;
    private final MarkState state;
    private final Snaps snaps;

    Aim(Desk desk, Sheet sheet, MarkState state) {
        this.sheet = sheet;
        this.state = state;
        this.snaps = new Snaps(desk, sheet);
    }

    private boolean wantsOutline() {
        return state.tool().wantsOutline(state.picks().size());
    }

    Snap at(Point at, double reach) {
        if (!wantsOutline()) {
            return snaps.at(at, reach);
        }
        // A corner belongs to two edges: whoever chooses an edge is not drawn to it.
        Snap near = state.tool() == Tool.SEW
                ? new Snap(Snap.Kind.FREE, at, Optional.empty(), Optional.empty())
                : snaps.at(at, reach);
        if (isOnOutline(near)) {
            return near;
        }
        double most = reach == 0 ? Double.POSITIVE_INFINITY : FAR * reach;
        return snaps.onOutline(at)
                .filter(s -> s.at().distance(at) <= most)
                .orElseGet(() -> new Snap(Snap.Kind.FREE, at, snaps.pieceAt(at), Optional.empty()));
    }

    boolean isOnOutline(Snap snap) {
        return snap.piece()
                .flatMap(sheet.pattern()::piece)
                .map(p -> p.outline().nearest(snap.at()).distance() <= ON_LINE)
                .orElse(false);
    }

    /** All certain places that the tool can use: for sewing the middles of all edges. */
    List<Snap> places() {
        if (state.tool() == Tool.SEW) {
            return middles();
        }
        List<Snap> all = snaps.points();
        return wantsOutline() ? all.stream().filter(this::isOnOutline).toList() : all;
    }

    private List<Snap> middles() {
        List<Snap> middles = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            for (Edge edge : piece.edges()) {
                Curve run = edge.on(piece.outline());
                Point middle = run.pointAtLength(run.length() / 2);
                middles.add(new Snap(Snap.Kind.OUTLINE, middle, Optional.of(piece.id()), Optional.empty()));
            }
        }
        return middles;
    }
}
