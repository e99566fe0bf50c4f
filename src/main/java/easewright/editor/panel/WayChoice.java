package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.editor.model.SeamsInFull;
import easewright.editor.model.Wanted;
import easewright.editor.model.WayForm;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** The choice of the way in which a change is made: at the seams, which can be taken hold of, or another. */
final class WayChoice extends ComboBox<WayForm.Option> {
    /** All ways are to be seen at once. */
    private static final int MOST = 16;

    private boolean showing;
    private Desk desk;

    WayChoice(Consumer<UnaryOperator<Wanted>> changer) {
        setId("way");
        setMaxWidth(Double.MAX_VALUE);
        setVisibleRowCount(MOST);
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

    void show(Desk now, Wanted wanted) {
        showing = true;
        desk = now;
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
        String method = wanted.other().map(OtherWay::method).orElse("");
        options.stream().filter(o -> o.text().equals(method)).findFirst().ifPresent(this::setValue);
        Heard.name(this, words.of("editor.way"));
        String hint =
                wanted.other().map(o -> words.of("way." + o.method() + ".hint")).orElse("");
        Hints.on(this, hint.isEmpty() ? words.of("editor.way.hint") : hint);
        showing = false;
    }
}
