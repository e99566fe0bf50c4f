package easewright.editor.panel;

import easewright.text.Words;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;

/**
 * What stands above the place for "this much, here": its title, the way to be led, and the arrow that folds it to its one
 * row. Beside a page that is read it is folded as long as nobody unfolds it.
 */
final class HereHead extends HBox {
    private final Label title = new Label();
    private final ToggleButton ask = new ToggleButton();
    private final Button less = new Button();
    private boolean beside;
    private boolean foldedHere;
    private boolean foldedBeside = true;
    private boolean small;
    private Words words;

    /**
     * @param asker  opens or closes the question where the change belongs
     * @param folder called when it is to have less room, or more again
     */
    HereHead(Consumer<Boolean> asker, Runnable folder) {
        super(8);
        title.setId("here-title");
        title.getStyleClass().add("section-title");
        ask.setId("ask-where");
        ask.getStyleClass().addAll("small", "chip", "opens");
        ask.setMinWidth(USE_PREF_SIZE);
        ask.setOnAction(e -> asker.accept(ask.isSelected()));
        less.setId("here-less");
        less.getStyleClass().addAll("small", "flat");
        less.setMinWidth(USE_PREF_SIZE);
        less.setOnAction(e -> {
            if (beside) {
                foldedBeside = !small;
            } else {
                foldedHere = !small;
            }
            folder.run();
        });
        setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(title, ask, Parts.gap(), less);
    }

    void words(Words now) {
        words = now;
        ask.setText(words.of("editor.where"));
        Hints.on(ask, words.of("editor.where.hint"));
    }

    void title(String said) {
        title.setText(said);
    }

    void asked(boolean open) {
        ask.setSelected(open);
    }

    void toQuestion() {
        ask.requestFocus();
    }

    /** Whether it stands beside a page that is read, or one on which the ease is worked at. */
    void beside(boolean page) {
        beside = page;
    }

    /** Whether nobody has unfolded it here. */
    boolean isFolded() {
        return beside ? foldedBeside : foldedHere;
    }

    /**
     * Shows what it stands above.
     *
     * @param row  whether that is one row
     * @param held whether something in it has to be answered, for which it is all there although it may be folded
     */
    void show(boolean row, boolean held) {
        small = row;
        // A press would fold nothing as long as that is so.
        Parts.present(less, !held);
        less.setGraphic(Icons.of(small ? Icons.UNFOLD : Icons.FOLD));
        Hints.name(less, words.of(small ? "editor.here.unfold" : "editor.here.fold"));
        Parts.present(ask, !small);
    }
}
