package easewright.editor.paint;

import easewright.geom.Box;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;

/**
 * Where the pieces are painted: while some of many are pulled, those that lie still are left as they were painted on a
 * lower layer, and the others come above them with all words. Only pieces that lie clear of those that are not are left
 * so: lines of one lie over the paper of another. Where few lie still, all is painted on one layer.
 */
public final class TableLayers {
    /** Fewer pieces are painted sooner than a second layer is laid over the first. */
    private static final int LEAST = 24;

    /** How far a shadow, a thick line or a notch reaches beyond the lines of a piece, pixels. */
    private static final double RIM = 4;

    private final GraphicsContext below;
    private final Optional<Canvas> above;
    /** What the last picture was painted on; empty where none was. */
    private Optional<Sheet> sheet = Optional.empty();

    private Set<TableScene.PieceSight> last = Set.of();
    private Set<TableScene.PieceSight> still = Set.of();
    /** What the pieces of the last picture reach to, as far as it was asked for. */
    private Map<TableScene.PieceSight, Box> reach = Map.of();

    private boolean fresh;

    /**
     * All that pieces are painted by besides what they are.
     *
     * @param pixels of the screen to one of the picture
     */
    record Sheet(double width, double height, double pixels, Viewport view, Ink ink, boolean trying, boolean inches) {}

    private TableLayers(GraphicsContext below, Optional<Canvas> above) {
        this.below = below;
        this.above = above;
        above.ifPresent(canvas -> canvas.setVisible(false));
    }

    /** Two canvases of the same size, one above the other. */
    public TableLayers(Canvas below, Canvas above) {
        this(below.getGraphicsContext2D(), Optional.of(above));
    }

    /** All on one. */
    static TableLayers one(GraphicsContext gc) {
        return new TableLayers(gc, Optional.empty());
    }

    /** Something else was painted there. */
    public void forget() {
        sheet = Optional.empty();
        last = Set.of();
        still = Set.of();
        reach = Map.of();
        above.ifPresent(canvas -> canvas.setVisible(false));
    }

    /**
     * Another picture begins.
     *
     * @param mayStay whether pieces may be left as they are: nothing comes between their papers and their lines
     */
    void begin(Sheet now, List<TableScene.PieceSight> seen, boolean mayStay, DrawnLines lines) {
        boolean same = mayStay && above.isPresent() && sheet.filter(now::equals).isPresent();
        Set<TableScene.PieceSight> alike = set(same ? seen : List.of());
        alike.retainAll(last);
        Set<TableScene.PieceSight> before = still;
        if (!same) {
            reach = Map.of();
        }
        if (alike.size() < LEAST) {
            still = Set.of();
        } else {
            Map<TableScene.PieceSight, Box> known = reach;
            reach = new IdentityHashMap<>();
            for (TableScene.PieceSight piece : seen) {
                Box box = known.get(piece);
                reach.put(piece, box == null ? reach(piece, lines) : box);
            }
            boolean enough = 2 * before.size() >= alike.size();
            boolean holds = same && enough && alike.containsAll(before) && lieClear(before, seen, reach);
            still = holds ? before : clear(alike, seen, reach);
        }
        boolean unchanged = same && still.size() == before.size() && still.containsAll(before);
        fresh = still.isEmpty() || !unchanged;
        last = set(seen);
        sheet = Optional.of(now);
        above.ifPresent(canvas -> {
            canvas.setVisible(!still.isEmpty());
            if (!still.isEmpty()) {
                canvas.getGraphicsContext2D().clearRect(0, 0, now.width(), now.height());
            }
        });
    }

    /** Whether the lower layer is to be painted anew. */
    boolean isFresh() {
        return fresh;
    }

    GraphicsContext below() {
        return below;
    }

    /** Where all is painted that is not on the lower layer alone. */
    GraphicsContext above() {
        return still.isEmpty() ? below : above.orElseThrow().getGraphicsContext2D();
    }

    /** Whether a piece is, or is to be, on the lower layer alone. */
    boolean isStill(TableScene.PieceSight piece) {
        return still.contains(piece);
    }

    private static Set<TableScene.PieceSight> set(Collection<TableScene.PieceSight> pieces) {
        Set<TableScene.PieceSight> set = Collections.newSetFromMap(new IdentityHashMap<>());
        set.addAll(pieces);
        return set;
    }

    /** What its lines reach to, pixels. */
    private static Box reach(TableScene.PieceSight piece, DrawnLines lines) {
        return Stream.concat(
                        Stream.concat(Stream.of(piece.piece().outline()), piece.ghost().stream())
                                .map(o -> o.segments()),
                        Stream.concat(piece.riders().stream(), piece.former().stream())
                                .map(r -> r.segments()))
                .flatMap(segments -> lines.along(segments).stream())
                .map(DrawnLine::box)
                .reduce(Box::union)
                .orElseThrow()
                .grown(RIM);
    }

    private static boolean lieClear(
            Set<TableScene.PieceSight> still, List<TableScene.PieceSight> seen, Map<TableScene.PieceSight, Box> reach) {
        for (TableScene.PieceSight other : seen) {
            if (!still.contains(other)) {
                Box box = reach.get(other);
                for (TableScene.PieceSight piece : still) {
                    if (reach.get(piece).overlaps(box)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Those of the pieces that lie clear of all others, and of those that do not; none where that are few. */
    private static Set<TableScene.PieceSight> clear(
            Set<TableScene.PieceSight> pieces,
            List<TableScene.PieceSight> seen,
            Map<TableScene.PieceSight, Box> reach) {
        Deque<TableScene.PieceSight> others = new ArrayDeque<>();
        seen.stream().filter(piece -> !pieces.contains(piece)).forEach(others::add);
        while (!others.isEmpty() && pieces.size() >= LEAST) {
            Box box = reach.get(others.remove());
            pieces.removeIf(piece -> {
                boolean touches = reach.get(piece).overlaps(box);
                if (touches) {
                    others.add(piece);
                }
                return touches;
            });
        }
        return pieces.size() < LEAST ? Set.of() : pieces;
    }
}
