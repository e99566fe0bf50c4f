package easewright.editor.panel;

import easewright.editor.mark.LoosePieces;
import easewright.editor.mark.Marker;
import easewright.editor.mark.OpenPieces;
import easewright.editor.model.Desk;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Outlines that do not close, each with its gap to be shown and to be closed. Not there where all close. */
final class OpenCard extends VBox {
    private final Session session;
    private final Marker marker;
    private final Consumer<Pointed> shower;
    private List<OpenPieces.Open> shown = List.of();

    /**
     * @param shower brings a place into sight
     */
    OpenCard(Session session, Marker marker, Consumer<Pointed> shower) {
        super(10);
        this.session = session;
        this.marker = marker;
        this.shower = shower;
        getStyleClass().add("advice");
        seen(false);
    }

    private void seen(boolean is) {
        setVisible(is);
        setManaged(is);
    }

    void show(Desk desk) {
        List<OpenPieces.Open> open = OpenPieces.on(desk, marker.sheet());
        seen(!open.isEmpty());
        if (!open.equals(shown)) {
            shown = open;
            getChildren().clear();
            for (int i = 0; i < open.size(); i++) {
                getChildren().add(row(open.get(i), i, desk.words()));
            }
        }
    }

    private VBox row(OpenPieces.Open open, int number, Words words) {
        Label line = new Label(words.of(
                "editor.open.line",
                Map.of("name", open.name(), "gap", open.gap().length())));
        line.setWrapText(true);
        line.setMinHeight(USE_PREF_SIZE);
        Button show = new Button(words.of("editor.notes.show"));
        show.setId("open-show-" + number);
        Hints.on(show, words.of("editor.open.show.hint"));
        show.setOnAction(e -> {
            shower.accept(open.pointed());
            marker.light(List.of(open.gap()));
        });
        Button close = new Button(words.of("editor.open.close"));
        close.setId("open-close-" + number);
        Hints.on(close, words.of("editor.open.close.hint"));
        close.setOnAction(e -> {
            session.edit(LoosePieces.with(marker.sheet(), open.closed()));
            marker.choosePiece(open.id());
            shower.accept(open.whole());
        });
        for (Button button : List.of(show, close)) {
            button.getStyleClass().add("small");
            button.setMinWidth(USE_PREF_SIZE);
            Parts.about(button, open.name());
        }
        VBox row = new VBox(6, line, new HBox(8, close, show));
        Parts.lights(row, marker, () -> List.of(open.gap()));
        return row;
    }
}
