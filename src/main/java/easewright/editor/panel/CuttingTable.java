package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Legend;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.editor.paint.TableScene;
import easewright.editor.paint.Underlay;
import easewright.editor.paint.Viewport;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;

/**
 * The table with the pieces. Paints at most once a frame, and only when something changed.
 */
public final class CuttingTable extends Region {
    /** One step nearer. */
    public static final double NEARER = 1.25;

    private final Session session;
    private final TableCanvases canvases = new TableCanvases();
    private final OncePerFrame painter = new OncePerFrame(this::paint);
    private final TableSight sight = new TableSight();
    private final TableGaze gaze = new TableGaze(sight, this::looked);
    private final TableHolds holds = new TableHolds();
    private final TableMouse mouse;
    private final DrawingBelow below;
    private final PlaceHand places;
    private final TableSpeech speech;
    private final TableKeys keys;

    /** Takes the mouse and the keys first while marks are made. */
    private Optional<MarkHand> hand = Optional.empty();

    private boolean marksOpen;

    /** The level under the pointer, which a click would choose. */
    private Optional<String> lit = Optional.empty();

    private final NameUnder name = new NameUnder();

    public CuttingTable(Session session) {
        this.session = session;
        this.places = new PlaceHand(session);
        this.below = new DrawingBelow(session, this::repaint);
        this.mouse = new TableMouse(this, session, places);
        this.keys = new TableKeys(this, session, places);
        this.speech = new TableSpeech(this, session, places, holds);
        session.picking().askProperty().addListener((o, before, now) -> asked());
        holds.onPointed(this::tell);
        setId("table");
        getStyleClass().add("cutting-table");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().setAll(canvases.layers());
        getChildren().addAll(speech.items());
        // A canvas paints what it is given even when empty; the region itself has to be there for the mouse.
        setPickOnBounds(true);
        session.deskProperty().addListener((o, before, now) -> follow(before, now));
        widthProperty().addListener(o -> resized());
        heightProperty().addListener(o -> resized());
        setOnKeyPressed(this::pressed);
        setOnKeyTyped(keys::typed);
        focusedProperty().addListener(o -> repaint());
        follow(null, session.desk());
    }

    @Override
    protected void layoutChildren() {
        canvases.layers().forEach(c -> c.relocate(0, 0));
        // What is asked for now would be painted after this picture, which would show the table as it was fitted
        // before.
        painter.catchUp();
    }

    private void resized() {
        canvases.resize(getWidth(), getHeight());
        gaze.resize(getWidth(), getHeight());
    }

    private void follow(Desk before, Desk now) {
        sight.take(now, hand);
        holds.onPieces(now.shown().pieces());
        holds.show(now, mouse.isPulling());
        speech.follow(before, now);
        if (!mouse.isPulling()) {
            speak();
        }
        gaze.follow(before, now);
        if (before != null && now.isOtherWork(before)) {
            requestLayout();
        }
        gaze.gather(mouse.isPulling());
        repaint();
    }

    /** Asks for a new picture in the next frame. */
    void repaint() {
        painter.ask();
    }

    /** From elsewhere: what was under the pointer lies at another pixel now. */
    private void looked() {
        name.gone();
        repaint();
    }

    private void paint() {
        if (isNeedsLayout()) {
            // Painted when it has the size that it will have beside what came with other work.
            painter.ask();
            return;
        }
        Underlay underlay = hand.filter(MarkHand::isOpen)
                .map(h -> below.seen(view(), getWidth(), getHeight(), canvases.pixels()))
                .orElse(Underlay.NONE);
        canvases.paint(
                session.desk(),
                view(),
                scene(),
                underlay,
                isMarking() ? List.of() : holds.grips(view()),
                lit,
                name,
                places,
                hand);
    }

    /** Whether the drawing itself is shown under the pieces while marks are made. */
    BooleanProperty drawingShownProperty() {
        return below.onProperty();
    }

    /** The desk as it is to be seen. */
    public ReadOnlyObjectProperty<Desk> seenProperty() {
        return sight.seenProperty();
    }

    /** What the lines mean that are to be seen. */
    public ReadOnlyObjectProperty<Legend> legendProperty() {
        return sight.legendProperty();
    }

