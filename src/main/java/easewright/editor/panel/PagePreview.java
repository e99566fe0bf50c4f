package easewright.editor.panel;

import easewright.editor.paint.LeafPainter;
import easewright.print.ink.Leaf;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;

/** One page at a time, as it will be printed, with a way to turn over. */
final class PagePreview extends BorderPane {
    private static final double EDGE = 18;

    private final Canvas canvas = new Canvas();
    private final Pane room = new Pane(canvas);
    private final Button earlier = new Button();
    private final Button later = new Button();
    private final Label number = new Label();
    private final Words words;
    private List<Leaf> leaves = List.of();
    private int page;

    PagePreview(Words words) {
        this.words = words;
        setId("print-preview");
        getStyleClass().addAll("middle", "page-preview");
        room.setMinSize(0, 0);
        room.widthProperty().addListener(o -> paint());
        room.heightProperty().addListener(o -> paint());
        setCenter(room);
        turn(earlier, "print-earlier", Icons.UP, "editor.print.earlier", -1);
        turn(later, "print-later", Icons.DOWN, "editor.print.later", 1);
        number.setId("print-page");
        number.setMinWidth(110);
        number.setAlignment(Pos.CENTER);
        HBox foot = new HBox(8, earlier, number, later);
        foot.setAlignment(Pos.CENTER);
        foot.getStyleClass().add("print-pages");
        setBottom(foot);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.PAGE_DOWN || e.getCode() == KeyCode.PAGE_UP) {
                show(page + (e.getCode() == KeyCode.PAGE_DOWN ? 1 : -1));
                e.consume();
            }
        });
        show(0);
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
        double width = room.getWidth();
        double height = room.getHeight();
        canvas.setWidth(width);
        canvas.setHeight(height);
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.clearRect(0, 0, width, height);
        if (leaves.isEmpty() || width < 3 * EDGE || height < 3 * EDGE) {
            return;
        }
        Leaf leaf = leaves.get(page);
        double scale = Math.min((width - 2 * EDGE) / leaf.width(), (height - 2 * EDGE) / leaf.height());
        double left = (width - leaf.width() * scale) / 2;
        double top = (height - leaf.height() * scale) / 2;
        new LeafPainter(gc, scale, left, top).paint(leaf);
    }
}
