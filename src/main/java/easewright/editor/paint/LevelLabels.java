package easewright.editor.paint;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;

/**
 * Writes what the levels of one piece are called and how wide it is there: on its line, else beyond its ends or beside it
 * with a line that leads there, in two rows, with a shortened name; of a level that is not worked at the name alone at
 * last. A dart, the grain and a fold are hidden by none as long as there is any other place.
 */
final class LevelLabels {
    private final GraphicsContext gc;
    private final Viewport view;
    private final Ink ink;
    private final TableScene.PieceSight sight;
    private final LabelRoom room;
    private final LevelForms forms;
    private final List<Placed> placed = new ArrayList<>();
    private final Set<String> labelled = new HashSet<>();

    LevelLabels(GraphicsContext gc, Viewport view, Ink ink, TableScene.PieceSight sight, LabelRoom room) {
        this.gc = gc;
        this.view = view;
        this.ink = ink;
        this.sight = sight;
        this.room = room;
        forms = new LevelForms(view, sight, room.view());
    }

    boolean isAside() {
        return sight.aside();
    }

    private Stream<TableScene.LevelSight> atWork() {
        return sight.levels().stream().filter(TableScene.LevelSight::chosen);
    }

    /** A label that has found its place. */
    private record Placed(LevelLabel label, Point at) {}

    /** Whether a label of a level at work had room in small letters alone. */
    boolean isCompact() {
        return placed.stream().anyMatch(p -> p.label().isCompact());
    }

    /**
     * Writes what has found its place.
     *
     * @param compact in small letters, as another piece has to: those of one level are read together
     */
    void write(boolean compact) {
        placed.forEach(p -> {
            LevelLabel label = compact && !p.label().isCompact() && p.label().isAtWork()
                    ? p.label().inSmallLetters()
                    : p.label();
            label.write(gc, ink, p.at());
        });
        placed.clear();
    }

    /** How far from their lines labels may stand. */
    enum Reach {
        ON_LINE,
        /** On it, or above or below it. */
        NEAR,
        /** Or off its ends. */
        BESIDE,
        /** Or on a leader, which may take it to where it seems to be of no piece. */
        LED
    }

    /**
     * How the labels of levels at work are set, alike on all pieces as long as that goes: they are read together.
     *
     * @param reach how far they go in that form rather than in another one nearer to their lines
     */
    record Common(LevelForms.Form form, Reach reach) {}

    /** In this order it is tried beyond their lines to set all of them alike. */
    private static final List<Common> ALIKE = List.of(
            new Common(LevelForms.Form.ONE_ROW, Reach.BESIDE),
            new Common(LevelForms.Form.TWO_ROWS, Reach.BESIDE),
            new Common(LevelForms.Form.COMPACT, Reach.NEAR),
            new Common(LevelForms.Form.ONE_ROW, Reach.LED),
            new Common(LevelForms.Form.TWO_ROWS, Reach.LED));

    /**
     * The best form in which all of them have room on their lines; else that in which all have room, beside their lines too,
     * in small letters rather than on leaders; two rows where there is none.
     */
    static Common common(List<LevelLabels> pieces, LabelRoom room) {
        List<LevelLabels> now =
                pieces.stream().filter(piece -> !piece.isAside()).toList();
        for (LevelForms.Form form : LevelForms.Form.values()) {
            LabelRoom trial = room.above();
            if (now.stream().allMatch(piece -> piece.hasRoom(form, trial))) {
                return new Common(form, Reach.ON_LINE);
            }
        }
        for (Common way : ALIKE) {
            LabelRoom trial = room.above();
            if (now.stream().allMatch(piece -> piece.in(trial).goes(way))) {
                return way;
            }
        }
        return new Common(LevelForms.Form.TWO_ROWS, Reach.ON_LINE);
    }

    private LevelLabels in(LabelRoom other) {
        return new LevelLabels(gc, view, ink, sight, other);
    }

    private boolean goes(Common way) {
        return atWork().allMatch(level -> {
            Optional<LevelLabel> label = forms.of(level, way.form());
            return label.isEmpty() || write(level, label, l -> within(l, way.reach()));
        });
    }

    private Optional<Point> within(LevelLabel l, Reach reach) {
        return onLine(l)
                .or(() -> reach.compareTo(Reach.NEAR) < 0 ? Optional.empty() : aboveOrBelow(l))
                .or(() -> reach.compareTo(Reach.BESIDE) < 0 ? Optional.empty() : beyond(l))
                .or(() -> reach.compareTo(Reach.LED) < 0 ? Optional.empty() : led(l));
    }

    private boolean hasRoom(LevelForms.Form form, LabelRoom trial) {
        return atWork().allMatch(level -> forms.of(level, form)
                .map(l -> l.fitsItsLevel()
                        && trial.takeClear(l.places().onLine(), l.width(), l.height())
                                .isPresent())
                .orElse(true));
    }

    /**
     * The label of the level at work, always with its name and how often the width counts.
     *
     * @param common in which it is set if there is room, alike on all pieces
     */
    void atWork(Common common) {
        List<LevelForms.Form> ways = new ArrayList<>(List.of(LevelForms.Form.values()));
        ways.remove(common.form());
        ways.add(0, common.form());
        List<LevelForms.Form> large =
                ways.stream().filter(form -> form != LevelForms.Form.COMPACT).toList();
        atWork().forEach(level -> {
            boolean done = write(level, forms.of(level, common.form()), l -> within(l, common.reach()))
                    || write(level, ways, this::onLine)
                    || write(level, ways, this::aboveOrBelow)
                    || write(level, large, this::beyond)
                    || write(level, large, this::led)
                    || write(level, forms.of(level, LevelForms.Form.COMPACT), this::led)
                    || write(level, forms.of(level, LevelForms.Form.TWO_ROWS), this::over);
            if (done) {
                labelled.add(level.level());
            }
        });
    }

