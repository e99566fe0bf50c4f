package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Hold;
import easewright.editor.model.Legend;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.editor.paint.TableScene;
import easewright.editor.paint.Underlay;
import easewright.editor.paint.Viewport;
import easewright.geom.Box;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * The table with the pieces. Paints at most once a frame, and only when something changed.
 */
public final class CuttingTable extends Region {
    /** One step nearer. */
    public static final double NEARER = 1.25;

    private final Session session;
    private final TableCanvases canvases = new TableCanvases();
    private final TableMouse mouse;
    private final DrawingBelow below;
    private final PlaceHand places;
    private final TableVoice voice = new TableVoice();
    /** What was told last at the foot of the table, until a key is pressed. */
    private String news = "";

    private final OncePerFrame painter = new OncePerFrame(this::paint);

    /** Takes what is typed of an amount while the table has the keys. */
    private Consumer<String> amounts = typed -> {};

    /** Takes the mouse and the keys first while marks are made. */
    private Optional<MarkHand> hand = Optional.empty();

    private final TableOutlook outlook = new TableOutlook();
    private final TableSight sight = new TableSight();
    private final TableHolds holds = new TableHolds();
    private final Strays strays = new Strays();
    private boolean marksOpen;

    /** The level under the pointer, which a click would choose. */
    private Optional<String> lit = Optional.empty();

    public CuttingTable(Session session) {
        this.session = session;
        this.places = new PlaceHand(session);
        this.below = new DrawingBelow(session, this::repaint);
        this.mouse = new TableMouse(this, session, places);
        session.picking().askProperty().addListener((o, before, now) -> asked());
        setId("table");
        getStyleClass().add("cutting-table");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().setAll(canvases.layers());
        getChildren().addAll(voice.items());
        // A canvas paints what it is given even when empty; the region itself has to be there for the mouse.
        setPickOnBounds(true);
        session.deskProperty().addListener((o, before, now) -> follow(before, now));
        widthProperty().addListener(o -> resized());
        heightProperty().addListener(o -> resized());
        setOnKeyPressed(e -> {
            news = "";
            if (places.key(e)) {
                speak();
                repaint();
            } else if (!hand.map(h -> h.key(e, view())).orElse(false)) {
                TableKeys.handle(this, session, e);
            }
        });
        setOnKeyTyped(e -> {
            boolean free =
                    !isMarking() && !places.isAsked() && session.desk().wanted().isPresent();
            if (free && TableKeys.beginsAmount(e)) {
                e.consume();
                amounts.accept(e.getCharacter());
            }
        });
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
        outlook.resize(getWidth(), getHeight());
        if (outlook.showsAll()) {
            fit();
        }
        repaint();
    }

    private void follow(Desk before, Desk now) {
        boolean other = before == null
                || now.isOtherWork(before)
                || before.pattern().pieces().isEmpty();
        sight.take(now, hand);
        holds.show(now.takingHolds());
        if (before != null && !now.notice().equals(before.notice())) {
            news = now.notice().map(n -> now.words().of(n.key(), n.values())).orElse("");
        }
        if (before != null && before.trial().isPresent()) {
            news = session.kept().map(k -> k.words(now)).orElse(news);
        }
        speak();
        if (other
                || !before.pattern().scale().equals(now.pattern().scale())
                || !before.level().equals(now.level()) && isLevelOutOfView()) {
            fit();
        }
        gather();
        repaint();
    }

    /** Tells those who do not see the table where the keys are on it. */
    private void speak() {
        String words = CuttingTableWords.spoken(
                session.desk(), news, places.asks(), places.place(), hand.flatMap(MarkHand::tool), holds.pointed());
        setAccessibleText(words);
        if (voice.say(words) && isFocused()) {
            notifyAccessibleAttributeChanged(AccessibleAttribute.FOCUS_ITEM);
        }
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.FOCUS_ITEM
                ? voice.item()
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    /** Shows everything where a change has made pieces outside the view; the view keeps still under a hand that pulls. */
    void gather() {
        boolean strayed = !mouse.isPulling() && strays.look(scene().pieces(), outlook);
        if (strayed && !marksOpen) {
            fit();
        }
    }

    private boolean isLevelOutOfView() {
        return sight.levelAtWork().noneMatch(line -> outlook.holds(line.at(0.5)));
    }

    /** Asks for a new picture in the next frame. */
    void repaint() {
        painter.ask();
    }

    private void paint() {
        Underlay underlay = hand.filter(MarkHand::isOpen)
                .map(h -> below.seen(view(), getWidth(), getHeight(), pixels()))
                .orElse(Underlay.NONE);
        canvases.paint(
                session.desk(), view(), scene(), underlay, isMarking() ? List.of() : holds.grips(), lit, places, hand);
    }

    /** Of the screen to one of the view. */
    private double pixels() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getRenderScaleX();
    }

