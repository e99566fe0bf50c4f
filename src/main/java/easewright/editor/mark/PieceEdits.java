package easewright.editor.mark;

import easewright.alter.Renaming;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What can be marked on a piece besides its edges and levels. */
public final class PieceEdits {
    private static final int MOST_CUT = 99;

    /** A dart narrower or shorter than this cannot be sewn, mm. */
    private static final double SMALLEST_DART = 2;

    /** As suggestions call the edges in the middle. */
    private static final String FOLD = "fold";

    private static final String CENTRE = "centre";

    private PieceEdits() {}

    /**
     * @throws MarkRefused {@code name-empty}, {@code name-taken}
     */
    public static Pattern rename(Pattern pattern, String pieceId, String newName) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        String wanted = newName.strip();
        if (wanted.isEmpty()) {
            throw new MarkRefused("name-empty", Map.of());
        }
        boolean taken =
                pattern.pieces().stream().anyMatch(p -> p != piece && p.name().equals(wanted));
        if (taken) {
            throw new MarkRefused("name-taken", Map.of("name", wanted));
        }
        return EdgeRefs.byId(pattern, piece).withPiece(piece.withName(wanted));
    }

    /**
     * How often a piece is cut. One that comes on the fold has its centre line there, if it has just one, and one that is
     * no longer on it has a centre line instead of its fold.
     *
     * @param times as typed
     * @throws MarkRefused {@code count-wrong}
     */
    public static Pattern cut(Pattern pattern, String pieceId, String times, boolean onFold) throws MarkRefused {
        try {
            int number = Integer.parseInt(times.strip());
            if (number >= 1 && number <= MOST_CUT) {
                Piece piece = EdgeEdits.piece(pattern, pieceId);
                Pattern cut =
                        pattern.withPiece(piece.toBuilder().cut(number, onFold).build());
                return onFold == piece.onFold() ? cut : withFold(cut, piece, onFold);
            }
        } catch (NumberFormatException e) {
            throw new MarkRefused("count-wrong", Map.of("text", times));
        }
        throw new MarkRefused("count-wrong", Map.of("text", times));
    }

    /** How many layers of a piece lie on each other, in whatever size it is cut. */
    public static Pattern layers(Pattern pattern, String pieceId, int layers) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPieces(pattern.pieces().stream()
                .map(p -> p.kind().equals(piece.kind())
                        ? p.toBuilder().layers(layers).build()
                        : p)
                .toList());
    }

    private static Pattern withFold(Pattern pattern, Piece piece, boolean onFold) {
        List<Edge> centres = having(piece, EdgeRole.CENTRE);
        List<Edge> folds = having(piece, EdgeRole.FOLD);
        if (onFold && folds.isEmpty() && centres.size() == 1) {
            return EdgeEdits.role(pattern, piece.id(), centres.get(0).name(), EdgeRole.FOLD);
        }
        if (!onFold && folds.size() == 1) {
            Pattern now = EdgeEdits.role(pattern, piece.id(), folds.get(0).name(), EdgeRole.CENTRE);
            // It would go on saying what it no longer is; a centre on a fold is a centre still.
            boolean misnamed =
                    folds.get(0).name().equals(FOLD) && piece.edge(CENTRE).isEmpty();
            return misnamed ? Renaming.edge(now, EdgeEdits.piece(now, piece.id()), FOLD, CENTRE) : now;
        }
        return pattern;
    }

    private static List<Edge> having(Piece piece, EdgeRole role) {
        return piece.edges().stream().filter(e -> e.role() == role).toList();
    }

    /**
     * The size that a piece belongs to, where the pattern comes in several.
     *
     * @param size as typed; blank for a piece of every size
     */
    public static Pattern size(Pattern pattern, String pieceId, String size) {
        Optional<String> marked = Optional.of(size.strip()).filter(s -> !s.isEmpty());
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPiece(piece.toBuilder().size(marked).build());
    }

    /**
     * @throws IllegalArgumentException if the allowance is below 0
     */
    public static Pattern line(Pattern pattern, String pieceId, LineKind drawn, OptionalDouble allowance) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPiece(
                piece.toBuilder().drawn(drawn, allowance.orElse(0)).build());
    }

    /**
     * The shape is no piece, nothing is sewn to it, and it is not asked about again.
     *
     * @throws MarkRefused {@code piece-in-changes}
     */
    public static Pattern noPiece(Pattern pattern, String pieceId) throws MarkRefused {
        return leaveOut(pattern, pieceId).withNoPiece(pieceId);
    }

    /**
     * Without a piece and all that is sewn to it.
     *
     * @throws MarkRefused {@code piece-in-changes}
     */
    public static Pattern leaveOut(Pattern pattern, String pieceId) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        if (!pattern.changes().isEmpty()) {
            throw new MarkRefused("piece-in-changes", Map.of("piece", piece.name()));
        }
        return EdgeRefs.removed(pattern, piece)
                .withPieces(pattern.pieces().stream().filter(p -> p != piece).toList());
    }

    /**
     * @throws MarkRefused {@code grain-too-short}
     */
    public static Pattern grain(Pattern pattern, String pieceId, Point from, Point to) throws MarkRefused {
        if (from.distance(to) < 1) {
            throw new MarkRefused("grain-too-short", Map.of());
        }
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPiece(piece.toBuilder().grain(new Grain(from, to)).build());
    }

    /** Without a grainline: the grain runs straight down the page again. */
    public static Pattern noGrain(Pattern pattern, String pieceId) {
        Piece p = EdgeEdits.piece(pattern, pieceId);
        return pattern.withPiece(p.toBuilder().grain(Optional.empty()).build());
    }

    /**
     * A dart with its mouth on the outline.
     *
     * @throws MarkRefused {@code dart-too-small}
     */
    public static Pattern dart(Pattern pattern, String pieceId, Point one, Point two, Point tip) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        Point mouth1 = piece.outline().nearest(one).point();
        Point mouth2 = piece.outline().nearest(two).point();
        double depth = mouth1.towards(mouth2, 0.5).distance(tip);
        if (mouth1.distance(mouth2) < SMALLEST_DART || depth < SMALLEST_DART) {
            throw new MarkRefused("dart-too-small", Map.of());
        }
        Optional<String> edge = EdgeEdits.at(
                        piece,
                        piece.outline().nearest(mouth1.towards(mouth2, 0.5)).point())
                .map(Edge::name);
        List<Dart> darts = new ArrayList<>(piece.darts());
        List<String> names = darts.stream().map(Dart::name).toList();
        darts.add(new Dart(unused("dart", names), mouth1, mouth2, tip, Optional.empty(), edge));
        return pattern.withPiece(piece.toBuilder().darts(darts).build());
    }

    /**
     * @throws MarkRefused {@code name-empty}, {@code name-taken}
     */
    public static Pattern renameDart(Pattern pattern, String pieceId, String name, String newName) throws MarkRefused {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        String wanted = newName.strip();
        if (wanted.isEmpty()) {
            throw new MarkRefused("name-empty", Map.of());
        }
        if (!wanted.equals(name)
                && piece.darts().stream().anyMatch(d -> d.name().equals(wanted))) {
            throw new MarkRefused("name-taken", Map.of("name", wanted));
        }
        return Renaming.dart(pattern, piece, name, wanted);
    }

    public static Pattern removeDart(Pattern pattern, String pieceId, String name) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        List<Dart> darts =
                piece.darts().stream().filter(d -> !d.name().equals(name)).toList();
        return pattern.withPiece(piece.toBuilder().darts(darts).build());
    }

    public static Pattern notch(Pattern pattern, String pieceId, Point at) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        List<Notch> notches = new ArrayList<>(piece.notches());
        notches.add(new Notch(
                Notch.unused(pattern.notchNames(piece.size())),
                piece.outline().nearest(at).point()));
        return pattern.withPiece(piece.toBuilder().notches(notches).build());
    }

    /**
     * @param number of the notch in the piece's list, from 0; several may share a name
     * @throws MarkRefused {@code name-empty}
     */
    public static Pattern renameNotch(Pattern pattern, String pieceId, int number, String newName) throws MarkRefused {
        if (newName.isBlank()) {
            throw new MarkRefused("name-empty", Map.of());
        }
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        String name = piece.notches().get(number).name();
        if (piece.notches().stream().filter(n -> n.name().equals(name)).count() == 1) {
            return Renaming.notch(pattern, piece, name, newName.strip());
        }
        List<Notch> notches = new ArrayList<>(piece.notches());
        notches.set(number, new Notch(newName.strip(), notches.get(number).at()));
        return pattern.withPiece(piece.toBuilder().notches(notches).build());
    }

    public static Pattern removeNotch(Pattern pattern, String pieceId, int number) {
        Piece piece = EdgeEdits.piece(pattern, pieceId);
        List<Notch> notches = new ArrayList<>(piece.notches());
        notches.remove(number);
        return pattern.withPiece(piece.toBuilder().notches(notches).build());
    }

    /** The name with the lowest number that is not in use. */
    private static String unused(String like, List<String> names) {
        int number = 1;
        while (names.contains(like + " " + number)) {
            number++;
        }
        return like + " " + number;
    }
}
