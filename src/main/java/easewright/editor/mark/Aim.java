package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Which place the hand means with the tool it holds. */
final class Aim {
    /** A pointer this many times its reach from an outline still means it, where nothing but an outline will do. */
    private static final double FAR = 6;

    private static final double ON_LINE = 0.01;

    private final Desk desk;
    private final Sheet sheet;
    private final MarkState state;
    private final Snaps snaps;

    Aim(Desk desk, Sheet sheet, MarkState state) {
        this.desk = desk;
        this.sheet = sheet;
        this.state = state;
        this.snaps = new Snaps(desk, sheet);
    }

    private boolean wantsOutline() {
        return state.tool().wantsOutline(state.picks().size());
    }

    Snap at(Point at, double reach) {
        if (state.tool() == Tool.LEVEL) {
            return height(snaps.at(at, reach), reach / 2);
        }
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

    /** The place that a hand comes to from another one, moved by keys, mm. */
    Snap moved(Snap from, Point by) {
        Snap to = at(from.at().plus(by), 0);
        if (state.tool() != Tool.LEVEL || to.piece().isPresent()) {
            return to;
        }
        // A level goes straight across its piece: who moves it down a sloping side has not left the piece.
        return from.piece()
                .flatMap(sheet.pattern()::piece)
                .flatMap(p -> LevelEdits.on(p, to.at())
                        .map(at -> new Snap(Snap.Kind.FREE, at, from.piece(), Optional.empty())))
                .orElse(to);
    }

    /** Of a level only the height matters: it is drawn to corners and notches also from the middle of the piece. */
    private Snap height(Snap near, double reach) {
        return near.isPoint()
                ? near
                : near.piece()
                        .flatMap(sheet.pattern()::piece)
                        .flatMap(p -> snaps.atHeight(p, near.at(), reach))
                        .orElse(near);
    }

    boolean isOnOutline(Snap snap) {
        return snap.piece()
                .flatMap(sheet.pattern()::piece)
                .map(p -> p.outline().nearest(snap.at()).distance() <= ON_LINE)
                .orElse(false);
    }

    /** Why the tool can do nothing at a place, as the code of a problem; empty where it can. */
    Optional<String> wrong(Snap snap) {
        if (wantsOutline() && !isOnOutline(snap)) {
            return Optional.of("not-on-edge");
        }
        return snap.piece().isEmpty() ? Optional.of("not-on-piece") : Optional.empty();
    }

    /**
     * All certain places that the tool can use, each once: for sewing the middles of all edges; while the marks of a
     * piece are listed, those on that piece first.
     */
    List<Snap> places() {
        if (state.tool() == Tool.SEW) {
            return middles();
        }
        // Where two edges or two marks meet there is one place: whoever goes from place to place must not come back
        // to the first of several that are the same.
        Map<Spot, Snap> once = new LinkedHashMap<>();
        snaps.points().stream()
                .filter(s -> !wantsOutline() || isOnOutline(s))
                .forEach(s -> once.putIfAbsent(Spot.of(s), s));
        Optional<String> listed = PieceView.chosen(desk, state).map(Piece::id);
        Predicate<Snap> first = s -> state.step() == MarkState.Step.PIECES
                && listed.isPresent()
                && s.piece().equals(listed);
        return Stream.concat(
                        once.values().stream().filter(first),
                        once.values().stream().filter(first.negate()))
                .toList();
    }

    /** A place to a hundredth of a millimetre. */
    private record Spot(long across, long down, Optional<String> piece) {
        static Spot of(Snap snap) {
            return new Spot(
                    Math.round(snap.at().x() / ON_LINE), Math.round(snap.at().y() / ON_LINE), snap.piece());
        }
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
