package easewright.editor.mark;

import easewright.editor.model.Begun;
import easewright.editor.model.Session;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.suggest.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The one changing thing in marking: which {@link MarkState} is the present one. What it does to the pattern goes
 * through the session and can be undone. For the window's thread only.
 */
public final class Marker {
    private final Session session;
    private final Sheets sheets = new Sheets();
    private final Suggesting suggesting;
    private final LevelHand levelHand;
    private final AskedLines lines = new AskedLines();
    private final ReadOnlyObjectWrapper<MarkState> state = new ReadOnlyObjectWrapper<>(MarkState.OFF);

    /** One that thinks at once, for where there is no window. */
    Marker(Session session) {
        this(session, Thinker.atOnce());
    }

    public Marker(Session session, Thinker thinker) {
        this.session = session;
        this.suggesting = new Suggesting(session, thinker, this::sheet, this::state, this::change);
        this.levelHand = new LevelHand(session, this::state, this::change, this::snaps);
        session.deskProperty().addListener((o, before, now) -> {
            boolean otherFile = now.isOtherWork(before);
            boolean otherScale = !before.pattern().scale().equals(now.pattern().scale());
            if (otherFile) {
                state.set(MarkState.OFF);
            } else if (otherScale) {
                change(s -> s.withTool(Tool.NONE).withLine(Optional.empty()));
            } else if (!before.pattern().equals(now.pattern())) {
                // What was pointed at may lie elsewhere now.
                light(List.of());
                askOutline(Optional.empty());
            }
            suggesting.follow();
        });
        state.addListener((o, before, now) -> suggesting.follow());
    }

    /** What is suggested. */
    public Suggesting suggesting() {
        return suggesting;
    }

    public ReadOnlyObjectProperty<MarkState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public MarkState state() {
        return state.get();
    }

    /** A level in the hand. */
    public LevelHand levelHand() {
        return levelHand;
    }

    /** What lies on the table. */
    public Sheet sheet() {
        return sheets.of(session.desk());
    }

    /** The closed lines on the sheet of which it can be asked what they are. */
    public AskedLines lines() {
        return lines;
    }

    private Snaps snaps() {
        return new Snaps(session.desk(), sheet());
    }

    private void change(UnaryOperator<MarkState> step) {
        state.set(step.apply(state.get()));
    }

    /** Opens or closes the page of marks. */
    public void open(boolean on) {
        if (on != state().on()) {
            change(s -> s.withOn(on));
        }
    }

    /** Begins with what wants to be known first: how large the drawing is, even where the file says so itself. */
    public void begin() {
        change(s -> s.withOn(true).withStep(MarkState.Step.SCALE));
    }

    public void go(MarkState.Step step) {
        if (step != state().step()) {
            goOn();
            change(s -> s.withStep(step));
        }
    }

    /** What was refused before is not said any more beside what is done now. */
    public void goOn() {
        session.goOn();
    }

    /** Shows on the table what a list speaks of. */
    public void light(List<Segment> lines) {
        if (!lines.equals(state().lit())) {
            change(s -> s.withLit(lines));
        }
    }

    /** Lists the marks of this piece. */
    public void choosePiece(String id) {
        if (!state().piece().equals(Optional.of(id))) {
            change(s -> s.withPiece(Optional.of(id)));
        }
    }

    /** The closed line under the pointer that is no outline of a piece. */
    public Optional<String> outlineAt(Point at, double reach) {
        return lines.at(sheet(), at, reach).map(OtherLines.Other::id);
    }

    /** Asks what a closed line is, beside the marks of its piece; nothing more is asked with an empty one. */
    public void askOutline(Optional<String> id) {
        id.flatMap(line -> lines.of(sheet(), line))
                .flatMap(OtherLines.Other::piece)
                .ifPresent(this::choosePiece);
        if (!state().outline().equals(id)) {
            change(s -> s.withOutline(id));
        }
    }

    /** Does it, as one step that can be undone; says in words why not if it is refused, else nothing. */
    public String attempt(MarkEdit edit) {
        try {
            session.edit(edit.of(session.desk().pattern()));
            return "";
        } catch (MarkRefused refused) {
            return session.desk().words().problem(refused.code(), refused.values());
        }
    }

    /** Does it, or tells at the foot of the table why not. */
    public boolean tryTo(MarkEdit edit) {
        try {
            session.edit(edit.of(session.desk().pattern()));
            return true;
        } catch (MarkRefused refused) {
            session.say(true, "problem." + refused.code(), refused.values());
            return false;
        }
    }

    /** Works at this level, which is then the one that stands out on the table, as long as none is in the hand. */
    public void workAt(String level) {
        if (state().tool() != Tool.LEVEL && !state().level().equals(Optional.of(level))) {
            change(s -> s.withLevel(Optional.of(level)));
        }
    }

