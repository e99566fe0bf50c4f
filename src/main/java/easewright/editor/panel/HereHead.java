package easewright.editor.panel;

import easewright.text.Words;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;

/** What stands above the place for "this much, here": its title, the way to be led, and less room for all of it. */
final class HereHead extends HBox {
    private final Label title = new Label();
    private final ToggleButton ask = new ToggleButton();
    private final ToggleButton less = new ToggleButton();

    /**
     * @param asker  opens or closes the question where the change belongs
     * @param folder called when it is to have less room, or more again
     */
    HereHead(Consumer<Boolean> asker, Runnable folder) {
        super(8);
        title.setId("here-title");
        title.getStyleClass().add("section-title");
        ask.setId("ask-where");
        ask.getStyleClass().addAll("small", "chip");
        ask.setMinWidth(USE_PREF_SIZE);
        ask.setOnAction(e -> asker.accept(ask.isSelected()));
        less.setId("here-less");
        less.getStyleClass().addAll("small", "flat");
        less.setGraphic(Icons.of(Icons.FOLD));
        less.setOnAction(e -> {
            less.setGraphic(Icons.of(less.isSelected() ? Icons.UNFOLD : Icons.FOLD));
            folder.run();
        });
        setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(title, ask, Parts.gap(), less);
        OneStop.in(this);
    }

    void words(Words words) {
        ask.setText(words.of("editor.where"));
        Hints.on(ask, words.of("editor.where.hint"));
        Hints.name(less, words.of("editor.here.less-room"));
    }

    void title(String words) {
        title.setText(words);
    }

    void asked(boolean open) {
        ask.setSelected(open);
    }

    void toQuestion() {
        ask.requestFocus();
    }

    /** Beside a page that is read there is little room as it is. */
    void mayFold(boolean may) {
        Parts.present(less, may);
    }

    boolean isFolded() {
        return less.isSelected();
    }
}
