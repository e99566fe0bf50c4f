package easewright.editor.paint;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The places on the screen that words and lines have taken, pixels, so that no words are written over others, nor over
 * lines where that can be helped. Whoever comes first has the room: the more important words are to be placed first.
 */
public final class LabelRoom {
    /** From place to place along a leader, pixels. */
    private static final double STEP = 4;

    private final List<Box> words;
    private final List<Box> signs;
    private final LaidLines lines;
    private final LaidLines dear;
    private final LaidLines faint;
    private final LaidLines leaders = new LaidLines();
    private final Told told;
    private final Papers papers = new Papers();
    private final SeenTable view;

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
        this.view = new SeenTable(view);
        words = new ArrayList<>();
        signs = new ArrayList<>();
        told = new Told();
        lines = new LaidLines();
        dear = new LaidLines();
        faint = new LaidLines();
    }

    private LabelRoom(SeenTable view, LaidLines lines, LaidLines dear, LaidLines faint, LabelRoom taken) {
        this.view = view;
        this.lines = lines;
        this.dear = dear;
        this.faint = faint;
        words = taken.words;
        signs = taken.signs;
        told = taken.told;
    }

    /** The same room, of which only the lines that come into a part are looked at: for words that stay within it. */
    LabelRoom within(Box part) {
        return new LabelRoom(view, lines.within(part), dear.within(part), faint.within(part), this);
    }

    /** The same room for words that come and go above those that stay. */
    public LabelRoom above() {
        LabelRoom room = new LabelRoom(view.box());
        room.words.addAll(words);
        room.signs.addAll(signs);
        room.lines.putAll(lines);
        room.dear.putAll(dear);
        room.faint.putAll(faint);
        room.papers.addAll(papers);
        return room;
    }

    /** Takes the place of a sign, whatever stands there; no words come over it. */
    void put(Box place) {
        signs.add(place);
    }

    /** Notes a drawn line, which words should leave to be seen. */
    void put(DrawnLine line) {
        lines.put(line);
    }

    /** Notes the outline of a piece, which is such a line. */
    void putPaper(String piece, DrawnLine outline) {
        lines.put(outline);
        papers.put(piece, outline);
    }

    /** Notes a line that no words hide as long as there is any other place: of a dart, the grain or a fold. */
    void putDear(DrawnLine line) {
        dear.put(line);
    }

    /** What the words tell. */
    public Told told() {
        return told;
    }

    /** Notes a level, or a line inside a piece that may be one: the labels of levels stand on such lines. */
    void putFaint(DrawnLine line) {
        faint.put(line);
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
        if (!view.isSeen(place)) {
            return false;
        }
        DrawnLine.Place airy = LaidLines.airy(middle, width, height, turn);
        return lines.isClear(airy) && faint.isClear(airy) && dear.isClear(airy) && isFree(place);
    }

    /** How much of the table is seen. */
    SeenTable view() {
        return view;
    }

    /** Whether a short line that begins on an edge crosses no other line, and no words. */
    boolean isOpen(Line lead) {
        double length = lead.length();
        if (length <= 4 * LaidLines.AIR) {
            return true;
        }
        Point middle = lead.at(0.5).plus(lead.tangent(0).times(LaidLines.AIR));
        double turn = Math.atan2(
                lead.end().y() - lead.start().y(), lead.end().x() - lead.start().x());
        double wide = length - 4 * LaidLines.AIR;
        return isFree(around(middle, wide, LaidLines.AIR, turn)) && lines.isClear(middle, wide, LaidLines.AIR, turn);
    }

    /** The pieces whose outlines were noted. */
    Papers papers() {
        return papers;
    }

    /** Takes the place if neither words nor lines are there that must not be hidden; says whether that was so. */
    boolean takeSparing(Point middle, double width, double height) {
        Box place = around(middle, width, height);
        return view.isSeen(place) && dear.isClear(middle, width, height, 0) && take(place);
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
                .filter(m -> view.isSeen(around(m, width, height))
                        && lines.isClear(m, width, height, 0)
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
        return clear <= 0 || dear.isClear(middle, clear, 0, turn) && leaders.isClear(middle, clear, 0, turn);
    }

    /** Notes a line that leads to words which stand at its end. */
    void putLeader(Line lead) {
        leaders.put(DrawnLine.through(List.of(lead.start(), lead.end())));
        // The words touch its end.
        double clear = Math.max(0.5, 1 - 2 * STEP / lead.length());
        lines.put(DrawnLine.through(List.of(lead.start(), lead.at(clear))));
    }

    /** The same, or else the first of those that are seen around which at least no words are: over a dart at last. */
    Optional<Point> take(List<Point> middles, double width, double height) {
        return takeClear(middles, width, height)
                .or(() -> middles.stream()
                        .filter(m -> takeSparing(m, width, height))
                        .findFirst())
                .or(() -> middles.stream()
                        .filter(m -> view.isSeen(around(m, width, height)) && take(around(m, width, height)))
                        .findFirst());
    }

    /** The words that stand over a line, as there was no room beside it. */
    List<Box> crossed() {
        return words.stream()
                .filter(w ->
                        !lines.isClear(w.centre(), w.width() - 2 * LaidLines.AIR, w.height() - 2 * LaidLines.AIR, 0)
                                || hides(w))
                .toList();
    }

    /** Whether words hide what must not be hidden. */
    boolean hides(Box words) {
        return !dear.isClear(words.centre(), words.width() - 2 * LaidLines.AIR, words.height() - 2 * LaidLines.AIR, 0);
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
