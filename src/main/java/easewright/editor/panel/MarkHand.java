package easewright.editor.panel;

import easewright.editor.mark.MarkScenes;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.Thought;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.paint.MarkScene;
import easewright.editor.paint.Viewport;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** The hand that makes marks on the table, with mouse or keyboard. */
public final class MarkHand {
    /** How near a pointer has to come to something to be drawn to it, pixels. */
    private static final double REACH = 9;

    /** A letter on the table takes a tool in hand. */
    private static final Map<KeyCode, Tool> LETTERS = Map.of(
            KeyCode.E, Tool.SPLIT,
            KeyCode.D, Tool.DART,
            KeyCode.C, Tool.NOTCH,
            KeyCode.G, Tool.GRAIN,
            KeyCode.S, Tool.SEW,
            KeyCode.M, Tool.TAPE);

    private final Session session;
    private final Marker marker;
    /** The tool is led by the pointer. */
    private boolean pointing;

    private Desk seenFor;
    private Pattern seenOutcome;
    private Desk seen;

    public MarkHand(Session session, Marker marker) {
        this.session = session;
        this.marker = marker;
    }

    /** Whether marks are being made, so that seams are not to be pulled. */
    boolean isMarking() {
        return marker.state().on() || hasTool();
    }

    /** Whether the page of marks is open. */
    boolean isOpen() {
        return marker.state().on();
    }

    /** The level that is being set; none while other marks are made. */
    Optional<String> level() {
        MarkState state = marker.state();
        return state.on() && state.step() == MarkState.Step.LEVELS ? state.level() : Optional.empty();
    }

    /** What is drawn beside the pieces. */
    Stream<Box> beside() {
        return marker.sheet().loose().stream()
                .flatMap(r -> r.segments().stream())
                .map(Segment::box);
    }

    /** Whether the scale is being proved, to which the sizes of the pieces matter. */
    boolean isScaling() {
        return marker.state().on() && marker.state().step() == MarkState.Step.SCALE;
    }

    /** How far one is with the tool in hand, if there is one that is led by keys: the pointer shows its place itself. */
    Optional<MarkState> tool() {
        return hasTool() && !pointing ? Optional.of(marker.state()) : Optional.empty();
    }

    /** Takes the tool of a letter in hand; one that makes marks only while they are made. */
    private boolean takes(KeyCode letter) {
        Tool tool = LETTERS.get(letter);
        if (tool == null || tool != Tool.TAPE && !isOpen()) {
            return false;
        }
        if (tool == Tool.SEW) {
            marker.go(MarkState.Step.SEAMS);
        } else if (tool != Tool.TAPE) {
            marker.go(MarkState.Step.PIECES);
        }
        if (marker.state().tool() != tool) {
            marker.take(tool);
        }
        return true;
    }

    private boolean hasTool() {
        return marker.state().tool() != Tool.NONE;
    }

    /**
     * @param changed something else is to be seen
     * @param taken   a tool was taken, so that the keyboard is wanted on the table
     */
    void follow(Runnable changed, Runnable taken) {
        marker.stateProperty().addListener((o, before, now) -> {
            changed.run();
            if (before.tool() != now.tool() && now.tool() != Tool.NONE) {
                taken.run();
            }
        });
    }

    MarkScene scene() {
        return MarkScenes.of(
                session.desk(),
                marker.sheet(),
                marker.lines(),
                marker.state(),
                thought().map(Thought::suggestions));
    }

    /** What is suggested, where that is looked at. While it is thought about, what was suggested before. */
    private Optional<Thought> thought() {
        MarkState state = marker.state();
        return state.on() && state.step() == MarkState.Step.SUGGESTED
                ? state.thoughts().last()
                : Optional.empty();
    }

    /** While the scale is proved, pieces are called what is written on them. */
    private Optional<Pattern> named() {
        MarkState state = marker.state();
        return isScaling() ? Optional.of(marker.suggesting().named()) : Optional.empty();
    }

