package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.editor.paint.MarkScene;
import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Caption;
import easewright.pattern.Edge;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.suggest.Reference;
import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the picture that lies over the pieces while marks are made. */
public final class MarkScenes {
    /** A piece this many times as long as it is wide is a strip. */
    private static final double STRIP = 4;

    /** Where on an edge its name may stand, as parts of its length, the best first. */
    private static final double[] ALONG = {0.5, 0.36, 0.64, 0.24, 0.76, 0.14, 0.86};

    /** On a strip the middle belongs to the piece's own name. */
    private static final double[] ON_STRIP = {0.14, 0.86, 0.24, 0.76, 0.36, 0.64};

    private MarkScenes() {}

    /**
     * @param lines       of which it can be asked what they are
     * @param suggestions what is suggested, where that is being looked at
     */
    public static MarkScene of(
            Desk desk, Sheet sheet, AskedLines lines, MarkState state, Optional<Suggestions> suggestions) {
        if (!state.on() && state.tool() == Tool.NONE) {
            return MarkScene.EMPTY;
        }
        List<Segment> loose = new ArrayList<>();
        sheet.loose().forEach(rider -> loose.addAll(rider.segments()));
        List<MarkScene.Dot> dots = new ArrayList<>();
        state.picks().forEach(p -> dots.add(new MarkScene.Dot(p.at(), MarkScene.Sign.PICKED)));
        state.over().ifPresent(o -> dots.add(new MarkScene.Dot(o.at(), sign(o))));
        boolean words = state.on() && state.step() == MarkState.Step.SCALE;
        return new MarkScene(
                state.on() ? loose : List.of(),
                words ? captions(sheet) : List.of(),
                state.on() && !words
                        ? edges(suggestions.map(Suggestions::outcome).orElse(desk.pattern()))
                        : List.of(),
                soft(desk, state),
                strong(desk, sheet, lines, state),
                dots,
                state.moving()
                        .flatMap(m -> dragged(desk, m))
                        .or(() -> placing(desk, state))
                        .or(() -> tape(desk, state)));
    }

    /** Words outside the pieces; those on them are in their names. */
    private static List<Caption> captions(Sheet sheet) {
        return sheet.captions().stream()
                .filter(c -> sheet.pattern().pieces().stream()
                        .noneMatch(p -> p.outline().box().contains(c.middle())))
                .toList();
    }

    private static List<MarkScene.EdgeName> edges(Pattern pattern) {
        List<MarkScene.EdgeName> names = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            boolean clockwise = piece.outline().signedArea() > 0;
            Box box = piece.outline().box();
            boolean strip = Math.max(box.width(), box.height()) > STRIP * Math.min(box.width(), box.height());
            for (Edge edge : piece.edges()) {
                Curve run = edge.on(piece.outline());
                double length = run.length();
                boolean across = strip && length > box.width() / 2;
                List<MarkScene.Spot> spots = new ArrayList<>();
                for (double part : across ? ON_STRIP : ALONG) {
                    spot(run, length * part, clockwise).ifPresent(spots::add);
                }
                double room = strip ? Math.max(box.width(), box.height()) : Math.min(box.width(), box.height());
                names.add(new MarkScene.EdgeName(spots, length, room, edge.name()));
            }
        }
        return names;
    }

    private static Optional<MarkScene.Spot> spot(Curve run, double at, boolean clockwise) {
        Point along = run.pointAtLength(at + 0.5).minus(run.pointAtLength(at - 0.5));
        return along.norm() > 0
                ? Optional.of(new MarkScene.Spot(
                        run.pointAtLength(at), along.unit().quarterTurned().times(clockwise ? 1 : -1)))
                : Optional.empty();
    }

    private static List<Segment> soft(Desk desk, MarkState state) {
        boolean pieces = state.on() && state.step() == MarkState.Step.PIECES;
        return pieces
                ? PieceView.chosen(desk, state).map(p -> p.outline().segments()).orElse(List.of())
                : List.of();
    }

    /** What a list points at, and what would come of the next click. */
    private static List<Segment> strong(Desk desk, Sheet sheet, AskedLines lines, MarkState state) {
        List<Segment> strong = new ArrayList<>(state.lit());
        state.outline().ifPresent(id -> strong.addAll(lines.drawn(sheet, id)));
        state.line().flatMap(l -> Tape.along(desk.pattern(), l)).ifPresent(strong::addAll);
        boolean drawsLines = state.tool() == Tool.DART || state.tool() == Tool.GRAIN;
        if (drawsLines && state.over().isPresent()) {
            Point over = state.over().get().at();
            state.picks().stream()
                    .map(Snap::at)
                    .filter(p -> !p.equals(over))
                    .forEach(p -> strong.add(new Line(p, over)));
        }
        if (state.tool() == Tool.LEVEL) {
            piece(desk, state)
                    .flatMap(
                            p -> LevelEdits.across(p, state.over().orElseThrow().at()))
                    .ifPresent(strong::add);
        }
        return strong;
    }

    /** The piece that the tool points at. */
    private static Optional<Piece> piece(Desk desk, MarkState state) {
        return state.over().flatMap(Snap::piece).flatMap(desk.pattern()::piece);
    }

    private static MarkScene.Sign sign(Snap over) {
        if (over.isPoint()) {
            return MarkScene.Sign.CAUGHT;
        }
        return over.kind() == Snap.Kind.FREE ? MarkScene.Sign.FREE : MarkScene.Sign.ON_LINE;
    }

    /** A level in the hand, with how far it lies from where its distance is measured. */
    private static Optional<MarkScene.Tape> dragged(Desk desk, MarkState.Moving moving) {
        Optional<Piece> piece = moving.shown().piece(moving.piece());
        Optional<Point> reference = piece.flatMap(p -> p.level(moving.level())).flatMap(LevelMark::reference);
        if (piece.isEmpty() || reference.isEmpty()) {
            return Optional.empty();
        }
        double mm = LevelEdits.distance(piece.get(), moving.level()).orElse(0);
        return Optional.of(down(desk, piece.get(), reference.get(), mm));
    }

    /** How far down the piece a level would lie that the next click lays there. */
    private static Optional<MarkScene.Tape> placing(Desk desk, MarkState state) {
        Optional<Piece> piece = state.tool() == Tool.LEVEL ? piece(desk, state) : Optional.empty();
        return piece.map(p -> {
            Point from = state.level()
                    .flatMap(p::level)
                    .flatMap(LevelMark::reference)
                    .orElseGet(() -> Reference.of(p));
            double mm = state.over().orElseThrow().at().minus(from).dot(p.downGrain());
            return down(desk, p, from, mm);
        });
    }

    private static MarkScene.Tape down(Desk desk, Piece piece, Point from, double mm) {
        Point foot = from.plus(piece.downGrain().times(mm));
        return new MarkScene.Tape(from, foot, desk.words().length(mm));
    }

    /** The line measured, or while the second place is not clicked yet, from the first to the hand. */
    private static Optional<MarkScene.Tape> tape(Desk desk, MarkState state) {
        boolean measures = state.tool() == Tool.KNOWN_LINE || state.tool() == Tool.TAPE;
        Optional<Line> line = state.line();
        if (line.isEmpty() && measures && !state.picks().isEmpty()) {
            line = state.over().map(o -> new Line(state.picks().get(0).at(), o.at()));
        }
        return line.map(l -> new MarkScene.Tape(l.start(), l.end(), Tape.words(desk, l)));
    }
}
