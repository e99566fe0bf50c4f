package easewright.editor.panel;

import easewright.ease.EaseTables;
import easewright.editor.model.Desk;
import easewright.editor.model.Garments;
import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import easewright.text.Words;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.util.StringConverter;

/** As which garment the ease is judged. */
final class JudgedAs extends HBox {
    private final Label title = new Label();
    private final ComboBox<String> as = new ComboBox<>();
    private final Session session;
    private Pattern known;
    private EaseTables tables;
    private Garments garments;
    private boolean showing;

    JudgedAs(Session session) {
        super(8);
        this.session = session;
        setAlignment(Pos.CENTER_LEFT);
        title.setMinWidth(USE_PREF_SIZE);
        as.setId("judged-as");
        as.setOnAction(e -> {
            if (!showing && as.getValue() != null) {
                session.setGarment(as.getValue());
            }
        });
        as.setConverter(new StringConverter<>() {
            @Override
            public String toString(String word) {
                return word == null ? "" : garments.said(word, session.desk().words());
            }

            @Override
            public String fromString(String word) {
                return word;
            }
        });
        getChildren().setAll(title, as);
    }

    /** What there is to choose from, of the desk shown last. */
    Garments garments() {
        return garments;
    }

    void show(Desk desk) {
        if (desk.pattern() != known || desk.reading().tables() != tables) {
            known = desk.pattern();
            tables = desk.reading().tables();
            garments = Garments.of(known, tables);
        }
        Words words = desk.words();
        showing = true;
        title.setText(words.of("editor.ease.as"));
        Heard.name(as, words.of("editor.ease.as"));
        Hints.on(as, words.of("editor.ease.as.hint"));
        if (!as.getItems().equals(garments.choices())) {
            as.getItems().setAll(garments.choices());
        }
        as.setValue(garments.chosen());
        Parts.present(this, garments.any());
        showing = false;
    }
}
