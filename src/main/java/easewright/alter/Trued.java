package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One place of a pattern made true (docs/sources.md 4.5). It works out by itself what is to be drawn; what was drawn is
 * kept in the record, so that it can be taken back. Girths at marked levels stay within 0.01 mm.
 *
 * @param matter          what is trued
 * @param target          where, by name: a mate and its end, an edge and its end, a dart, a notch, a place, a piece
 * @param acceptProtected protected edges may be redrawn
 * @param made            the strokes that were drawn, as the record keeps them; empty before it is done
 * @param back            the strokes are to be drawn as they stand: this takes a truing back
 */
public record Trued(Matter matter, Map<String, String> target, boolean acceptProtected, List<String> made, boolean back)
        implements Alteration {
    static final String METHOD = "true";

    static final String MATE = "mate";
    static final String END = "end";
    static final String EDGE = "edge";
    static final String DART = "dart";
    static final String NOTCH = "notch";
    static final String PIECE = "piece";
    static final String AT = "at";

    /** What can be untrue. */
    public enum Matter {
        /** A line that goes on across a seam: waist, hem, neck or armhole bends where the pieces join. */
        JOINED_LINE,
        /** An edge that does not leave a fold or centre line square. */
        SQUARE_CORNER,
        /** A dart whose cap does not meet the seam when the dart is folded. */
        DART_CAP,
        /** A dart whose legs, which are sewn to one another, are not equally long. */
        DART_LEGS,
        /** A corner that a change left within an edge. */
        BLENDED_CORNER,
        /** A notch that does not meet the one it is sewn to. */
        NOTCHES,
        /** A cutting line that is no longer parallel to the stitching line. */
        CUTTING_LINE
    }

    /** Works out the strokes for one matter. */
    interface Truer {
        List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal;
    }

    public Trued {
        target = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(target));
        made = List.copyOf(made);
    }

    private static Trued of(Matter matter, Map<String, String> target) {
        return new Trued(matter, target, false, List.of(), false);
    }

    /**
     * The lines on either side of a seam, where they meet at one end of it.
     *
     * @param atEnd at the end of the mate's first edge, else at its start
     */
    static Trued join(String mate, boolean atEnd) {
        return of(Matter.JOINED_LINE, ordered(MATE, mate, END, atEnd ? "end" : "start"));
    }

    /** An edge where it meets the fold or centre line. */
    static Trued square(EdgeRef edge, boolean atEnd) {
        return of(Matter.SQUARE_CORNER, ordered(EDGE, edge.toString(), END, atEnd ? "end" : "start"));
    }

    static Trued cap(String piece, String dart) {
        return of(Matter.DART_CAP, ordered(PIECE, piece, DART, dart));
    }

    static Trued legs(String piece, String dart) {
        return of(Matter.DART_LEGS, ordered(PIECE, piece, DART, dart));
    }

    static Trued blend(EdgeRef edge, Point at) {
        return of(Matter.BLENDED_CORNER, ordered(EDGE, edge.toString(), AT, StrokeText.of(at)));
    }

    /**
     * @param piece the piece whose notch moves
     */
    static Trued notch(String mate, String notch, String piece) {
        return of(Matter.NOTCHES, ordered(MATE, mate, NOTCH, notch, PIECE, piece));
    }

    static Trued cut(String piece) {
        return of(Matter.CUTTING_LINE, ordered(PIECE, piece));
    }

    private static Map<String, String> ordered(String... keysAndValues) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return map;
    }

    public Trued acceptingProtected() {
        return new Trued(matter, target, true, made, back);
    }

    String target(String key) throws Refusal {
        String value = target.get(key);
        if (value == null) {
            throw Refusal.of("note-setting-missing").with("setting", key);
        }
        return value;
    }

    @Override
    public ChangeNote note() {
        Settings settings = new Settings().text("matter", Settings.name(matter));
        target.forEach(settings::text);
        return settings.flag(Way.ACCEPT, acceptProtected)
                .flag("back", back)
                .texts("stroke", made)
                .note(METHOD);
    }

    static Trued from(ChangeNote note) throws Refusal {
        Settings settings = new Settings(note);
        Map<String, String> target = new LinkedHashMap<>();
        for (String key : List.of(MATE, EDGE, END, PIECE, DART, NOTCH, AT)) {
            if (settings.has(key)) {
                target.put(key, settings.text(key));
            }
        }
        return new Trued(
                settings.choice("matter", Matter.class),
                target,
                settings.flag(Way.ACCEPT),
                settings.texts("stroke"),
                settings.flag("back"));
    }

    /** Itself: how much is drawn follows from what is untrue. */
    @Override
    public Trued withAmount(double mm) {
        return this;
    }

    @Override
    public Optional<Alteration> opposite() {
        if (made.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Stroke.opposite(parsed())
                    .map(strokes -> new Trued(
                            matter,
                            target,
                            acceptProtected,
                            strokes.stream().map(Stroke::text).toList(),
                            !back));
        } catch (Refusal unreadable) {
            return Optional.empty();
        }
    }

    private List<Stroke> parsed() throws Refusal {
        List<Stroke> strokes = new ArrayList<>();
        for (String text : made) {
            strokes.add(Stroke.parse(text));
        }
        return strokes;
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        if (back) {
            return drawn(pattern, parsed());
        }
        Optional<Altered> again = again(pattern);
        if (again.isPresent()) {
            return again.get();
        }
        if (!isOnStitching()) {
            return done(pattern, truer(false).strokes(pattern, this), List.of());
        }
        try {
            return done(pattern, true);
        } catch (Refusal keepsNoPromise) {
            // What bends near one end only may keep it.
            return done(pattern, false);
        }
    }

    private Altered done(Pattern pattern, boolean inOneCurve) throws Refusal {
        SewnDrawing drawing = SewnDrawing.of(pattern, this, truer(inOneCurve));
        if (inOneCurve && drawing.strays()) {
            throw Refusal.of("truing-not-exact");
        }
        return done(pattern, drawing.strokes(pattern), drawing.findings());
    }

    /** Whether it is worked out on stitching lines, and then drawn by whatever line a piece is drawn. */
    private boolean isOnStitching() {
        return switch (matter) {
            case JOINED_LINE, SQUARE_CORNER, DART_CAP, DART_LEGS -> true;
            case BLENDED_CORNER, NOTCHES, CUTTING_LINE -> false;
        };
    }

    /** Drawn as it was drawn, where the lines are still those that it was drawn on: another way may be found today. */
    private Optional<Altered> again(Pattern pattern) {
        if (made.isEmpty() || !isOnStitching()) {
            return Optional.empty();
        }
        try {
            List<Stroke> strokes = parsed();
            Pattern now = pattern;
            for (Stroke stroke : strokes) {
                Piece piece = Known.piece(now, stroke.piece());
                if (!stroke.continues(piece)) {
                    return Optional.empty();
                }
                now = now.withPiece(stroke.on(piece));
            }
            // Where a corner has moved on along a line, what bent it would be drawn beside it.
            boolean atCorner = matter == Matter.JOINED_LINE || matter == Matter.SQUARE_CORNER;
            if (atCorner && !new TruingPromise(pattern, now).isTrue(this)) {
                return Optional.empty();
            }
            return Optional.of(done(pattern, strokes, List.of()));
        } catch (Refusal | IllegalArgumentException otherLines) {
            return Optional.empty();
        }
    }

    private Altered done(Pattern pattern, List<Stroke> strokes, List<Finding> told) throws Refusal {
        try {
            Altered done = drawn(pattern, strokes);
            TruingPromise promise = new TruingPromise(pattern, done.pattern());
            promise.requireWayBack(strokes);
            promise.requireTrue(this);
            List<Finding> findings = new ArrayList<>(told);
            findings.addAll(done.findings());
            return new Altered(done.pattern(), done.moved(), findings);
        } catch (IllegalArgumentException tornApart) {
            throw Refusal.of("truing-not-exact");
        }
    }

    private Altered drawn(Pattern pattern, List<Stroke> strokes) throws Refusal {
        if (strokes.isEmpty()) {
            return Altered.nothing(pattern);
        }
        Pattern now = pattern;
        List<Moved> moved = new ArrayList<>();
        for (Stroke stroke : strokes) {
            Piece piece = Known.piece(now, stroke.piece());
            moved.addAll(stroke.moved(piece));
            now = now.withPiece(stroke.on(piece));
        }
        List<Finding> findings = back ? List.of() : new TruingPromise(pattern, now).consequences();
        List<String> texts = strokes.stream().map(Stroke::text).toList();
        Trued done = new Trued(matter, target, acceptProtected, texts, back);
        return new Altered(now.withChange(done.note()), moved, findings);
    }

    private Truer truer(boolean inOneCurve) {
        return switch (matter) {
            case JOINED_LINE -> new JoinTruer(inOneCurve);
            case SQUARE_CORNER -> new SquareTruer(inOneCurve);
            case DART_CAP -> new CapTruer(inOneCurve, false);
            case DART_LEGS -> new CapTruer(inOneCurve, true);
            case BLENDED_CORNER -> new BlendTruer();
            case NOTCHES -> new NotchTruer();
            case CUTTING_LINE -> new CutTruer();
        };
    }
}
