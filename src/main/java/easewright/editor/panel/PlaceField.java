package easewright.editor.panel;

import easewright.alter.Setting;
import easewright.editor.model.Session;
import easewright.editor.model.WayForm;
import easewright.editor.model.WayPlaces;
import easewright.geom.Point;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A place, several places, or cuts from place to place: picked on the table, or written. */
final class PlaceField extends VBox {
    /** The look of a button whose place is asked for. */
    private static final String ASKING = "asking";

    private final Session session;
    private final WayForm.Field field;
    private final Consumer<List<String>> taker;
    private final boolean one;
    private final boolean cuts;

    PlaceField(Session session, WayForm.Field field, Words words, Consumer<List<String>> taker) {
        super(4);
        this.session = session;
        this.field = field;
        this.taker = taker;
        this.one = field.kind() == Setting.Kind.PLACE;
        this.cuts = field.kind() == Setting.Kind.SLASHES;
        List<String> texts = field.texts();
        int rows = one ? 1 : texts.size();
        for (int i = 0; i < rows; i++) {
            getChildren().add(row(i, i < texts.size() ? texts.get(i) : "", words));
        }
        if (!one) {
            getChildren().add(picker(texts.size(), words));
        }
    }

    private HBox row(int index, String text, Words words) {
        NameField written = new NameField(new Label(), typed -> {
            put(index, typed);
            return "";
        });
        written.show(text);
        written.setId("field-" + field.key() + (one ? "" : "-" + index));
        written.setPromptText(words.of(cuts ? "editor.way.cut.prompt" : "editor.way.place.prompt"));
        written.describe(
                field.label(), field.hint() + " " + words.of(cuts ? "editor.way.cut.hint" : "editor.way.place.hint"));
        written.getStyleClass().add("place-text");
        HBox.setHgrow(written, Priority.ALWAYS);
        HBox row = new HBox(6, written);
        if (one) {
            row.getChildren().add(picker(0, words));
        } else {
            Button away = new Button();
            away.setGraphic(Icons.of(Icons.AWAY));
            away.getStyleClass().addAll("flat", "small-icon");
            away.setAccessibleText(words.of("editor.way.remove", Map.of("what", text)));
            Hints.on(away, words.of("editor.way.remove.hint"));
            away.setOnAction(e -> put(index, ""));
            row.getChildren().add(away);
        }
        return row;
    }

    private Button picker(int index, Words words) {
        String idle = words.of(
                one
                        ? "editor.way.pick"
                        : cuts ? (index == 0 ? "editor.way.first-cut" : "editor.way.add-cut") : "editor.way.add");
        Button pick = new Button(idle);
        pick.setId("pick-" + field.key());
        pick.setMinWidth(USE_PREF_SIZE);
        pick.getStyleClass().add("small");
        pick.setAccessibleText(words.of("editor.way.pick.name", Map.of("what", field.label())));
        Hints.on(pick, field.hint() + " " + words.of("editor.way.pick.hint"));
        pick.setOnAction(e -> {
            Runnable stopped = () -> {
                pick.setText(idle);
                pick.getStyleClass().remove(ASKING);
            };
            if (cuts) {
                session.picking()
                        .askBeginning(field.key(), field.label(), p -> begun(index, p, pick, words, stopped), stopped);
            } else {
                session.picking().ask(field.key(), field.label(), p -> picked(index, p, stopped), stopped);
            }
            pick.setText(words.of(cuts ? "editor.way.picking.from" : "editor.way.picking"));
            pick.getStyleClass().add(ASKING);
        });
        return pick;
    }

    private void picked(int index, Point place, Runnable stopped) {
        stopped.run();
        put(index, WayPlaces.text(session.desk(), field.key(), place));
    }

    private void begun(int index, Point place, Button pick, Words words, Runnable stopped) {
        String text = WayPlaces.text(session.desk(), place);
        pick.setText(words.of("editor.way.picking.to"));
        session.picking()
                .askEnd(
                        field.key(),
                        field.label(),
                        place,
                        end -> {
                            stopped.run();
                            put(index, text + " > " + WayPlaces.text(session.desk(), end));
                        },
                        stopped);
    }

    /** Puts a text at its place in the list; an empty one goes. */
    private void put(int index, String text) {
        List<String> texts = new ArrayList<>(field.texts());
        if (index < texts.size()) {
            texts.set(index, text.strip());
        } else {
            texts.add(text.strip());
        }
        texts.removeIf(String::isEmpty);
        if (!texts.equals(field.texts())) {
            taker.accept(texts);
        }
    }
}
