package easewright.editor.panel;

import easewright.editor.mark.Marker;
import easewright.editor.mark.Tool;
import easewright.geom.Segment;
import easewright.text.Words;
import java.util.List;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Small parts, and small things done to parts, that the panels have in common. */
final class Parts {
    /** How wide a row of a page is on the narrowest sheet, pixels. */
    private static final double NARROWEST = 426;

    private Parts() {}

    /** A heading with things to press at its right. */
    static HBox heading(Label title, Node... right) {
        title.getStyleClass().add("section-title");
        HBox row = new HBox(6, title, gap());
        row.getChildren().addAll(right);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /**
     * Lets the first of the columns in a row have what a wide sheet has more than the narrowest, so that what stands at
     * the end of the row stays beside the rest of it.
     */
    static void takeRoom(Region first, double least, Region row) {
        first.setMinWidth(least);
        first.prefWidthProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> least + Math.max(0, Math.floor(row.getWidth()) - NARROWEST), row.widthProperty()));
    }

    static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }

    /** A button that takes a tool in hand. */
    static ToggleButton tool(Tool tool, Marker marker) {
        ToggleButton button = new ToggleButton();
        button.setId("tool-" + tool.key());
        button.getStyleClass().addAll("small", "opens");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> marker.take(tool));
        return button;
    }

    static void show(ToggleButton button, Tool tool, Marker marker, Words words) {
        say(button, words, "editor.tool." + tool.key());
        button.setSelected(marker.state().tool() == tool);
    }

    /** There, or gone and leaving no gap. */
    static void present(Node part, boolean is) {
        part.setVisible(is);
        part.setManaged(is);
    }

    /** Words and hint from the bundle. */
    static void say(Labeled control, Words words, String key) {
        control.setText(words.of(key));
        Hints.on(control, words.of(key + ".hint"));
    }

    /** Names one of several buttons of the same words by what stands beside it. */
    static void about(Labeled button, String what) {
        button.setAccessibleText(button.getText() + ": " + what);
    }

    /** A small cross that takes something away. */
    static Button cross(String name, Runnable act) {
        Button cross = new Button("\u00d7");
        cross.getStyleClass().addAll("flat", "small", "cross");
        cross.setMinWidth(Region.USE_PREF_SIZE);
        name(cross, name);
        cross.setOnAction(e -> act.run());
        return cross;
    }

    /** A name for those who do not see the sign, and the same as a hint. */
    static void name(ButtonBase button, String name) {
        Hints.name(button, name);
    }

    /** Shows on the table what a row speaks of, while the pointer or the keyboard is in it. */
    static void lights(Node row, Marker marker, Supplier<List<Segment>> lines) {
        row.setOnMouseEntered(e -> marker.light(lines.get()));
        row.setOnMouseExited(e -> marker.light(List.of()));
        row.focusWithinProperty().addListener((o, was, is) -> marker.light(is ? lines.get() : List.of()));
    }
}