    /** Takes the tool that puts this level on pieces, or puts it away. */
    public void takeLevel(String level) {
        boolean held = state().tool() == Tool.LEVEL && state().level().equals(Optional.of(level));
        if (held) {
            take(Tool.LEVEL);
        } else {
            holdLevel(level);
        }
    }

    /** Has the tool in hand that puts this level on pieces, also where it was there before. */
    public void holdLevel(String level) {
        goOn();
        change(s -> s.withTool(Tool.LEVEL).withLevel(Optional.of(level)));
    }

    /**
     * Sets up what was half done, with the tool in hand and its places shown.
     *
     * @return whether that can be gone on with
     */
    public boolean resume(Begun.Marking before) {
        Optional<MarkState> again = HalfMarked.again(before, state(), sheet().pattern());
        again.ifPresent(state::set);
        return again.isPresent();
    }

    /** Takes a tool in hand, or puts it away if it is the one held. */
    public void take(Tool tool) {
        goOn();
        change(s -> s.withTool(s.tool() == tool ? Tool.NONE : tool));
    }

    /** Takes back the last click; without one, puts the tool away. */
    public void back() {
        List<Snap> picks = state().picks();
        if (!picks.isEmpty()) {
            change(s -> s.withPicks(picks.subList(0, picks.size() - 1)));
        } else {
            change(s -> s.withTool(Tool.NONE).withLine(Optional.empty()));
        }
    }

    /** The piece that lies at a place of the table. */
    public Optional<String> pieceAt(Point at) {
        return snaps().pieceAt(at);
    }

    private Aim aim() {
        return new Aim(session.desk(), sheet(), state());
    }

    /** The hand moves over the table. */
    public void hover(Point at, double reach) {
        if (state().tool() != Tool.NONE) {
            hover(aim().at(at, reach));
        }
    }

    private void hover(Snap snap) {
        if (!state().over().equals(Optional.of(snap))) {
            change(s -> s.withOver(Optional.of(snap)));
        }
    }

    /** Goes to the next certain place, for the keyboard. */
    public void step(int by) {
        if (state().tool() != Tool.NONE) {
            FromPlace.next(aim().places(), state().over(), by).ifPresent(this::hover);
        }
    }

    /** Goes to the first certain place of the next piece, for the keyboard. */
    public void stepPiece(int by) {
        if (state().tool() != Tool.NONE) {
            FromPlace.onNextPiece(aim().places(), state().over(), by).ifPresent(this::hover);
        }
    }

    /** Moves the place under the hand, for the keyboard, mm. */
    public void nudge(double dx, double dy) {
        state().over().ifPresent(s -> hover(aim().moved(s, new Point(dx, dy))));
    }

    /** Clicks where the keyboard has gone. */
    public void click() {
        state().over().ifPresent(this::click);
    }

    /** Clicks on the table. */
    public void click(Point at, double reach) {
        if (state().tool() != Tool.NONE) {
            click(aim().at(at, reach));
        }
    }

    private void click(Snap snap) {
        Tool tool = state().tool();
        if (tool == Tool.KNOWN_LINE || tool == Tool.TAPE) {
            goOn();
            change(s -> LineMeasured.after(s, snap));
            return;
        }
        Optional<String> wrong = aim().wrong(snap);
        List<Snap> picks = new ArrayList<>(state().picks());
        picks.add(snap);
        if (wrong.isPresent()) {
            session.say(true, "problem." + wrong.get(), Map.of());
        } else if (picks.size() < tool.clicks()) {
            goOn();
            change(s -> s.withPicks(picks));
        } else {
            Optional<String> level = state().level();
            boolean done = tryTo(pattern -> Clicks.done(tool, picks, level, pattern));
            change(s -> s.withPicks(List.of()));
            if (done && state().step() == MarkState.Step.PIECES) {
                // What was marked is to be seen in the lists.
                snap.piece().ifPresent(this::choosePiece);
            }
        }
    }

    /** Measures a line chosen from a list. */
    public void choose(Line line) {
        change(s -> s.withPicks(List.of()).withLine(Optional.of(line)));
    }

    /**
     * The measured line is this long in truth: sets the scale of the drawing by it.
     *
     * @param statedToo whether lengths stated in numbers, such as allowances, change along
     * @throws IllegalArgumentException if no line is measured, or the scale cannot be right
     */
    public void prove(double trueMm, boolean statedToo) {
        Line line = state().line().orElseThrow(() -> new IllegalArgumentException("No line is measured"));
        double mmPerUnit = session.desk().pattern().scale().mmPerUnitX() * trueMm / line.length();
        ScaleSetting.set(session, mmPerUnit, ScaleSource.of(line, trueMm, sheet()), statedToo);
    }

    /**
     * Sets the scale of the drawing.
     *
     * @param statedToo whether lengths stated in numbers, such as allowances, change along
     * @throws IllegalArgumentException if it cannot be right
     */
    public void scale(ScaleView.Offer offer, boolean statedToo) {
        ScaleSetting.set(session, offer.mmPerUnit(), ScaleSource.of(offer.marked()), statedToo);
    }
}
