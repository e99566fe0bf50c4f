package easewright.editor.panel;

import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/**
 * What sources say of the level at work, of both limbs where each has its own girth. It stands below all that is typed
 * or pressed, which it would else move.
 */
final class LevelTold extends VBox {
    private List<List<String>> shown = List.of();

    LevelTold() {
        super(4);
        setId("level-told");
        getStyleClass().add("level-told");
    }

    void show(EasePage page, String level, Words words) {
        List<List<String>> now = page.rows().stream()
                .filter(r -> r.level().name().equals(level))
                .map(r -> told(r, words))
                .filter(lines -> lines.size() > 1)
                .toList();
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Parts.present(this, !now.isEmpty());
        List<Node> labels = new ArrayList<>();
        for (List<String> lines : now) {
            Label title = said(lines.get(0));
            title.getStyleClass().add("section-title");
            labels.add(title);
            lines.stream().skip(1).forEach(line -> labels.add(said(line)));
        }
        getChildren().setAll(labels);
    }

    /** A title and what is said below it. */
    private static List<String> told(EaseRow row, Words words) {
        List<String> lines = new ArrayList<>();
        lines.add(
                row.ease().isEmpty()
                        ? row.name()
                        : words.of("editor.ease.told", Map.of("level", row.name(), "ease", row.ease())));
        lines.addAll(row.told(words));
        return lines;
    }

    private static Label said(String line) {
        Label said = new Label(line);
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        return said;
    }
}