    /** What is to be seen. */
    TableScene scene() {
        return sight.scene();
    }

    // ---- view ----

    public Viewport view() {
        return gaze.view();
    }

    /** Shows everything that lies on the table. */
    public void fit() {
        gaze.fit();
    }

    /** Keeps the pieces clear of what is said over the foot of the table, while all of them are in view. */
    public void makeRoom(Bounds said) {
        gaze.makeRoom(said, mouse.isPulling());
    }

    /** Nearer or farther about the middle of the view. */
    public void zoom(double factor) {
        gaze.zoom(factor);
    }

    void zoomAt(double factor, double x, double y) {
        gaze.zoomAt(factor, x, y);
    }

    public void moveView(double dx, double dy) {
        gaze.move(dx, dy);
    }

    /** Fills the view with what one size is cut from. */
    void showSize(String size) {
        gaze.showSize(size);
    }

    /** Brings a piece into the middle of the view, at the present zoom. */
    public void show(String pieceId) {
        gaze.show(pieceId);
    }

    /** Brings a place into the middle of the view, so near that all of it is well seen. */
    public void show(Pointed what) {
        gaze.show(what);
    }

    /** The same, unless all of it is in view as it is. */
    void showIfAway(Pointed what) {
        gaze.showIfAway(what);
    }

    private void speak() {
        speech.speak(hand);
    }

    /** Says and shows anew. */
    void tell() {
        speak();
        repaint();
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.FOCUS_ITEM
                ? speech.item()
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    // ---- hands ----

    private void pressed(KeyEvent e) {
        speech.heard();
        keys.pressed(e);
    }

    /** Where an amount goes on that is begun to be typed on the table. */
    void onAmount(Consumer<String> taker) {
        keys.onAmount(taker);
    }

    /** Lets a hand that makes marks work on the table. */
    public void give(MarkHand marks) {
        hand = Optional.of(marks);
        gaze.heed(marks);
        marks.follow(this::look, this::requestFocus);
    }

    /** Another tool, tick or step may show other things. */
    private void look() {
        Desk desk = session.desk();
        boolean open = hand.map(MarkHand::isOpen).orElse(false);
        if (open != marksOpen) {
            marksOpen = open;
            sight.take(desk, hand);
            gaze.marking(open);
        }
        if (sight.isOutdated(desk, hand)) {
            sight.take(desk, hand);
        }
        tell();
    }

    Optional<MarkHand> hand() {
        return hand;
    }

    TableHolds holds() {
        return holds;
    }

    /** The level whose name is written there, pixels. */
    Optional<String> levelNamedAt(double x, double y) {
        return canvases.levelNamedAt(x, y);
    }

    /** Whether a hand pulls a seam just now. */
    boolean isPulling() {
        return mouse.isPulling();
    }

    boolean isMarking() {
        return hand.map(MarkHand::isMarking).orElse(false);
    }

    /** Where the holds are on the screen, for keys and tests. */
    public List<Point> holdsOnScreen() {
        return holds.onScreen(view());
    }

    /** Shows which level a click would choose. */
    void light(Optional<String> level) {
        if (!level.equals(lit)) {
            lit = level;
            repaint();
        }
    }

    /** The pointer has come to a pixel, or with empty gone from the table. */
    void pointer(Optional<Point> pixel) {
        if (pixel.map(p -> name.moved(p, view(), scene().pieces())).orElseGet(name::gone)) {
            repaint();
        }
    }

    /** A place is asked for, or no more: the keys go to the table, so that Escape is heard. */
    private void asked() {
        if (places.isAsked()) {
            requestFocus();
        }
        setCursor(places.isAsked() ? Cursor.CROSSHAIR : Cursor.OPEN_HAND);
        tell();
    }

    /** Lets go of a seam that is being pulled and leaves it as it was. */
    void letGo() {
        mouse.letGo();
        if (!places.letGo()) {
            session.leave();
        }
    }

    /** The hand has let go of a seam and leaves it as it is: all that the change moved is looked at. */
    void letLie() {
        holds.settle();
        gaze.gather(false);
        // Nobody can hear one amount in every picture.
        tell();
    }
}
