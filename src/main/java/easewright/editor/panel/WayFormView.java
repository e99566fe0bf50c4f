package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.editor.model.WayForm;
import easewright.text.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The settings of a way, asked for in the form that its description makes. */
final class WayFormView extends VBox {
    private final Session session;
    private final Consumer<UnaryOperator<Wanted>> changer;
    private Optional<WayForm> shown = Optional.empty();

    /**
     * @param changer alters the wish
     */
    WayFormView(Session session, Consumer<UnaryOperator<Wanted>> changer) {
        this.session = session;
        this.changer = changer;
        setId("way-form");
        getStyleClass().add("way-form");
        Parts.present(this, false);
    }

    void show(Desk desk) {
        Optional<WayForm> form = desk.wanted().flatMap(Wanted::other).map(o -> WayForm.of(o, desk));
        Parts.present(this, form.isPresent());
        if (form.isPresent() && !form.equals(shown)) {
            build(form.get(), desk.words());
        }
        if (form.isEmpty()) {
            if (shown.isPresent()) {
                // Nothing is left that could take the place asked for.
                session.picking().stop();
            }
            getChildren().clear();
        }
        shown = form;
    }

    private void build(WayForm form, Words words) {
        boolean same = shown.isPresent() && keys(shown.get()).equals(keys(form));
        if (!same) {
            session.picking().stop();
            Label what = new Label(form.what());
            what.setWrapText(true);
            what.setMinHeight(USE_PREF_SIZE);
            what.getStyleClass().add("quiet");
            getChildren().setAll(what);
            form.fields().forEach(f -> getChildren().add(new FieldView(session, this::changed)));
        }
        for (int i = 0; i < form.fields().size(); i++) {
            ((FieldView) getChildren().get(i + 1)).show(form.fields().get(i), words);
        }
    }

    private static List<Object> keys(WayForm form) {
        return List.of(
                form.what(), form.fields().stream().map(WayForm.Field::key).toList());
    }

    private void changed(String key, List<String> texts) {
        changer.accept(w -> w.withOther(w.other().map(o -> o.with(key, texts))));
    }
}
