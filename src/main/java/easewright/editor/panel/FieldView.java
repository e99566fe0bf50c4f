package easewright.editor.panel;

import easewright.editor.model.Session;
import easewright.editor.model.WayForm;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** One setting of a way, in the control that suits its kind. */
final class FieldView extends VBox {
    /** How wide the word before a row is; pixels. */
    static final double LEAD = 86;

    private final Session session;
    private final BiConsumer<String, List<String>> taker;
    private WayForm.Field shown;

    /**
     * @param taker takes the key and the texts that stand there now
     */
    FieldView(Session session, BiConsumer<String, List<String>> taker) {
        this.session = session;
        this.taker = taker;
        getStyleClass().add("way-field");
    }

    void show(WayForm.Field field, Words words) {
        if (field.equals(shown)) {
            return;
        }
        boolean hadFocus = isFocusWithin();
        shown = field;
        Label wrong = new Label();
        Node control = switch (field.kind()) {
            case FLAG -> flag(field);
            case CHOICE -> chips(field, false, words);
            case SHARES, DARTS, PIECES, NAMES -> chips(field, true, words);
            case LEVEL, EDGE, PIECE, NAME -> list(field, words);
            case SIGNED_LENGTH -> length(field, words, wrong);
            case PLACE, PLACES, SLASHES -> new PlaceField(session, field, words, this::take);
            default -> written(field);
        };
        if (control instanceof CheckBox) {
            // Below what is chosen in the other rows.
            setMargin(control, new Insets(0, 0, 0, LEAD + 8));
            getChildren().setAll(control);
        } else {
            Label label = new Label(field.label());
            label.setMinWidth(LEAD);
            label.setPrefWidth(LEAD);
            label.setWrapText(true);
            // Where there is little room the form is scrolled, and no name is cut short.
            label.setMinHeight(USE_PREF_SIZE);
            Hints.on(label, field.hint());
            label.getStyleClass().add(field.missing() ? "field-missing" : "field-label");
            HBox row = new HBox(8, label, control);
            row.setAlignment(Pos.CENTER_LEFT);
            HBox.setHgrow(control, Priority.ALWAYS);
            Parts.present(wrong, false);
            getChildren().setAll(row, wrong);
        }
        if (hadFocus && control.isFocusTraversable()) {
            control.requestFocus();
        }
    }

    private void take(List<String> texts) {
        taker.accept(shown.key(), texts);
    }

    private void name(Control control, String id, WayForm.Field field, String label) {
        control.setId("field-" + field.key() + id);
        Heard.name(control, label);
        Hints.on(control, field.hint());
    }

    private CheckBox flag(WayForm.Field field) {
        CheckBox box = new CheckBox(field.label());
        box.setSelected(field.texts().contains("yes"));
        name(box, "", field, field.label());
        box.setOnAction(e -> take(box.isSelected() ? List.of("yes") : List.of()));
        return box;
    }

    private FlowPane chips(WayForm.Field field, boolean several, Words words) {
        FlowPane chips = new FlowPane(6, 6);
        OneStop.in(chips);
        if (field.options().isEmpty()) {
            Label none = new Label(words.of("editor.way.nothing"));
            none.getStyleClass().add("quiet");
            chips.getChildren().add(none);
        }
        for (WayForm.Option option : field.options()) {
            ToggleButton chip = new ToggleButton(option.label());
            chip.getStyleClass().addAll("small", "chip");
            chip.setSelected(field.chosen().contains(option.text()));
            name(chip, "-" + option.text(), field, field.label() + ": " + option.label());
            chip.setOnAction(e -> {
                // What is shown follows what then stands there, which may be what stood there before.
                chip.setSelected(field.chosen().contains(option.text()));
                take(several ? field.toggled(option.text()) : List.of(option.text()));
            });
            chips.getChildren().add(chip);
        }
        return chips;
    }

    private ComboBox<WayForm.Option> list(WayForm.Field field, Words words) {
        ComboBox<WayForm.Option> box = new ComboBox<>();
        WayForm.Option none =
                new WayForm.Option("", words.of(field.required() ? "editor.way.choose" : "editor.way.none"));
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(WayForm.Option option) {
                return option == null ? "" : option.label();
            }

            @Override
            public WayForm.Option fromString(String text) {
                return none;
            }
        });
        box.getItems().add(none);
        box.getItems().addAll(field.options());
        box.setValue(field.options().stream()
                .filter(o -> field.texts().contains(o.text()))
                .findFirst()
                .orElse(none));
        box.setMaxWidth(Double.MAX_VALUE);
        name(box, "", field, field.label());
        box.setOnAction(e -> take(
                box.getValue() == null || box.getValue().text().isEmpty()
                        ? List.of()
                        : List.of(box.getValue().text())));
        return box;
    }

    /** A setting for which there is no better control: several with semicolons between them. */
    private TextField written(WayForm.Field field) {
        NameField text = new NameField(new Label(), typed -> {
            take(typed.isBlank() ? List.of() : List.of(typed.strip()));
            return "";
        });
        text.show(String.join("; ", field.texts()));
        text.setId("field-" + field.key());
        text.describe(field.label(), field.hint());
        return text;
    }

    private LengthField length(WayForm.Field field, Words words, Label wrong) {
        LengthField length =
                new LengthField(wrong, mm -> take(mm.isPresent() ? List.of(written(mm.getAsDouble())) : List.of()));
        length.setId("field-" + field.key());
        length.setPrefWidth(104);
        OptionalDouble now =
                field.texts().stream().findFirst().map(FieldView::mm).orElse(OptionalDouble.empty());
        length.show(now.isPresent() ? words.signed(now.getAsDouble()) : "", words.unit());
        length.describe(field.label(), field.hint());
        return length;
    }

    private static String written(double mm) {
        return new BigDecimal(Double.toString(mm)).toPlainString() + " mm";
    }

    private static OptionalDouble mm(String text) {
        try {
            return OptionalDouble.of(Lengths.parse(text, LengthUnit.MM));
        } catch (Unreadable unreadable) {
            return OptionalDouble.empty();
        }
    }
}
