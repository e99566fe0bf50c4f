package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.mark.LayerChoice;
import easewright.editor.mark.Marker;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Which layers of the drawing hold the pieces, where there are several: mostly the sizes of a nest, of which one is wanted. */
final class LayersCard extends VBox {
    private final FileWork files;
    private final Session session;
    private final Marker marker;
    private final Label title = new Label();
    private final Label line = new Label();
    private final VBox rows = new VBox(2);
    private LayerChoice shown = new LayerChoice(List.of(), "");

    LayersCard(Session session, Marker marker, FileWork files) {
        this.session = session;
        this.marker = marker;
        this.files = files;
        setId("layers");
        setSpacing(6);
        getStyleClass().add("layers");
        title.getStyleClass().add("section-title");
        title.setWrapText(true);
        line.setWrapText(true);
        line.getStyleClass().add("quiet");
        getChildren().setAll(title, line, rows);
        seen(false);
    }

    private void seen(boolean is) {
        Parts.present(this, is);
    }

    void show(Desk desk) {
        LayerChoice choice = LayerChoice.of(desk, marker.sheet());
        seen(choice.rows().size() > 1);
        if (choice.equals(shown)) {
            return;
        }
        shown = choice;
        Words words = desk.words();
        title.setText(words.of("editor.layers.title"));
        line.setText(choice.locked().isEmpty() ? words.of("editor.layers.line") : choice.locked());
        rows.getChildren().clear();
        for (int i = 0; i < choice.rows().size(); i++) {
            rows.getChildren().add(row(choice, choice.rows().get(i), i, words));
        }
    }

    private HBox row(LayerChoice choice, LayerChoice.Row row, int number, Words words) {
        Set<String> read = choice.read();
        CheckBox tick = new CheckBox(row.name());
        tick.setId("layer-" + number);
        tick.setMnemonicParsing(false);
        tick.setSelected(row.read());
        tick.setMinWidth(0);
        boolean last = row.read() && read.size() == 1;
        tick.setDisable(last || !choice.locked().isEmpty());
        Hints.on(tick, words.of("editor.layers.tick.hint"));
        tick.setOnAction(e -> {
            Set<String> wanted = new HashSet<>(read);
            if (tick.isSelected()) {
                wanted.add(row.key());
            } else {
                wanted.remove(row.key());
            }
            files.readLayers(wanted);
        });
        Label what = new Label(row.what());
        what.getStyleClass().add("quiet");
        what.setMinWidth(USE_PREF_SIZE);
        Button only = new Button(words.of("editor.layers.only"));
        only.setId("layer-only-" + number);
        only.getStyleClass().add("small");
        only.setMinWidth(USE_PREF_SIZE);
        only.setDisable(last || !choice.locked().isEmpty());
        only.setAccessibleText(words.of("editor.layers.only.name", Map.of("layer", row.name())));
        Hints.on(only, words.of("editor.layers.only.hint"));
        only.setOnAction(e -> files.readLayers(choice.only(row.key())));
        HBox box = new HBox(8, tick, what, Parts.gap(), only);
        box.setAlignment(Pos.CENTER_LEFT);
        box.getStyleClass().add("list-row");
        Parts.lights(box, marker, () -> LayerChoice.lines(session.desk(), row.key()));
        return box;
    }
}