    private boolean write(
            TableScene.LevelSight level, List<LevelForms.Form> ways, Function<LevelLabel, Optional<Point>> place) {
        return ways.stream().anyMatch(form -> write(level, forms.of(level, form), place));
    }

    private boolean write(
            TableScene.LevelSight level, Optional<LevelLabel> label, Function<LevelLabel, Optional<Point>> place) {
        Optional<Point> at = label.flatMap(place);
        at.ifPresent(middle -> {
            LevelLabel words = label.orElseThrow();
            placed.add(new Placed(words, middle));
            words.leader(middle).ifPresent(room::putLeader);
            room.told()
                    .level(
                            sight.piece().id(),
                            level.level(),
                            words.rows(),
                            LabelRoom.around(middle, words.width(), words.height()));
        });
        return at.isPresent();
    }

    private Optional<Point> aboveOrBelow(LevelLabel l) {
        return apart(l, l.places().besideLine());
    }

    private Optional<Point> beyond(LevelLabel l) {
        return take(l, onOwnSide(l)).or(() -> take(l, l.places().offEnds()));
    }

    /** Off the ends of its line, where no other piece lies close by: beside that one it would seem to be of it. */
    private List<Point> onOwnSide(LevelLabel l) {
        return l.places().offEnds().stream()
                .filter(at -> !room.papers()
                        .isCloseToOther(
                                at,
                                l.width(),
                                l.height(),
                                l.middle(),
                                sight.piece().id()))
                .toList();
    }

    /** On a leader, at last where something may come to lie over the table. */
    private Optional<Point> led(LevelLabel l) {
        Map<Boolean, List<Point>> middles = l.places().onLeader().stream()
                .collect(Collectors.partitioningBy(at -> room.view().isOpenlySeen(at, l.height())));
        return apart(l, middles.get(true)).or(() -> apart(l, middles.get(false)));
    }

    /** The same apart from all levels: on the line of another one it would seem to be of that. */
    private Optional<Point> apart(LevelLabel l, List<Point> middles) {
        // No stream: most of hundreds of places are refused, in every picture of a pull.
        for (Point at : middles) {
            boolean clear = isClearOfRim(l, at) && room.isClear(at, l.width(), l.height()) && leads(l, at);
            if (clear && room.takeClear(at, l.width(), l.height())) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private Optional<Point> take(LevelLabel l, List<Point> middles) {
        return room.takeClear(middles, l.width(), l.height(), at -> isClearOfRim(l, at) && leads(l, at));
    }

    /** Off the paper it stands clear of the cutting line as well, if it can. */
    private Optional<Point> onLine(LevelLabel l) {
        return l.fitsItsLevel()
                ? apart(l, l.places().offPaper()).or(() -> take(l, l.places().onLine()))
                : Optional.empty();
    }

    private boolean isClearOfRim(LevelLabel l, Point at) {
        return room.view().isClearOfRim(at, l.width(), l.height());
    }

    private boolean leads(LevelLabel l, Point at) {
        return room.leads(
                l.leader(at).orElse(new Line(at, at)), l.middle(), sight.piece().id());
    }

    /** Over lines of its own piece, a dart last of all; of a much narrower piece it would seem to be of the next one. */
    private Optional<Point> over(LevelLabel l) {
        if (!l.fitsItsLevel()) {
            return Optional.empty();
        }
        List<Point> middles = new ArrayList<>(l.places().onLine());
        middles.addAll(l.places().besideLine());
        middles.removeIf(at -> !isClearOfRim(l, at));
        return room.take(middles, l.width(), l.height());
    }

    /** On a large piece the names and widths of the other levels, where they are clear of everything. */
    void clearOthers() {
        if (sight.piece().outline().box().width() * view.scale() >= MarkPainter.LEAST_ROOM) {
            for (TableScene.LevelSight level : atRest()) {
                if (write(level, forms.of(level, LevelForms.Form.ONE_ROW), this::onLine)) {
                    labelled.add(level.level());
                }
            }
        }
    }

    /** The names and widths of the other levels, or their names alone, where they have room; nearer there is more. */
    void others() {
        for (TableScene.LevelSight level : atRest()) {
            // In two rows on its line it is nearer to what it is about than in one beyond the piece.
            boolean done = write(level, forms.of(level, LevelForms.Form.ONE_ROW), this::onLine)
                    || write(level, forms.of(level, LevelForms.Form.TWO_ROWS), this::onLine)
                    || write(level, forms.of(level, LevelForms.Form.ONE_ROW), this::free)
                    || write(level, forms.of(level, LevelForms.Form.TWO_ROWS), this::free)
                    || write(level, forms.named(level), this::free)
                    || write(level, forms.shortened(level), this::free);
            if (done) {
                labelled.add(level.level());
            }
        }
    }

    private List<TableScene.LevelSight> atRest() {
        return sight.levels().stream()
                .filter(level -> !level.chosen() && !labelled.contains(level.level()))
                .toList();
    }

    /** Takes the best place where it hides nothing. */
    private Optional<Point> free(LevelLabel l) {
        return onLine(l)
                .or(() -> apart(l, onOwnSide(l)))
                .or(() -> l.fitsItsLevel() ? apart(l, l.places().besideLine()) : Optional.empty())
                .or(() -> apart(l, l.places().offEnds()));
    }
}
