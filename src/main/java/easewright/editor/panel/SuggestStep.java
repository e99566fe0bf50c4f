package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.SuggestView;
import easewright.editor.mark.Thoughts;
import easewright.editor.model.Desk;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What is suggested, with a box to tick for each; the table shows what would come of it. */
final class SuggestStep extends StepPage {
    private final Consumer<String> shower;
    private final OpenCard open;
    private final Label intro = new Label();
    private final Button accept = new Button();
    private final Button all = new Button();
    private final Button none = new Button();
    private final Button again = new Button();
    private final HBox head;
    private final VBox list = new VBox();
    private final Map<String, CheckBox> boxes = new HashMap<>();
    private List<String> shownKeys = List.of();
    private SuggestView shown;

    /**
     * @param shower brings a piece into sight
     * @param places brings a place into sight
     * @param done   called when the marks were made
     */
    SuggestStep(Session session, Marker marker, Consumer<String> shower, Consumer<Pointed> places, Runnable done) {
        super(session, marker, MarkState.Step.SUGGESTED);
        open = new OpenCard(session, marker, places);
        this.shower = shower;
        intro.setWrapText(true);
        accept.setId("suggest-accept");
        accept.getStyleClass().add("accent");
        accept.setMinWidth(USE_PREF_SIZE);
        accept.setOnAction(e -> {
            marker.suggesting().accept();
            done.run();
        });
        all.setId("suggest-all");
        all.getStyleClass().add("small");
        all.setOnAction(e -> marker.suggesting().tickAll(true));
        none.setId("suggest-none");
        none.getStyleClass().add("small");
        none.setOnAction(e -> marker.suggesting().tickAll(false));
        again.setId("suggest-again");
        again.setOnAction(e -> marker.suggesting().again());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        head = new HBox(8, accept, gap, all, none);
        head.setAlignment(Pos.CENTER_LEFT);
        list.setSpacing(14);
        begin(open, intro, again, head, list);
    }

    @Override
    void words(Words words) {
        Parts.say(all, words, "editor.suggest.all");
        Parts.say(none, words, "editor.suggest.none-of-them");
        Hints.on(accept, words.of("editor.suggest.accept.hint"));
    }

    @Override
    void show(Desk desk, MarkState state) {
        Words words = desk.words();
        open.show(desk);
        Thoughts thoughts = state.thoughts();
        boolean stopped = thoughts.way() == Thoughts.Way.STOPPED;
        Parts.say(again, words, "editor.suggest.again");
        Parts.present(again, stopped);
        if (thoughts.last().isPresent()) {
            SuggestView view = SuggestView.of(desk, thoughts.last().get().suggestions(), state);
            if (!view.equals(shown)) {
                shown = view;
                show(view, words);
            }
        } else {
            shown = null;
            shownKeys = List.of();
            list.getChildren().clear();
            Parts.present(head, false);
        }
        boolean ready = thoughts.ready().isPresent();
        if (!ready) {
            intro.setText(words.of(stopped ? "editor.suggest.stopped" : "editor.suggest.thinking"));
        } else if (shown != null) {
            intro.setText(shown.intro());
        }
        accept.setDisable(!ready || shown == null || shown.taken() == 0);
    }

    private void show(SuggestView view, Words words) {
        accept.setText(words.of("editor.suggest.accept", Map.of("count", view.taken())));
        Parts.present(head, !view.groups().isEmpty());
        List<String> keys = new ArrayList<>();
        view.groups().forEach(g -> {
            keys.add(g.piece() + " " + g.title());
            g.rows().forEach(r -> keys.add(r.key() + " " + r.what()));
        });
        if (keys.equals(shownKeys)) {
            // The same list with other ticks keeps its controls, and with them the keyboard's place.
            view.groups().forEach(g -> g.rows().forEach(r -> boxes.get(r.key()).setSelected(r.taken())));
            return;
        }
        shownKeys = keys;
        boxes.clear();
        list.getChildren().clear();
        view.groups().forEach(g -> list.getChildren().add(group(g, words)));
    }

    private VBox group(SuggestView.Group group, Words words) {
        Label title = new Label(group.title());
        title.getStyleClass().add("section-title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox top = new HBox(8, title, gap);
        top.setAlignment(Pos.CENTER_LEFT);
        if (!group.piece().isEmpty()) {
            Button take = new Button(words.of("editor.suggest.take"));
            take.getStyleClass().add("small");
            take.setMinWidth(USE_PREF_SIZE);
            Hints.on(take, words.of("editor.suggest.take.hint"));
            take.setAccessibleText(words.of("editor.suggest.take.name", Map.of("piece", group.title())));
            take.setOnAction(e -> marker.suggesting().accept(group));
            top.getChildren().add(take);
        }
        VBox box = new VBox(2, top);
        box.getStyleClass().add("mark-card");
        group.rows().forEach(r -> box.getChildren().add(row(group, r, words)));
        return box;
    }

    private HBox row(SuggestView.Group group, SuggestView.Row row, Words words) {
        CheckBox tick = new CheckBox();
        tick.getStyleClass().add("first-line");
        tick.setSelected(row.taken());
        String reason = row.guess() ? words.of("editor.suggest.guess", Map.of("why", row.why())) : row.why();
        tick.setAccessibleText(
                group.piece().isEmpty() || row.what().contains(group.title())
                        ? row.what()
                        : words.of("editor.suggest.on", Map.of("what", row.what(), "piece", group.title())));
        tick.setAccessibleHelp(reason);
        Hints.on(tick, words.of("editor.suggest.tick.hint"));
        tick.setOnAction(e -> marker.suggesting().tick(row.key(), tick.isSelected()));
        tick.focusedProperty().addListener((o, was, is) -> point(row, is));
        boxes.put(row.key(), tick);
        Label what = new Label(row.what());
        what.setWrapText(true);
        Label why = new Label(reason);
        why.setWrapText(true);
        why.getStyleClass().add("quiet");
        VBox text = new VBox(what, why);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox line = new HBox(10, tick, text);
        line.getStyleClass().add("mark-row");
        line.setOnMouseEntered(e -> point(row, true));
        line.setOnMouseExited(e -> point(row, false));
        text.setOnMouseClicked(e -> {
            if (!group.piece().isEmpty()) {
                shower.accept(group.piece());
            }
        });
        return line;
    }

    private void point(SuggestView.Row row, boolean on) {
        if (on) {
            marker.suggesting().light(row.key());
        } else {
            marker.light(List.of());
        }
    }
}