    /** What is to be seen on the table: while suggestions are looked at, what would come of them. */
    Desk seen(Desk desk) {
        Optional<Thought> thought = thought();
        Optional<Pattern> outcome = marker.state()
                .moving()
                .map(MarkState.Moving::shown)
                .or(() -> thought.map(t -> t.suggestions().outcome()))
                .or(this::named);
        if (outcome.isEmpty()) {
            return desk;
        }
        if (desk != seenFor || outcome.get() != seenOutcome) {
            seenFor = desk;
            seenOutcome = outcome.get();
            seen = thought.map(t -> desk.seeing(seenOutcome, t.reading())).orElseGet(() -> desk.seeing(seenOutcome));
        }
        return seen;
    }

    /** Says whether the press was for a tool or took hold of something. */
    boolean pressed(MouseEvent e, Viewport view) {
        if (e.getButton() != MouseButton.PRIMARY || !isMarking()) {
            return false;
        }
        Point at = view.toTable(e.getX(), e.getY());
        double reach = REACH / view.scale();
        if (hasTool()) {
            marker.click(at, reach);
            return true;
        }
        return marker.levelHand().grab(at, reach) || choose(at, reach);
    }

    /**
     * A click on a piece lists its marks, one on a line that is no outline asks what it is; the table may still be pushed
     * about from there.
     */
    private boolean choose(Point at, double reach) {
        if (marker.state().step() == MarkState.Step.PIECES) {
            Optional<String> line = marker.outlineAt(at, reach);
            if (line.isPresent()) {
                marker.askOutline(line);
            } else {
                marker.askOutline(Optional.empty());
                marker.pieceAt(at).ifPresent(marker::choosePiece);
            }
        }
        return false;
    }

    boolean dragged(MouseEvent e, Viewport view) {
        if (marker.state().moving().isPresent()) {
            marker.levelHand().drag(view.toTable(e.getX(), e.getY()), REACH / 2 / view.scale(), e.isAltDown());
            return true;
        }
        return hasTool() && e.isPrimaryButtonDown();
    }

    void released() {
        marker.levelHand().drop();
    }

    /** The pointer's form while marks are made, for a tool or for what it can take hold of; empty elsewhere. */
    Optional<Cursor> hovered(MouseEvent e, Viewport view) {
        Point at = view.toTable(e.getX(), e.getY());
        double reach = REACH / view.scale();
        if (hasTool()) {
            pointing = true;
            marker.hover(at, reach);
            return Optional.of(Cursor.CROSSHAIR);
        }
        if (marker.levelHand().canGrab(at, reach)) {
            return Optional.of(Cursor.V_RESIZE);
        }
        boolean choosing = isOpen() && marker.state().step() == MarkState.Step.PIECES;
        return choosing
                        && (marker.pieceAt(at).isPresent()
                                || marker.outlineAt(at, reach).isPresent())
                ? Optional.of(Cursor.HAND)
                : Optional.empty();
    }

    /** Says whether the key was for a tool. */
    boolean key(KeyEvent e, Viewport view) {
        if (e.isShortcutDown() || e.isAltDown()) {
            return false;
        }
        if (takes(e.getCode())) {
            e.consume();
            return true;
        }
        if (!hasTool()) {
            return false;
        }
        pointing = false;
        double step = TableKeys.step(session.desk().unit(), e.isShiftDown());
        switch (e.getCode()) {
            case N -> marker.step(e.isShiftDown() ? -1 : 1);
            case P -> marker.stepPiece(e.isShiftDown() ? -1 : 1);
            case ENTER, SPACE -> marker.click();
            case ESCAPE, BACK_SPACE -> marker.back();
            case LEFT -> marker.nudge(-step, 0);
            case RIGHT -> marker.nudge(step, 0);
            case UP -> marker.nudge(0, -step);
            case DOWN -> marker.nudge(0, step);
            default -> {
                return false;
            }
        }
        e.consume();
        return true;
    }
}
