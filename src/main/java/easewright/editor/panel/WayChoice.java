package easewright.editor.panel;

import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.editor.model.SeamsInFull;
import easewright.editor.model.Wanted;
import easewright.editor.model.WayForm;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.css.PseudoClass;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The choice of the way in which a change is made: at the seams, which can be taken hold of, or another. */
final class WayChoice extends ComboBox<WayForm.Option> {
    /** All ways are to be seen at once. */
    private static final int MOST = 16;

    private boolean showing;
    private Desk desk;
    /** The way that stands in it; empty for the seams. */
    private String shown = "";

    WayChoice(Consumer<UnaryOperator<Wanted>> changer) {
        setId("way");
        setMaxWidth(Double.MAX_VALUE);
        setVisibleRowCount(MOST);
        setCellFactory(list -> new WayCell(list.getItems()));
        setButtonCell(new PlainCell());
        ListPlace.above(this);
        setConverter(new StringConverter<>() {
            @Override
            public String toString(WayForm.Option option) {
                return option == null ? "" : option.label();
            }

            @Override
            public WayForm.Option fromString(String text) {
                return null;
            }
        });
        setOnAction(e -> {
            if (!showing && getValue() != null) {
                changer.accept(w -> SeamsInFull.to(getValue().text(), w, desk));
            }
        });
    }

    /** What is chosen, in the field itself. */
    private static final class PlainCell extends ListCell<WayForm.Option> {
        @Override
        protected void updateItem(WayForm.Option option, boolean empty) {
            super.updateItem(option, empty);
            setText(empty || option == null ? "" : option.label());
        }
    }

    /** A way in the list; the first one of its family has what they do above it. */
    private final class WayCell extends ListCell<WayForm.Option> {
        private static final PseudoClass FIRST = PseudoClass.getPseudoClass("first");

        private final List<WayForm.Option> all;
        private final Label family = new Label();
        private final Label name = new Label();
        private final VBox box = new VBox(family, name);

        WayCell(List<WayForm.Option> all) {
            this.all = all;
            getStyleClass().add("way-cell");
            family.getStyleClass().addAll("quiet", "way-family");
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        }

        @Override
        protected void updateItem(WayForm.Option option, boolean empty) {
            super.updateItem(option, empty);
            boolean none = empty || option == null;
            boolean first = !none && isFirst(getIndex());
            pseudoClassStateChanged(FIRST, first);
            Parts.present(family, first);
            setGraphic(none ? null : box);
            // Not seen, but heard.
            setText(none ? null : option.label());
            if (!none) {
                name.setText(option.label());
                family.setText(desk.words()
                        .of("editor.way.family." + family(option).name().toLowerCase(Locale.ROOT)));
            }
        }

        private boolean isFirst(int index) {
            return index == 0 || index < all.size() && family(all.get(index)) != family(all.get(index - 1));
        }
    }

    private static Way.Family family(WayForm.Option option) {
        return Ways.of(option.text()).map(Way::family).orElse(Way.Family.SEAMS);
    }

    void show(Desk now, Wanted wanted) {
        boolean same = desk != null
                && desk.pattern() == now.pattern()
                && desk.size().equals(now.size())
                && desk.unit() == now.unit()
                && method(wanted).equals(shown)
                && getValue() != null
                && getValue().text().equals(shown);
        desk = now;
        if (same) {
            return;
        }
        showing = true;
        shown = method(wanted);
        Words words = now.words();
        List<WayForm.Option> options = new ArrayList<>();
        options.add(new WayForm.Option("", words.of("editor.way.seams")));
        for (WayForm.Option way : WayForm.ways(now, wanted)) {
            boolean seams = SeamsInFull.is(way.text());
            options.add(seams ? new WayForm.Option(way.text(), words.of("editor.way.seams-all")) : way);
        }
        if (!getItems().equals(options)) {
            getItems().setAll(options);
        }
        options.stream().filter(o -> o.text().equals(shown)).findFirst().ifPresent(this::setValue);
        Heard.name(this, words.of("editor.way"));
        String hint =
                wanted.other().map(o -> words.of("way." + o.method() + ".hint")).orElse("");
        Hints.on(this, hint.isEmpty() ? words.of("editor.way.hint") : hint);
        showing = false;
    }

    private static String method(Wanted wanted) {
        return wanted.other().map(OtherWay::method).orElse("");
    }
}
