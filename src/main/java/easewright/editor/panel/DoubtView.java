package easewright.editor.panel;

import easewright.editor.model.Doubt;
import easewright.text.Words;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Asks about an amount that is hardly meant, beside the field in which it was typed. */
final class DoubtView extends VBox {
    private final Label question = new Label();
    private final Button yes = new Button();
    private final Button rather = new Button();
    private final DoubleConsumer taker;

    /**
     * @param taker takes the amount that is meant, mm
     */
    DoubtView(DoubleConsumer taker) {
        super(6);
        this.taker = taker;
        setId("doubt");
        getStyleClass().add("advice");
        question.setWrapText(true);
        question.setMinHeight(USE_PREF_SIZE);
        yes.setId("doubt-yes");
        rather.setId("doubt-rather");
        yes.getStyleClass().add("small");
        rather.getStyleClass().add("small");
        getChildren().setAll(question, new HBox(8, rather, yes));
        show(Optional.empty(), Words.english(easewright.text.LengthUnit.CM));
    }

    void show(Optional<Doubt> doubt, Words words) {
        Parts.present(this, doubt.isPresent());
        doubt.ifPresent(d -> {
            question.setText(d.words());
            offer(yes, words.of("editor.doubt.yes", Map.of("amount.signed", d.amount())), d.amount());
            Hints.on(yes, words.of("editor.doubt.yes.hint"));
            Parts.present(rather, d.rather().isPresent());
            d.rather().ifPresent(mm -> offer(rather, Doubt.no(mm, words), mm));
            Hints.on(rather, words.of("editor.doubt.rather.hint"));
        });
    }

    private void offer(Button button, String text, double mm) {
        button.setText(text);
        button.setOnAction(e -> taker.accept(mm));
    }
}
