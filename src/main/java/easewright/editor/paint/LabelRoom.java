package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The places on the screen that words and lines have taken, pixels, so that no words are written over others, nor over
 * lines where that can be helped. Whoever comes first has the room: the more important words are to be placed first.
 */
public final class LabelRoom {
    /** Between words and a line, pixels. */
    private static final double AIR = 1.5;

    /** From place to place along a leader, pixels. */
    private static final double STEP = 4;

    /** How much of the view buttons and messages take at its foot, pixels. */
    static final double FOOT = 56;

    /** How much of what tells the meanings of lines takes at its head, pixels. */
    private static final double HEAD = 44;

    private final List<Box> words;
    private final List<Box> signs;
    private final Set<String> lacking;
    private final List<DrawnLine> lines = new ArrayList<>();
    private final List<DrawnLine> dear = new ArrayList<>();
    private final List<DrawnLine> faint = new ArrayList<>();
    private final Map<String, List<List<String>>> told = new HashMap<>();
    private final List<DrawnLine> leaders = new ArrayList<>();
    private final Papers papers = new Papers();
    private final Box view;

    /** Room without end. */
    LabelRoom() {
        this(new Box(-1e9, -1e9, 1e9, 1e9));
    }

    /**
     * Room as far as can be seen.
     *
     * @param view pixels
     */
    LabelRoom(Box view) {
        this(view, new ArrayList<>(), new ArrayList<>(), new HashSet<>());
    }

    private LabelRoom(Box view, List<Box> words, List<Box> signs, Set<String> lacking) {
        this.view = view;
        this.words = words;
        this.signs = signs;
        this.lacking = lacking;
    }

    /** The same room, of which only the lines that come into a part are looked at: for words that stay within it. */
    LabelRoom within(Box part) {
        LabelRoom room = new LabelRoom(view, words, signs, lacking);
        copy(lines, part, room.lines);
        copy(dear, part, room.dear);
        copy(faint, part, room.faint);
        return room;
    }

    private static void copy(List<DrawnLine> from, Box part, List<DrawnLine> to) {
        for (DrawnLine line : from) {
            if (line.comesInto(part)) {
                to.add(line);
            }
        }
    }

    /** The same room for words that come and go above those that stay. */
    public LabelRoom above() {
        LabelRoom room = new LabelRoom(view);
        room.words.addAll(words);
        room.signs.addAll(signs);
        room.lines.addAll(lines);
        room.dear.addAll(dear);
        room.faint.addAll(faint);
        room.papers.addAll(papers);
        return room;
    }

    /** Takes the place of a sign, whatever stands there; no words come over it. */
    void put(Box place) {
        signs.add(place);
    }

    /** Notes a drawn line, which words should leave to be seen. */
    void put(DrawnLine line) {
        lines.add(line);
    }

    /** Notes the outline of a piece, which is such a line. */
    void putPaper(String piece, DrawnLine outline) {
        lines.add(outline);
        papers.put(piece, outline);
    }

    /** Notes a line that no words hide as long as there is any other place: of a dart, the grain or a fold. */
    void putDear(DrawnLine line) {
        dear.add(line);
    }

    /** Notes the rows in which a level is told on a piece. */
    void tell(String piece, List<String> rows) {
        told.computeIfAbsent(piece, id -> new ArrayList<>()).add(rows);
    }

    /** What levels are told on a piece, each in its rows. */
    List<List<String>> told(String piece) {
        return told.getOrDefault(piece, List.of());
    }

    /** Notes a piece whose name is not written, or not all of it. */
    void nameLacks(String piece) {
        lacking.add(piece);
    }

    /** The pieces whose names are not written, or not wholly. */
    public Set<String> lacking() {
        return Set.copyOf(lacking);
    }

    /** Notes a level, or a line inside a piece that may be one: the labels of levels stand on such lines. */
    void putFaint(DrawnLine line) {
        faint.add(line);
    }

    /** Takes the place if neither words nor signs are there; says whether that was so. */
    boolean take(Box place) {
        boolean free = isFree(place);
        if (free) {
            words.add(place);
        }
        return free;
    }

    /** Takes the place if nothing at all is there, not even a line, and all of it is seen; says whether that was so. */
    boolean takeClear(Point middle, double width, double height) {
        return takeClear(middle, width, height, 0);
    }

    /** The same for words that are turned about their middle, radians: a slanting line is told from the words beside it. */
    boolean takeClear(Point middle, double width, double height, double turn) {
        return isClear(middle, width, height, turn) && take(around(middle, width, height, turn));
    }

    /** Whether nothing at all is there and all of it is seen. */
    boolean isClear(Point middle, double width, double height) {
        return isClear(middle, width, height, 0);
    }

    private boolean isClear(Point middle, double width, double height, double turn) {
        Box place = around(middle, width, height, turn);
        return isSeen(place)
                && isFree(place)
                && isClear(lines, middle, width, height, turn)
                && isClear(dear, middle, width, height, turn)
                && isClear(faint, middle, width, height, turn);
    }

    /** Whether words stand above the foot of the view, where buttons and messages lie over the table. */
    boolean isAboveFoot(Point middle, double height) {
        return middle.y() + height / 2 <= view.maxY() - FOOT;
    }

    /** The same, and below its head, where the meanings of lines lie over it. */
    boolean isOpenlySeen(Point middle, double height) {
        return middle.y() - height / 2 >= view.minY() + HEAD && isAboveFoot(middle, height);
    }

    /** Whether a short line that begins on an edge crosses no other line, and no words. */
    boolean isOpen(Line lead) {
        double length = lead.length();
        if (length <= 4 * AIR) {
            return true;
        }
        Point middle = lead.at(0.5).plus(lead.tangent(0).times(AIR));
        double turn = Math.atan2(
                lead.end().y() - lead.start().y(), lead.end().x() - lead.start().x());
        double wide = length - 4 * AIR;
        return isFree(around(middle, wide, AIR, turn)) && isClear(lines, middle, wide, AIR, turn);
    }

