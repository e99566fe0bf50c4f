package easewright.editor.panel;

import easewright.editor.model.Wanted;
import easewright.pattern.Side;
import easewright.text.Words;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;

/** On which side of the garment a change is made. */
final class SideChoice extends HBox {
    private final Label title = new Label();
    private final Map<Side, ToggleButton> buttons = new EnumMap<>(Side.class);

    /**
     * @param changer alters the wish
     */
    SideChoice(Consumer<UnaryOperator<Wanted>> changer) {
        super(8);
        setAlignment(Pos.CENTER_LEFT);
        title.setMinWidth(USE_PREF_SIZE);
        HBox choice = new HBox(6);
        getChildren().setAll(title, choice);
        ToggleGroup group = new OneOf();
        for (Side side : Side.values()) {
            ToggleButton button = new ToggleButton();
            button.setId("side-" + side.name().toLowerCase(java.util.Locale.ROOT));
            button.setToggleGroup(group);
            button.getStyleClass().addAll("small", "chip");
            button.setOnAction(e -> {
                button.setSelected(true);
                changer.accept(w -> w.withSide(side));
            });
            buttons.put(side, button);
            choice.getChildren().add(button);
        }
    }

    void show(Wanted wanted) {
        buttons.get(wanted.side()).setSelected(true);
    }

    /** How wide the word before it is at least, pixels. */
    void lead(double width) {
        title.setMinWidth(width);
    }

    void words(Words words) {
        title.setText(words.of("editor.here.side"));
        buttons.forEach((side, button) -> {
            String key = "editor.here.side." + side.name();
            button.setText(words.of(key));
            Heard.oneOf(title, button);
            Hints.on(button, words.of(key + ".hint"));
        });
    }
}
