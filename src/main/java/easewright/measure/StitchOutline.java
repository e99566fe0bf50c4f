package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.topology.Allowance;
import easewright.topology.Meeting;
import easewright.topology.Overlap;
import easewright.topology.Validity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiPredicate;
import java.util.function.Supplier;

/**
 * The stitching line of a piece: the drawn outline with cut-out darts closed over their mouths and the allowance taken
 * off. Where the drawn line is the stitching line and has no cut-out dart, it is that very outline.
 */
public final class StitchOutline {
    private final Piece piece;
    private final DartCuts cuts;
    private final CuttingLine cutting;
    private final Optional<Allowance> inset;
    private final Outline outline;
    private final List<ClosedDart> darts;

    /** Marks are asked for again and again, by several at once. */
    private final Map<Point, Place> places = new ConcurrentHashMap<>();

    /** By their marks, which are the same objects as long as the piece is; a mark may be laid again at another level. */
    private final Map<LevelMark, PieceTape.Laid> levels = Collections.synchronizedMap(new IdentityHashMap<>());

    private volatile List<Meeting> meetings;

    /** By other pieces, which are not kept for its sake; few pieces are ever asked. */
    private Map<StitchOutline, Double> shared = Map.of();

    /** What changes of the piece that are tried again and again worked out, by what they call it: the last of each. */
    private final Map<String, Object> tried = new ConcurrentHashMap<>(2);

    private StitchOutline(Piece piece, Optional<StitchOutline> like) {
        this.piece = piece;
        cuts = DartCuts.of(piece.outline(), piece.darts(), piece.drawn() == LineKind.CUTTING);
        cutting = CuttingLine.of(piece, cuts.closed());
        inset = cutting.hasAllowance()
                ? Allowance.of(cutting.outline(), cutting.widths(), like.flatMap(l -> l.inset))
                : Optional.empty();
        outline = inset.isPresent() ? inset.get().outline() : cuts.closed();
        List<ClosedDart> found = new ArrayList<>();
        for (int i = 0; i < piece.darts().size(); i++) {
            Optional<Curve> cut = Optional.ofNullable(cuts.cut().get(i));
            found.add(ClosedDart.on(outline, piece.darts().get(i), cut, cutting.widest()));
        }
        darts = List.copyOf(found);
    }

    public static StitchOutline of(Piece piece) {
        return new StitchOutline(piece, Optional.empty());
    }

    /** The same, taking over what is known of the line of the piece before a change. */
    static StitchOutline of(Piece piece, Optional<StitchOutline> like) {
        return new StitchOutline(piece, like);
    }

    /** The piece as it was measured. */
    public Piece piece() {
        return piece;
    }

    /** The closed stitching line, in the drawn direction; the drawn line where the allowance leaves nothing of it. */
    public Outline outline() {
        return outline;
    }

    /** Whether the allowance is so wide that no stitching line fits inside the cutting line. */
    public boolean allowanceTooWide() {
        return cutting.hasAllowance() && inset.isEmpty();
    }

    /**
     * What was worked out for a change of this piece when it was last tried, if that is still the same, so that what has
     * been found with it is found no more; else what is worked out now.
     *
     * @param key   by which the last is known, such as the edge that changes
     * @param alike whether all that is found with the one holds for the other
     */
    public <T> T again(String key, Class<T> kind, T now, BiPredicate<T, T> alike) {
        Object last = tried.get(key);
        if (kind.isInstance(last) && alike.test(kind.cast(last), now)) {
            return kind.cast(last);
        }
        tried.put(key, now);
        return now;
    }

    /** Where on the stitching line a place marked on the drawn outline is sewn. */
    public Place place(Point drawn) {
        Place known = places.get(drawn);
        if (known == null) {
            known = sewn(drawn);
            places.put(drawn, known);
        }
        return known;
    }

    private Place sewn(Point drawn) {
        if (inset.isEmpty()) {
            return outline.nearest(drawn).place();
        }
        return inset.get().place(cutting.outline().nearest(drawn).place());
    }

    /** What is known of a level across this piece, or else is found so. */
    PieceTape.Laid laid(LevelMark mark, Level level, Supplier<PieceTape.Laid> found) {
        PieceTape.Laid known = levels.get(mark);
        if (known == null || (known.level() != level && !known.level().equals(level))) {
            known = found.get();
            levels.put(mark, known);
        }
        return known;
    }

    /** The point of {@link #place(Point)}. */
    public Point point(Point drawn) {
        return outline.point(place(drawn));
    }

