package easewright.editor.panel;

import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.text.Words;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.WeakHashMap;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What the bar of a level means, and each source once, below all that leads to it: folded away behind one line until
 * somebody wants it. A number pressed in the sheet leads here, and the number here back to it.
 */
final class SourceList extends MeasuredBox {
    private static final PseudoClass LED = PseudoClass.getPseudoClass("led");

    /** So wide and high that it is not missed, pixels. */
    static final double TARGET = 24;

    /** One source from the next, pixels. */
    private static final double BETWEEN = 8;

    private final FoldLine line = new FoldLine();
    private final Label legend = said("");
    private final GridPane list = new GridPane(4, BETWEEN);
    private final Label nearly = said("");
    private final VBox fold = new VBox(3, legend, list, nearly);
    private final Map<String, Label> sources = new LinkedHashMap<>();
    /** The numbers elsewhere in the sheet: as they stand there, they may come to mean another source. */
    private final Set<Button> named = Collections.newSetFromMap(new WeakHashMap<>());

    private List<Object> shown = List.of();
    private Words words;
    /** The number that led here. */
    private Node from;

    SourceList() {
        super(3);
        getStyleClass().add("sources");
        line.setId("sources-fold");
        line.setOnAction(e -> unfold(line.isSelected()));
        Parts.present(fold, false);
        getChildren().setAll(line, fold);
        OneStop.in(list);
    }

    /** A number of the list itself. */
    private static Button mark() {
        Button mark = new Button();
        mark.getStyleClass().addAll("flat", "source-mark", "listed");
        mark.setMinSize(TARGET, TARGET);
        return mark;
    }

    private void unfold(boolean open) {
        line.unfolded(open);
        Hints.on(line, words.of(open ? "editor.ease.sources.hide" : "editor.ease.sources.show"));
        Parts.present(fold, open);
    }

    private static Label said(String words) {
        Label said = new Label(words);
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        said.getStyleClass().add("quiet");
        return said;
    }

    void show(EasePage page, Words now) {
        boolean any = page.rows().stream().anyMatch(r -> r.standing() != EaseRow.Standing.UNKNOWN);
        List<Object> state = List.of(any, page.foot().sources(), page.nearlyMet());
        if (state.equals(shown)) {
            return;
        }
        shown = state;
        words = now;
        Parts.present(this, any);
        legend.setText(words.of("editor.ease.bar"));
        nearly.setText(words.of("ease.nearly-met"));
        Parts.present(nearly, page.nearlyMet());
        line.setText(words.of("editor.ease.sources"));
        unfold(line.isSelected());
        sources.clear();
        list.getChildren().clear();
        for (String line : page.foot().lines(words)) {
            int end = line.indexOf(' ');
            put(line.substring(0, end), line.substring(end + 1));
        }
        named.forEach(this::tell);
    }

    private void put(String number, String source) {
        Label said = said(source);
        Button mark = mark();
        mark.setText(number);
        Map<String, Object> values = Map.of("number", number.substring(1, number.length() - 1));
        mark.setAccessibleText(words.of("editor.ease.mark.back", values));
        Hints.on(mark, words.of("editor.ease.mark.back.hint"));
        mark.setOnAction(e -> back());
        mark.focusedProperty().addListener((o, was, is) -> said.pseudoClassStateChanged(LED, is));
        GridPane.setHgrow(said, Priority.ALWAYS);
        GridPane.setValignment(mark, VPos.TOP);
        // What can be pressed of a number reaches into the room below, so that all lines stand evenly.
        GridPane.setMargin(mark, new Insets(0, 0, -BETWEEN - 1, 0));
        GridPane.setValignment(said, VPos.TOP);
        list.addRow(sources.size(), mark, said);
        sources.put(number, said);
    }

    /** Names a number elsewhere in the sheet, which tells its source beside the pointer. */
    void name(Button mark) {
        named.add(mark);
        tell(mark);
    }

    private void tell(Button mark) {
        String number = mark.getText();
        Label source = sources.get(number);
        mark.setAccessibleText(words.of(
                "editor.ease.mark", Map.of("number", number.substring(1, number.length() - 1))));
        Hints.on(mark, source == null ? number : source.getText());
    }

    /** Shows a source, and gives its number the keys. */
    void lead(String number, Node pressed) {
        Label source = sources.get(number);
        if (source != null) {
            from = pressed;
            unfold(true);
            Node mark = list.getChildren().get(list.getChildren().indexOf(source) - 1);
            go(mark, source);
        }
    }

    /** To the number that led here; what is not there any more leads nowhere. */
    private void back() {
        if (from != null && from.getScene() != null) {
            go(from, from);
        }
    }

    private static void go(Node keys, Node seen) {
        // What is chosen by the same press may move what is below it.
        Platform.runLater(() -> {
            keys.requestFocus();
            InView.show(seen);
        });
    }
}
