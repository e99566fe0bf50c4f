package easewright.editor.panel;

import easewright.editor.mark.LevelElsewhere;
import easewright.editor.mark.LevelLeftOut;
import easewright.editor.mark.Marker;
import easewright.text.Words;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** On the card of a level: the press for other sizes, and that for pieces which its girth leaves out. */
final class LevelOffer extends VBox {
    private final Button everywhere = new Button();
    private final Label leftOut = new Label();
    private final Button putThere = new Button();
    private final HBox open = new HBox(8, leftOut, putThere);
    private LevelElsewhere offered;
    private String level = "";

    LevelOffer(Marker marker) {
        super(6);
        everywhere.getStyleClass().add("small");
        everywhere.setOnAction(e -> marker.tryTo(offered::of));
        leftOut.getStyleClass().add("complaint");
        leftOut.setWrapText(true);
        leftOut.setMinHeight(USE_PREF_SIZE);
        leftOut.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(leftOut, Priority.ALWAYS);
        putThere.getStyleClass().add("small");
        putThere.setMinWidth(USE_PREF_SIZE);
        putThere.setOnAction(e -> marker.tryTo(p -> LevelLeftOut.filled(p, level)));
        getChildren().setAll(everywhere, open);
    }

    void show(String name, LevelElsewhere sizes, Words words) {
        level = name;
        offered = sizes;
        String id = name.replace(' ', '-');
        Parts.present(everywhere, sizes.isOffered());
        everywhere.setId("level-everywhere-" + id);
        everywhere.setText(sizes.press(words));
        Hints.on(everywhere, sizes.hint(words));
        Parts.about(everywhere, name);
        Parts.present(open, sizes.leftOut().isAny());
        leftOut.setText(sizes.leftOut().words(words));
        putThere.setId("level-put-there-" + id);
        putThere.setText(words.of("editor.level.put-there"));
        Hints.on(putThere, sizes.leftOut().hint(words));
        Parts.about(putThere, leftOut.getText());
        Parts.present(this, sizes.isOffered() || sizes.leftOut().isAny());
    }
}