    /** What holds a place of the stitching line where it is. */
    public Hold hold(Place sewn) {
        Point p = outline.point(sewn);
        if (inset.isEmpty()) {
            return Hold.point(p);
        }
        Allowance.Across across = inset.get().across(sewn);
        Point before = cutting.outline().point(across.before());
        Point after = cutting.outline().point(across.after());
        return new Hold(
                p,
                before,
                after,
                cutting.kept(across.before(), before.distance(p), true),
                cutting.kept(across.after(), after.distance(p), false));
    }

    /** What holds the ends of a dart's mouth, in the drawn direction; empty for a dart inside the piece. */
    public Optional<List<Hold>> mouth(Dart dart) {
        int i = piece.darts().indexOf(dart);
        return i < 0
                ? Optional.empty()
                : darts.get(i).mouth().map(mouth -> List.of(hold(mouth.from()), hold(mouth.to())));
    }

    /** The drawn outline; where notches are drawn as part of it, it is led past them and over cut-out darts. */
    public Outline withoutNotches() {
        return cutting.notches().isEmpty() ? piece.outline() : cutting.outline();
    }

    /** Where {@link #withoutNotches()} crosses or touches itself. */
    public List<Meeting> meetings() {
        List<Meeting> known = meetings;
        if (known == null) {
            known = Validity.meetings(withoutNotches());
            meetings = known;
        }
        return known;
    }

    /** The area of the drawing that lies in both drawn outlines, as {@link Overlap#area} finds it, mm². */
    public synchronized double shared(StitchOutline other) {
        if (shared.isEmpty()) {
            shared = new WeakHashMap<>();
        }
        return shared.computeIfAbsent(other, o -> Overlap.area(piece.outline(), o.piece.outline()));
    }

    /** The tips of the notches that are drawn as part of the cutting line. */
    List<Point> notchTips() {
        List<Point> tips = new ArrayList<>();
        for (NotchCuts.Cut notch : cutting.notches()) {
            tips.add(notch.tip());
        }
        return tips;
    }

    /** The run of an edge on the stitching line; dart mouths on it are still part of it. */
    public Curve edge(Edge edge) {
        return isDartLeg(edge) ? edge.on(piece.outline()) : outline.run(place(edge.from()), place(edge.to()));
    }

    /** What of that run stays when the darts on it are closed, from mouth to mouth: what is measured along an edge. */
    public List<Curve> cloth(Edge edge) {
        List<ClosedDart.Mouth> mouths = new ArrayList<>();
        for (ClosedDart dart : dartsOn(edge)) {
            mouths.add(dart.mouth().orElseThrow());
        }
        if (mouths.isEmpty()) {
            return List.of(edge(edge));
        }
        Place from = place(edge.from());
        Place to = place(edge.to());
        mouths.sort(Comparator.comparingDouble(m -> outline.length(from, m.from())));
        List<Curve> runs = new ArrayList<>();
        Place at = from;
        for (ClosedDart.Mouth mouth : mouths) {
            if (!mouth.from().equals(at)) {
                runs.add(outline.run(at, mouth.from()));
            }
            at = mouth.to();
        }
        if (!at.equals(to)) {
            runs.add(outline.run(at, to));
        }
        return List.copyOf(runs);
    }

    /** The length of that run, mm. */
    double length(Edge edge) {
        return isDartLeg(edge)
                ? edge.on(piece.outline()).length()
                : outline.length(place(edge.from()), place(edge.to()));
    }

    /** The dart mouths that lie on an edge. */
    List<ClosedDart> dartsOn(Edge edge) {
        if (darts.isEmpty() || isDartLeg(edge)) {
            return List.of();
        }
        Place from = place(edge.from());
        Place to = place(edge.to());
        boolean whole = from.equals(to);
        List<ClosedDart> found = new ArrayList<>();
        for (ClosedDart dart : darts) {
            Optional<ClosedDart.Mouth> mouth = dart.mouth();
            boolean elsewhere = !dart.dart().edge().orElse(edge.name()).equals(edge.name());
            if (mouth.isPresent() && !elsewhere && (whole || liesOn(mouth.get(), from, to))) {
                found.add(dart);
            }
        }
        return found;
    }

    private static boolean liesOn(ClosedDart.Mouth mouth, Place from, Place to) {
        return Places.between(from, mouth.from(), to)
                && Places.between(from, mouth.to(), to)
                && Places.between(from, mouth.from(), mouth.to());
    }

    /** All darts of the piece, in its order. */
    List<ClosedDart> darts() {
        return darts;
    }

    /** An edge that ends at the point of a cut-out dart is one of its legs and does not vanish with it. */
    private boolean isDartLeg(Edge edge) {
        for (int i : cuts.cut().keySet()) {
            Dart dart = piece.darts().get(i);
            if (dart.point().distance(edge.from()) <= ClosedDart.ON_LINE
                    || dart.point().distance(edge.to()) <= ClosedDart.ON_LINE) {
                return true;
            }
        }
        return false;
    }
}
