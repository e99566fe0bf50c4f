package easewright.editor.panel;

import easewright.editor.mark.LevelEdits;
import easewright.editor.mark.LevelsElsewhere;
import easewright.editor.mark.LevelsView;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.SeamsView;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.pattern.LevelKind;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The levels at which the garment is measured, and where each lies on the pieces. */
final class LevelsStep extends StepPage {
    private final Label intro = new Label();
    private final MenuButton add = new MenuButton();
    private final NameField own;
    private final VBox list = new VBox(10);
    private final List<LevelCard> cards = new ArrayList<>();
    /** The names of the levels in the cards. */
    private List<String> shown = List.of();

    /** What is offered for other sizes. */
    private final LevelsElsewhere elsewhere = new LevelsElsewhere(this::showAgain);

    LevelsStep(Session session, Marker marker) {
        super(session, marker, MarkState.Step.LEVELS);
        intro.setWrapText(true);
        add.setId("level-add");
        add.setMinWidth(USE_PREF_SIZE);
        Label wrong = new Label();
        own = new NameField(wrong, this::addOwn);
        own.setId("level-own");
        own.setPrefWidth(170);
        HBox row = new HBox(8, add, own);
        row.setAlignment(Pos.CENTER_LEFT);
        begin(intro, row, wrong, list);
    }

    private String addOwn(String text) {
        if (text.isBlank()) {
            return "";
        }
        LevelKind kind = LevelsView.of(session.desk()).kinds().stream()
                .filter(k -> k.name().equalsIgnoreCase(text.strip()))
                .map(LevelsView.Kind::kind)
                .findFirst()
                .orElse(LevelKind.OTHER);
        String refused = marker.attempt(p -> LevelEdits.add(p, text, kind));
        if (refused.isEmpty()) {
            own.showAnother("");
        }
        return refused;
    }

    private static String key(LevelsView view) {
        boolean none = view.levels().stream().allMatch(l -> l.places().isEmpty());
        return view.levels().isEmpty() ? "none" : none ? "unplaced" : "intro";
    }

    @Override
    void words(Words words) {
        Parts.say(add, words, "editor.level.add");
        Heard.name(add, words.of("editor.level.add"));
        own.setPromptText(words.of("editor.level.own.prompt"));
        own.describe(words.of("editor.level.own"), words.of("editor.level.own.hint"));
    }

    private void showAgain() {
        MarkState state = marker.state();
        if (state.on() && state.step() == MarkState.Step.LEVELS) {
            show(session.desk(), state);
        }
    }

    /** Those that the pieces reach, or the others: a garment may be more than its edges tell. */
    private List<MenuItem> items(LevelsView view, boolean reached) {
        List<MenuItem> items = new ArrayList<>();
        for (LevelsView.Kind kind : view.kinds()) {
            if (kind.reached() == reached) {
                MenuItem item = new MenuItem(kind.name());
                item.setOnAction(e -> marker.tryTo(p -> LevelEdits.add(p, kind.name(), kind.kind())));
                items.add(item);
            }
        }
        return items;
    }

    @Override
    void show(Desk desk, MarkState state) {
        LevelsView view = LevelsView.of(desk);
        intro.setText(desk.words().of("editor.levels." + key(view)));
        List<MenuItem> items = items(view, true);
        List<MenuItem> others = items(view, false);
        if (!items.isEmpty() && !others.isEmpty()) {
            items.add(new SeparatorMenuItem());
        }
        items.addAll(others);
        add.getItems().setAll(items);
        List<String> names = view.levels().stream().map(LevelsView.Row::name).toList();
        List<String> fresh = new ArrayList<>(names);
        fresh.removeAll(shown);
        boolean added = fresh.size() == 1 && names.containsAll(shown) && state.step() == MarkState.Step.LEVELS;
        shown = names;
        if (cards.size() != view.levels().size()) {
            cards.clear();
            view.levels().forEach(l -> cards.add(new LevelCard(session, marker)));
            list.getChildren().setAll(cards);
        }
        List<SeamsView.EdgeChoice> edges = SeamsView.of(desk).edges();
        elsewhere.look(desk);
        for (int i = 0; i < cards.size(); i++) {
            LevelsView.Row row = view.levels().get(i);
            cards.get(i).show(row, elsewhere.of(row.name()), edges, desk, state);
        }
        if (added) {
            // It has no place yet. Who added it by name goes on in it.
            LevelCard made = cards.get(names.indexOf(fresh.get(0)));
            boolean by = own.isFocused() || add.isFocused();
            Platform.runLater(() -> {
                InView.show(made);
                if (by && (own.isFocused() || add.isFocused())) {
                    made.takeKeys();
                }
            });
        }
    }
}
