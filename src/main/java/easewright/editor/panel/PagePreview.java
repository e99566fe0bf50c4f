package easewright.editor.panel;

import easewright.editor.paint.LeafPainter;
import easewright.print.ink.Leaf;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;

/** One page at a time, as it will be printed, with a way to turn over and to read it from near. */
final class PagePreview extends BorderPane {
    private static final double EDGE = 18;

    /** From near a page is at least so many times as large. */
    private static final double NEARER = 2;

    /** More the graphics of some machines cannot hold in one picture, pixels. */
    private static final double MOST = 4000;

    /** Of what is seen, the part that an arrow key goes on by. */
    private static final double STEP = 0.2;

    private final Canvas canvas = new Canvas();
    private final Pane paper = new Pane(canvas);
    private final ScrollPane room = new ScrollPane(paper);
    private final Button earlier = new Button();
    private final Button later = new Button();
    private final Label number = new Label();
    private final Button near = new Button();
    private final ReadOnlyBooleanWrapper nearer = new ReadOnlyBooleanWrapper(false);
    private final Words words;
    private List<Leaf> leaves = List.of();
    private int page;

    PagePreview(Words words) {
        this.words = words;
        setId("print-preview");
        getStyleClass().addAll("middle", "page-preview");
        room.setMinSize(0, 0);
        room.setFocusTraversable(false);
        room.getStyleClass().add("page-room");
        room.viewportBoundsProperty().addListener(o -> paint());
        canvas.setOnMouseClicked(e -> {
            if (e.isStillSincePress()) {
                come(!nearer.get());
            }
        });
        near.setId("print-larger");
        near.setOnAction(e -> come(!nearer.get()));
        setCenter(room);
        turn(earlier, "print-earlier", Icons.UP, "editor.print.earlier", -1);
        turn(later, "print-later", Icons.DOWN, "editor.print.later", 1);
        number.setId("print-page");
        number.setMinWidth(110);
        number.setAlignment(Pos.CENTER);
        HBox foot = new HBox(8, earlier, number, later, near);
        foot.setAlignment(Pos.CENTER);
        foot.getStyleClass().add("print-pages");
        setBottom(foot);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setOnKeyPressed(this::key);
        come(false);
        show(0);
    }

    /** Whether the page is seen from near. */
    ReadOnlyBooleanProperty nearerProperty() {
        return nearer.getReadOnlyProperty();
    }

    private void key(KeyEvent e) {
        boolean here = e.getTarget() == this;
        switch (e.getCode()) {
            case PAGE_DOWN, PAGE_UP -> show(page + (e.getCode() == KeyCode.PAGE_DOWN ? 1 : -1));
            case ENTER -> {
                if (!here) {
                    return;
                }
                come(!nearer.get());
            }
            case ESCAPE -> {
                if (!nearer.get()) {
                    return;
                }
                come(false);
            }
            case UP, DOWN, LEFT, RIGHT -> {
                if (!here || !nearer.get()) {
                    return;
                }
                go(e.getCode());
            }
            default -> {
                return;
            }
        }
        e.consume();
    }

    private void go(KeyCode arrow) {
        Bounds seen = room.getViewportBounds();
        double across = STEP * seen.getWidth() / Math.max(1, paper.getWidth() - seen.getWidth());
        double down = STEP * seen.getHeight() / Math.max(1, paper.getHeight() - seen.getHeight());
        switch (arrow) {
            case LEFT -> room.setHvalue(Math.max(0, room.getHvalue() - across));
            case RIGHT -> room.setHvalue(Math.min(1, room.getHvalue() + across));
            case UP -> room.setVvalue(Math.max(0, room.getVvalue() - down));
            default -> room.setVvalue(Math.min(1, room.getVvalue() + down));
        }
    }

    /** From near, where its writing is read, or so far away that all of it is seen. */
    private void come(boolean close) {
        nearer.set(close);
        room.setPannable(close);
        room.setVvalue(0);
        room.setHvalue(0);
        canvas.setCursor(close ? Cursor.DEFAULT : Cursor.HAND);
        String key = close ? "editor.print.whole-page" : "editor.print.larger";
        near.setText(words.of(key));
        Hints.on(near, words.of(key + ".hint"));
        setAccessibleHelp(words.of(key + ".hint"));
        if (close) {
            requestFocus();
        }
        paint();
    }

    private void turn(Button button, String id, String icon, String key, int by) {
        button.setId(id);
        button.setGraphic(Icons.of(icon));
        button.getStyleClass().add("flat");
        Hints.name(button, words.of(key));
        button.setOnAction(e -> show(page + by));
    }

    /**
     * Shows other pages.
     *
     * @param anew from the first one on; otherwise the same one, if there is one
     */
    void give(List<Leaf> pages, boolean anew) {
        leaves = List.copyOf(pages);
        show(anew ? 0 : Math.min(page, Math.max(0, leaves.size() - 1)));
    }

    private void show(int wanted) {
        page = Math.max(0, Math.min(wanted, leaves.size() - 1));
        room.setVvalue(0);
        boolean had = earlier.isFocused() || later.isFocused();
        earlier.setDisable(page <= 0);
        later.setDisable(page >= leaves.size() - 1);
        if (had && (earlier.isFocused() ? earlier : later).isDisabled()) {
            // An arrow that leads no further hands the keys on.
            (!earlier.isDisabled() ? earlier : !later.isDisabled() ? later : this).requestFocus();
        }
        String said = leaves.isEmpty()
                ? ""
                : words.of("editor.print.page", Map.of("number", page + 1, "count", leaves.size()));
        number.setText(said);
        setAccessibleText(said);
        paint();
    }

    private void paint() {
        double wide = room.getViewportBounds().getWidth();
        double high = room.getViewportBounds().getHeight();
        near.setDisable(leaves.isEmpty());
        double scale = 0;
        if (!leaves.isEmpty() && wide >= 3 * EDGE && high >= 3 * EDGE) {
            Leaf leaf = leaves.get(page);
            double fits = (wide - 2 * EDGE) / leaf.width();
            double whole = Math.min(fits, (high - 2 * EDGE) / leaf.height());
            double most = (MOST - 2 * EDGE) / Math.max(leaf.width(), leaf.height());
            scale = nearer.get() ? Math.max(whole, Math.min(Math.max(fits, NEARER * whole), most)) : whole;
        }
        double width = scale == 0 ? wide : Math.max(wide, leaves.get(page).width() * scale + 2 * EDGE - 1);
        double height = scale == 0 ? high : Math.max(high, leaves.get(page).height() * scale + 2 * EDGE - 1);
        canvas.setWidth(width);
        canvas.setHeight(height);
        paper.setMinSize(width, height);
        paper.setPrefSize(width, height);
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.clearRect(0, 0, width, height);
        if (scale == 0) {
            return;
        }
        Leaf leaf = leaves.get(page);
        double left = (width - leaf.width() * scale) / 2;
        double top = (height - leaf.height() * scale) / 2;
        new LeafPainter(gc, scale, left, top).paint(leaf);
    }
}
