package easewright.editor.panel;

import easewright.editor.mark.Marker;
import easewright.editor.mark.Tool;
import easewright.editor.model.Session;
import easewright.text.Words;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** Nearer, farther, all of it, measuring, and the drawing under the pieces: the buttons in the corner of the table. */
public final class ViewButtons extends HBox {
    private Runnable keys = () -> {};

    public ViewButtons(Session session, CuttingTable table, Marker marker) {
        getStyleClass().add("view-buttons");
        OneStop.in(this);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        session.deskProperty().addListener((o, before, now) -> show(session, table, marker));
        show(session, table, marker);
    }

    /** What shows all keys. */
    public void onKeys(Runnable shower) {
        keys = shower;
    }

    /** The buttons are made for the first drawing: an empty table shows none. */
    private void show(Session session, CuttingTable table, Marker marker) {
        boolean open = session.desk().isOpen();
        if (open && getChildren().isEmpty()) {
            fill(session, table, marker);
        }
        setVisible(open);
    }

    private void fill(Session session, CuttingTable table, Marker marker) {
        Words words = session.desk().words();
        ToggleButton drawing = new ToggleButton();
        drawing.setId("view-drawing");
        dress(drawing, words, "drawing", Icons.DRAWING);
        drawing.selectedProperty().bindBidirectional(table.drawingShownProperty());
        marker.stateProperty().addListener((o, before, now) -> Parts.present(drawing, now.on()));
        Parts.present(drawing, marker.state().on());
        getChildren()
                .setAll(
                        button(words, "farther", Icons.FARTHER, () -> table.zoom(1 / CuttingTable.NEARER)),
                        button(words, "nearer", Icons.NEARER, () -> table.zoom(CuttingTable.NEARER)),
                        button(words, "all", Icons.ALL, table::fit),
                        button(words, "tape", Icons.TAPE, () -> marker.take(Tool.TAPE)),
                        drawing,
                        button(words, "keys", Icons.KEYS, keys));
    }

    private static Button button(Words words, String key, String icon, Runnable act) {
        Button button = new Button();
        button.setId("view-" + key);
        dress(button, words, key, icon);
        button.setOnAction(e -> act.run());
        return button;
    }

    private static void dress(ButtonBase button, Words words, String key, String icon) {
        button.setGraphic(Icons.of(icon));
        button.getStyleClass().add("flat");
        button.setAccessibleText(words.of("editor.view." + key));
        Hints.on(button, words.of("editor.view." + key + ".hint"));
    }
}
