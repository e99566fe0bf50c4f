package easewright.editor.panel;

import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** All keys in one place, over the table. F1 brings it and takes it away; the keyboard then goes on where it was. */
public final class KeysCard extends VBox {
    private static final List<String> ANYWHERE = List.of(
            "sides", "pages", "amount", "choice", "list", "field", "marks", "file", "undo", "zoom", "said", "row",
            "this");

    private static final List<String> TABLE = List.of("level", "hold", "pull", "digits", "keep", "look");
    private static final List<String> TOOL = List.of("letters", "place", "piece", "along", "click", "back");

    private final Session session;
    private Node before;

    public KeysCard(Session session) {
        this.session = session;
        setId("keys-card");
        getStyleClass().add("keys-card");
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        Parts.present(this, false);
        session.deskProperty().addListener((o, was, is) -> {
            if (isVisible() && was.unit() != is.unit()) {
                fill(is.words());
            }
        });
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                e.consume();
                turn();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            // What lies under the card is not to be gone to while it is there.
            if (e.getCode() == KeyCode.TAB) {
                e.consume();
            }
        });
    }

    /** Shows it, or takes it away. */
    public void turn() {
        boolean is = !isVisible();
        Parts.present(this, is);
        if (is) {
            before = getScene().getFocusOwner();
            fill(session.desk().words());
            lookup("#keys-close").requestFocus();
        } else if (before != null && before.getScene() == getScene()) {
            before.requestFocus();
        }
    }

    private void fill(Words words) {
        GridPane grid = new GridPane();
        grid.setHgap(18);
        grid.setVgap(3);
        List<String> said = new ArrayList<>();
        part(grid, words, "anywhere", ANYWHERE, said);
        part(grid, words, "table", TABLE, said);
        part(grid, words, "tool", TOOL, said);
        Button close = new Button(words.of("editor.keys.close"));
        close.setId("keys-close");
        close.setOnAction(e -> turn());
        // Lines of text cannot be gone to: whoever does not see them hears them with the only button.
        close.setAccessibleHelp(String.join(" ", said));
        setAlignment(Pos.CENTER);
        boolean held = isFocusWithin();
        getChildren().setAll(grid, close);
        if (held) {
            close.requestFocus();
        }
    }

    private static void part(GridPane grid, Words words, String part, List<String> keys, List<String> said) {
        Label head = new Label(words.of("editor.keys." + part));
        head.getStyleClass().add("section-title");
        GridPane.setMargin(head, new Insets(said.isEmpty() ? 0 : 8, 0, 0, 0));
        grid.addRow(grid.getRowCount(), head);
        said.add(head.getText() + ":");
        String step = words.unit() == LengthUnit.INCH ? "inch" : "cm";
        for (String key : keys) {
            Label name = new Label(words.of("editor.keys." + key));
            name.getStyleClass().add("key");
            name.setMinWidth(USE_PREF_SIZE);
            Label what = new Label(
                    words.of("editor.keys." + key + ".text", Map.of("step", words.of("editor.keys.step." + step))));
            what.setWrapText(true);
            grid.addRow(grid.getRowCount(), name, what);
            said.add(name.getText() + ": " + what.getText() + ".");
        }
    }
}
