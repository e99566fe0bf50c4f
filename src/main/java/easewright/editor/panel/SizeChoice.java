package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.pattern.PatternPart;
import easewright.text.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** Which size is at work; nothing to be seen where the pattern comes in one. */
final class SizeChoice extends FlowPane {
    private final Session session;
    private final Node beside;
    private final Consumer<String> looked;
    private final Label title = new Label();
    private List<String> sizes = List.of();

    /**
     * @param beside what else is said of the size, at the end of the line
     * @param looked shows the pieces of a size
     */
    SizeChoice(Session session, Node beside, Consumer<String> looked) {
        super(4, 4);
        this.looked = looked;
        this.beside = beside;
        FlowPane.setMargin(beside, new Insets(0, 0, 0, 12));
        this.session = session;
        setId("size-choice");
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("size-choice");
    }

    void show(Desk desk) {
        List<String> now = PatternPart.sizes(desk.pattern());
        boolean several = now.size() > 1;
        Parts.present(this, several);
        if (!now.equals(sizes)) {
            sizes = now;
            fill(desk.words());
        }
        getChildren().stream()
                .filter(ToggleButton.class::isInstance)
                .map(ToggleButton.class::cast)
                .forEach(b -> b.setSelected(
                        desk.size().map(s -> s.equals(b.getText())).orElse(false)));
    }

    private void fill(Words words) {
        title.setText(words.of("editor.size-choice"));
        getChildren().setAll(title);
        ToggleGroup group = new OneOf();
        for (String size : sizes) {
            ToggleButton button = new ToggleButton(size);
            button.setMnemonicParsing(false);
            button.setToggleGroup(group);
            button.getStyleClass().addAll("small", "chip");
            button.setAccessibleText(words.of("editor.size-choice") + " " + size);
            Hints.on(button, words.of("editor.size-choice.hint"));
            button.setOnAction(e -> {
                button.setSelected(true);
                session.chooseSize(size);
                looked.accept(size);
            });
            getChildren().add(button);
        }
        getChildren().add(beside);
    }
}