    /** Whether the drawing itself is shown under the pieces while marks are made. */
    BooleanProperty drawingShownProperty() {
        return below.onProperty();
    }

    // ---- view ----

    public Viewport view() {
        return outlook.view();
    }

    /** Shows everything that lies on the table. */
    public void fit() {
        Stream<Box> beside = hand.filter(MarkHand::isOpen).stream().flatMap(MarkHand::beside);
        outlook.fit(Stream.concat(sight.boxes(), beside).reduce(Box::union));
        repaint();
    }

    /** Nearer or farther about the middle of the view. */
    public void zoom(double factor) {
        outlook.zoom(factor);
        repaint();
    }

    void zoomAt(double factor, double x, double y) {
        outlook.zoomAt(factor, x, y);
        repaint();
    }

    public void moveView(double dx, double dy) {
        outlook.move(dx, dy);
        repaint();
    }

    /** Brings a piece into the middle of the view, at the present zoom. */
    public void show(String pieceId) {
        scene().pieces().stream()
                .filter(p -> p.piece().id().equals(pieceId))
                .findFirst()
                .ifPresent(p -> outlook.centre(p.piece().outline().box().centre()));
        repaint();
    }

    /** Brings a place into the middle of the view, so near that all of it is well seen. */
    public void show(Pointed what) {
        what.around().ifPresentOrElse(outlook::fill, () -> show(what.piece()));
        repaint();
    }

    // ---- hands ----

    /** Where an amount goes on that is begun to be typed on the table. */
    void onAmount(Consumer<String> taker) {
        amounts = taker;
    }

    /** Lets a hand that makes marks work on the table. */
    public void give(MarkHand marks) {
        hand = Optional.of(marks);
        marks.follow(this::look, this::requestFocus);
    }

    /** Another tool, tick or step may show other things. */
    private void look() {
        Desk desk = session.desk();
        boolean open = hand.map(MarkHand::isOpen).orElse(false);
        if (open != marksOpen) {
            marksOpen = open;
            sight.take(desk, hand);
            // While marks are made, what lies beside the pieces is of interest too.
            if (outlook.showsAll()) {
                fit();
            }
        }
        if (sight.isOutdated(desk, hand)) {
            sight.take(desk, hand);
        }
        speak();
        repaint();
    }

    Optional<MarkHand> hand() {
        return hand;
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

    List<Hold> holds() {
        return holds.all();
    }

    boolean isMarking() {
        return hand.map(MarkHand::isMarking).orElse(false);
    }

    /** Where the holds are on the screen, for keys and tests. */
    public List<Point> holdsOnScreen() {
        return holds.onScreen(view());
    }

    /** Gives the next hold the keyboard's attention. */
    void nextHold(int step) {
        if (holds.next(step)) {
            speak();
            repaint();
        }
    }

    /** Gives a hold the attention; below 0 none. */
    void pointAt(int hold) {
        if (holds.point(hold)) {
            speak();
            repaint();
        }
    }

    /** Shows which level a click would choose. */
    void light(Optional<String> level) {
        if (!level.equals(lit)) {
            lit = level;
            repaint();
        }
    }

    boolean hasPointedHold() {
        return holds.isPointed();
    }

    /** A place is asked for, or no more: the keys go to the table, so that Escape is heard. */
    private void asked() {
        if (places.isAsked()) {
            requestFocus();
        }
        speak();
        repaint();
    }

    /** Lets go of a seam that is being pulled and leaves it as it was. */
    void letGo() {
        mouse.letGo();
        if (!places.letGo()) {
            session.leave();
        }
    }
}
