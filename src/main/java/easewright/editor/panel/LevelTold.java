package easewright.editor.panel;

import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.layout.Pane;

/**
 * What sources say of the level at work, of both limbs where each has its own girth. It stands below all that is typed
 * or pressed, which it would else move.
 */
final class LevelTold extends MeasuredBox {
    private static final PseudoClass TITLE = PseudoClass.getPseudoClass("title");

    private final SourceList sources;
    private final List<MarkedLine> told = new ArrayList<>();
    private List<List<String>> shown = List.of();

    /**
     * @param sources where the numbers lead
     */
    LevelTold(SourceList sources) {
        super(4);
        this.sources = sources;
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
        List<String> lines = now.stream().flatMap(List::stream).toList();
        while (told.size() < lines.size()) {
            told.add(MarkedLine.whole(sources));
        }
        for (int i = 0; i < lines.size(); i++) {
            told.get(i).say(lines.get(i));
            told.get(i).pane().pseudoClassStateChanged(TITLE, isTitle(i));
        }
        List<Pane> seen =
                told.subList(0, lines.size()).stream().map(MarkedLine::pane).toList();
        if (!getChildren().equals(seen)) {
            getChildren().setAll(seen);
        }
    }

    private boolean isTitle(int line) {
        int first = 0;
        for (List<String> lines : shown) {
            if (line == first) {
                return true;
            }
            first += lines.size();
        }
        return false;
    }

    /** A title and what is said below it. */
    private static List<String> told(EaseRow row, Words words) {
        List<String> lines = new ArrayList<>();
        lines.add(row.name());
        lines.addAll(row.told(words));
        return lines;
    }
}