    /** Whether a pixel lies on no piece. */
    boolean isOnTable(Point pixel) {
        return papers.isOnTable(pixel);
    }

    /** Takes the place if neither words nor lines are there that must not be hidden; says whether that was so. */
    boolean takeSparing(Point middle, double width, double height) {
        Box place = around(middle, width, height);
        return isSeen(place) && isClear(dear, middle, width, height, 0) && take(place);
    }

    /** Takes the first of some middles around which nothing is but levels; empty if there is none. */
    Optional<Point> takeClear(List<Point> middles, double width, double height) {
        return takeClear(middles, width, height, middle -> true);
    }

    /**
     * The same.
     *
     * @param also what is asked of a middle besides
     */
    Optional<Point> takeClear(List<Point> middles, double width, double height, Predicate<Point> also) {
        return middles.stream()
                .filter(m -> isSeen(around(m, width, height))
                        && isClear(lines, m, width, height, 0)
                        && also.test(m)
                        && takeSparing(m, width, height))
                .findFirst();
    }

    /**
     * Whether a line can lead from a level to words: over no other piece and to none, over no words, no other such line, no
     * dart, grain or fold. A piece that lies under the level, as in a nest of sizes, is no other one.
     *
     * @param lead  from the level to the words
     * @param level a place on the level
     * @param piece on which it is
     */
    boolean leads(Line lead, Point level, String piece) {
        double length = lead.length();
        Point middle = lead.at(0.5);
        Point way = lead.end().minus(lead.start());
        double turn = Math.atan2(way.y(), way.x());
        if (papers.comesOverOther(lead, turn, level, piece)) {
            return false;
        }
        for (double at = STEP; at < length; at += STEP) {
            Point there = lead.start().plus(way.times(at / length));
            if (!isFree(words, around(there, STEP, STEP))) {
                return false;
            }
        }
        double clear = length - 2 * STEP;
        return clear <= 0 || isClear(dear, middle, clear, 0, turn) && isClear(leaders, middle, clear, 0, turn);
    }

    /** Notes a line that leads to words which stand at its end. */
    void putLeader(Line lead) {
        leaders.add(DrawnLine.through(List.of(lead.start(), lead.end())));
        // The words touch its end.
        double clear = Math.max(0.5, 1 - 2 * STEP / lead.length());
        lines.add(DrawnLine.through(List.of(lead.start(), lead.at(clear))));
    }

    /** The same, or else the first of those that are seen around which at least no words are: over a dart at last. */
    Optional<Point> take(List<Point> middles, double width, double height) {
        return takeClear(middles, width, height)
                .or(() -> middles.stream()
                        .filter(m -> takeSparing(m, width, height))
                        .findFirst())
                .or(() -> middles.stream()
                        .filter(m -> isSeen(around(m, width, height)) && take(around(m, width, height)))
                        .findFirst());
    }

    /** What is seen of a box; empty if nothing is. */
    Optional<Box> seen(Box box) {
        return box.shared(view);
    }

    /** What is seen of a straight line; empty if nothing is. */
    Optional<Line> seen(Point from, Point to) {
        return Stretch.within(view, from, to);
    }

    /**
     * The middle of what is seen of a box, and those of the squares into which it is parted.
     *
     * @param best by which the nearest comes first, where it is seen itself; else the middle of what is seen
     */
    List<Point> spread(Box box, int columns, int rows, Point best) {
        Optional<Box> shared = box.shared(view);
        if (shared.isEmpty()) {
            return List.of();
        }
        Box seen = shared.get();
        List<Point> middles = new ArrayList<>();
        middles.add(seen.centre());
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                middles.add(new Point(
                        seen.minX() + seen.width() * (column + 0.5) / columns,
                        seen.minY() + seen.height() * (row + 0.5) / rows));
            }
        }
        Point by = view.contains(best) ? best : seen.centre();
        middles.sort(Comparator.comparingDouble(by::distance));
        return middles;
    }

    /** The words that stand over a line, as there was no room beside it. */
    List<Box> crossed() {
        return words.stream()
                .filter(w -> !isClear(lines, w.centre(), w.width() - 2 * AIR, w.height() - 2 * AIR, 0) || hides(w))
                .toList();
    }

    /** Whether words hide what must not be hidden. */
    boolean hides(Box words) {
        return !isClear(dear, words.centre(), words.width() - 2 * AIR, words.height() - 2 * AIR, 0);
    }

    /** Where words stand. */
    List<Box> words() {
        return List.copyOf(words);
    }

    private boolean isFree(Box place) {
        return isFree(words, place) && isFree(signs, place);
    }

    private static boolean isFree(List<Box> taken, Box place) {
        for (Box box : taken) {
            if (box.overlaps(place)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isClear(List<DrawnLine> of, Point middle, double width, double height, double turn) {
        for (DrawnLine line : of) {
            if (line.meets(middle, width + 2 * AIR, height + 2 * AIR, turn)) {
                return false;
            }
        }
        return true;
    }

    private boolean isSeen(Box place) {
        return view.contains(place);
    }

    static Box around(Point middle, double width, double height) {
        return new Box(
                middle.x() - width / 2, middle.y() - height / 2, middle.x() + width / 2, middle.y() + height / 2);
    }

    /** The upright box around words that are turned about their middle, radians. */
    static Box around(Point middle, double width, double height, double turn) {
        double cos = Math.abs(Math.cos(turn));
        double sin = Math.abs(Math.sin(turn));
        return around(middle, width * cos + height * sin, width * sin + height * cos);
    }
}
