package easewright.editor.panel;

import easewright.editor.model.AlsoIn;
import easewright.editor.model.Desk;
import easewright.editor.model.Wanted;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;

/** In which other sizes the same is done: a tick for each. Nothing to be seen where no other has pieces like these. */
final class AlsoInChoice extends FlowPane {
    private final Consumer<UnaryOperator<Wanted>> changer;
    private final Label title = new Label();
    private final CheckBox all = new CheckBox();
    private List<String> sizes = List.of();
    /** What the sizes were told by: they are the same through a whole pull. */
    private Pattern pattern;

    private Optional<String> work = Optional.empty();
    private String level = "";

    /**
     * @param changer alters the wish
     */
    AlsoInChoice(Consumer<UnaryOperator<Wanted>> changer) {
        super(12, 4);
        this.changer = changer;
        setId("also-in");
        setAlignment(Pos.CENTER_LEFT);
        title.setMinWidth(USE_PREF_SIZE);
        all.setId("also-all");
        all.setOnAction(e -> changer.accept(w -> w.withAlsoIn(all.isSelected() ? Set.copyOf(sizes) : Set.of())));
        OneStop.in(this);
        Parts.present(this, false);
    }

    void show(Desk desk, Wanted wanted) {
        if (desk.pattern() != pattern
                || !desk.size().equals(work)
                || !wanted.level().equals(level)) {
            pattern = desk.pattern();
            work = desk.size();
            level = wanted.level();
            offer(AlsoIn.offered(desk), desk.words());
        }
        ticks().forEach(tick -> tick.setSelected(wanted.alsoIn().contains(tick.getText())));
        all.setSelected(!sizes.isEmpty() && wanted.alsoIn().containsAll(sizes));
    }

    private List<CheckBox> ticks() {
        return getChildren().stream()
                .filter(CheckBox.class::isInstance)
                .map(CheckBox.class::cast)
                .filter(tick -> tick != all)
                .toList();
    }

    private void offer(List<String> offered, Words words) {
        Parts.present(this, !offered.isEmpty());
        if (offered.equals(sizes)) {
            return;
        }
        sizes = offered;
        title.setText(words.of(sizes.size() == 1 ? "editor.here.also.one" : "editor.here.also"));
        all.setText(words.of("editor.here.also.all"));
        Heard.name(all, words.of("editor.here.also.all.name"));
        Hints.on(all, words.of("editor.here.also.all.hint"));
        getChildren().setAll(title);
        for (String size : sizes) {
            getChildren().add(tick(size, words));
        }
        if (sizes.size() > 1) {
            getChildren().add(all);
        }
    }

    private CheckBox tick(String size, Words words) {
        CheckBox tick = new CheckBox(size);
        tick.setMnemonicParsing(false);
        tick.setId("also-" + size);
        Heard.name(tick, words.of("editor.here.also.name", Map.of("size", size)));
        Hints.on(tick, words.of("editor.here.also.hint", Map.of("size", size)));
        tick.setOnAction(e -> changer.accept(w -> w.withAlsoIn(ticked(w, size, tick.isSelected()))));
        return tick;
    }

    private static Set<String> ticked(Wanted wanted, String size, boolean on) {
        Set<String> sizes = new HashSet<>(wanted.alsoIn());
        if (on) {
            sizes.add(size);
        } else {
            sizes.remove(size);
        }
        return sizes;
    }
}
