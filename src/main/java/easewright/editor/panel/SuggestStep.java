package easewright.editor.panel;

import easewright.editor.mark.Made;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.SuggestView;
import easewright.editor.mark.Thought;
import easewright.editor.mark.Thoughts;
import easewright.editor.model.Desk;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.suggest.Sheet;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
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
    private final Map<String, SuggestRow> rows = new HashMap<>();
    private final SuggestRow.Hand hand = new Ticking();

    /** What stands in the list, in its order. */
    private List<String> places = List.of();

    private SuggestView shown;
    private Sheet of;

    /** The row that was ticked or unticked last, under the mouse as a rule; or null. */
    private SuggestRow touched;

    /**
     * @param shower brings a piece into sight
     * @param places brings a place into sight
     * @param made   told when marks were made
     */
    SuggestStep(
            Session session, Marker marker, Consumer<String> shower, Consumer<Pointed> places, Consumer<Made> made) {
        super(session, marker, MarkState.Step.SUGGESTED);
        open = new OpenCard(session, marker, places);
        this.shower = shower;
        intro.setWrapText(true);
        accept.setId("suggest-accept");
        accept.getStyleClass().add("accent");
        accept.setMinWidth(USE_PREF_SIZE);
        accept.setOnAction(e -> marker.suggesting().accept().ifPresent(made));
        all.setId("suggest-all");
        all.getStyleClass().add("small");
        all.setOnAction(e -> marker.suggesting().tickAll(true));
        none.setId("suggest-none");
        none.getStyleClass().add("small");
        none.setOnAction(e -> marker.suggesting().tickAll(false));
        again.setId("suggest-again");
        again.setOnAction(e -> marker.suggesting().again());
        head = new HBox(8, all, none);
        head.setAlignment(Pos.CENTER_LEFT);
        list.setSpacing(14);
        begin(open, intro, again, head, list);
    }

    /** Makes the marks that are ticked. It stands at the foot of all parts, while there is something to be made. */
    Button accept() {
        return accept;
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
            Thought thought = thoughts.last().get();
            SuggestView fresh = SuggestView.of(desk, thought.suggestions(), state);
            boolean same = shown != null && of == thought.sheet();
            SuggestView view = same ? fresh.inPlacesOf(shown, words.of("editor.suggest.gone")) : fresh;
            if (!same) {
                clear();
            }
            of = thought.sheet();
            if (!view.equals(shown)) {
                shown = view;
                show(view, words);
            }
        } else {
            left();
            Parts.present(head, false);
        }
        boolean ready = thoughts.ready().isPresent();
        if (shown != null && intro.getHeight() > 0) {
            // While it is thought again there is less to say; the list below stays where it is.
            intro.setMinHeight(Math.max(intro.getMinHeight(), intro.getHeight()));
        }
        if (!ready) {
            intro.setText(words.of(stopped ? "editor.suggest.stopped" : "editor.suggest.thinking"));
        } else if (shown != null) {
            intro.setText(shown.intro());
        }
        accept.setDisable(!ready || shown == null || shown.taken() == 0);
        Parts.present(accept, shown != null && shown.taken() > 0);
    }

    /** Whoever comes again finds the list as it is now. */
    @Override
    void left() {
        shown = null;
        Parts.present(accept, false);
        clear();
    }

    private void clear() {
        places = List.of();
        rows.clear();
        touched = null;
        list.getChildren().clear();
        intro.setMinHeight(USE_PREF_SIZE);
    }

    private void show(SuggestView view, Words words) {
        accept.setText(words.of("editor.suggest.accept", Map.of("count", view.taken())));
        Parts.present(head, !view.groups().isEmpty());
        HeldStill.during(touched, () -> fill(view, words));
    }

    private void fill(SuggestView view, Words words) {
        List<String> now = new ArrayList<>();
        for (SuggestView.Group group : view.groups()) {
            now.add(group.piece() + " " + group.title());
            for (SuggestView.Row row : group.rows()) {
                now.add(row.key());
                rows.computeIfAbsent(row.key(), key -> new SuggestRow(hand, shower))
                        .show(group, row, words);
            }
        }
        if (!now.equals(places)) {
            places = now;
            Optional<SuggestRow> inHand =
                    rows.values().stream().filter(SuggestRow::hasKeys).findFirst();
            list.getChildren()
                    .setAll(view.groups().stream().map(g -> group(g, words)).toList());
            inHand.ifPresent(SuggestRow::takeKeys);
        }
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
        group.rows().forEach(r -> box.getChildren().add(rows.get(r.key())));
        return box;
    }

    private final class Ticking implements SuggestRow.Hand {
        @Override
        public void tick(String key, boolean taken) {
            touched = rows.get(key);
            marker.suggesting().tick(key, taken);
        }

        @Override
        public void point(String key, boolean on) {
            if (on) {
                marker.suggesting().light(key);
            } else {
                marker.light(List.of());
            }
        }
    }
}
