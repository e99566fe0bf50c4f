package easewright.editor.panel;

import easewright.alter.Taper;
import easewright.editor.model.Desk;
import easewright.editor.model.Effect;
import easewright.editor.model.HereWords;
import easewright.editor.model.Hold;
import easewright.editor.model.Session;
import easewright.editor.model.Trial;
import easewright.editor.model.Wanted;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The one place to say "this much, here": level, amount, seams, shape; tried at once, done on request. */
public final class HerePanel extends VBox {
    private final Session session;
    private final Label title = new Label();
    private final ComboBox<String> level = new ComboBox<>();
    private final LengthField amount;
    private final Button less = new Button("\u2212");
    private final Button more = new Button("+");
    private final Label outcome = new Label();
    private final EffectView effect = new EffectView();
    private final Label seamsTitle = new Label();
    private final FlowPane seams = new FlowPane(6, 6);
    private final Label shapeTitle = new Label();
    private final ToggleButton smooth = new ToggleButton();
    private final ToggleButton straight = new ToggleButton();
    private final CheckBox carry = new CheckBox();
    private final CheckBox oneSide = new CheckBox();
    private final Label refusal = new Label();
    private final Button largest = new Button();
    private final Button openUp = new Button();
    private final Button keep = new Button();
    private final Button leave = new Button();
    private boolean showing;

    public HerePanel(Session session) {
        this.session = session;
        setId("here");
        getStyleClass().add("here");
        Label wrong = new Label();
        amount = new LengthField(wrong, mm -> change(w -> w.withAmount(mm.orElse(0))));
        amount.setId("amount");
        amount.setPrefWidth(132);
        level.setId("here-level");
        level.setPrefWidth(164);
        level.setOnAction(e -> {
            if (!showing && level.getValue() != null) {
                session.chooseLevel(level.getValue());
            }
        });
        less.setOnAction(e -> step(-1));
        more.setOnAction(e -> step(1));
        less.getStyleClass().add("step");
        more.getStyleClass().add("step");
        ToggleGroup shapes = new ToggleGroup();
        smooth.setToggleGroup(shapes);
        straight.setToggleGroup(shapes);
        smooth.getStyleClass().addAll("small", "chip");
        straight.getStyleClass().addAll("small", "chip");
        smooth.setOnAction(e -> change(w -> w.withTaper(Taper.SMOOTH)));
        straight.setOnAction(e -> change(w -> w.withTaper(Taper.STRAIGHT)));
        carry.setId("carry");
        carry.setOnAction(e -> change(w -> w.withCarry(carry.isSelected())));
        oneSide.setId("one-side");
        oneSide.setOnAction(e -> change(w -> w.withOneSide(oneSide.isSelected())));
        keep.setId("keep");
        keep.getStyleClass().add("accent");
        keep.setDefaultButton(false);
        keep.setOnAction(e -> session.keep());
        leave.setId("leave");
        leave.setOnAction(e -> session.leave());
        largest.getStyleClass().add("small");
        openUp.getStyleClass().add("small");
        openUp.setOnAction(e -> change(w -> w.withOpenUp(true)));
        title.getStyleClass().add("section-title");
        outcome.getStyleClass().add("outcome");
        outcome.setWrapText(true);
        refusal.setWrapText(true);
        refusal.setId("refusal");
        refusal.getStyleClass().add("complaint");
        HBox what = new HBox(6, level, amount, less, more);
        what.setAlignment(Pos.CENTER_LEFT);
        HBox which = new HBox(8, seamsTitle, seams);
        which.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(seams, Priority.ALWAYS);
        seamsTitle.setMinWidth(Region.USE_PREF_SIZE);
        HBox how = new HBox(6, shapeTitle, smooth, straight);
        HBox reach = new HBox(16, carry, oneSide);
        how.setAlignment(Pos.CENTER_LEFT);
        shapeTitle.setMinWidth(Region.USE_PREF_SIZE);
        HBox ways = new HBox(6, largest, openUp);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox done = new HBox(8, gap, leave, keep);
        getChildren().setAll(title, what, wrong, outcome, effect, which, how, reach, refusal, ways, done);
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    private void change(UnaryOperator<Wanted> step) {
        if (!showing) {
            session.desk().wanted().ifPresent(w -> session.want(step.apply(w)));
        }
    }

    private void step(int sign) {
        double by = session.desk().unit() == LengthUnit.INCH ? 25.4 / 8 : 5;
        change(w -> {
            double next = w.amount() + sign * by;
            return w.withAmount(Math.abs(next) < 1e-9 ? 0 : next);
        });
    }

    private void show(Desk desk) {
        showing = true;
        Words words = desk.words();
        List<String> names = desk.pattern().levels().stream().map(Level::name).toList();
        if (!level.getItems().equals(names)) {
            level.getItems().setAll(names);
        }
        level.setValue(desk.wanted().map(Wanted::level).orElse(null));
        boolean any = desk.wanted().isPresent();
        setVisible(any);
        setManaged(any);
        desk.wanted().ifPresent(w -> show(desk, w, words));
        showing = false;
    }

    private void show(Desk desk, Wanted wanted, Words words) {
        words(words);
        amount.show(wanted.amount() == 0 ? "" : words.signed(wanted.amount()), desk.unit());
        amount.setPromptText(words.of(
                desk.unit() == LengthUnit.INCH ? "editor.here.amount.prompt.inch" : "editor.here.amount.prompt"));
        outcome.setText(HereWords.outcome(desk));
        effect.show(Effect.of(desk), words);
        chips(desk, wanted);
        smooth.setSelected(wanted.taper() == Taper.SMOOTH);
        straight.setSelected(wanted.taper() == Taper.STRAIGHT);
        carry.setSelected(wanted.carry());
        oneSide.setSelected(wanted.oneSide());
        boolean refused = desk.refusedTrial().isPresent();
        refusal.setText(desk.refusedTrial()
                .map(r -> words.problem(r.refusal().code(), r.refusal().values()))
                .orElse(""));
        visible(refusal, refused);
        visible(openUp, refused && !wanted.openUp());
        var reach = desk.refusedTrial().map(Trial.Refused::largest).filter(l -> l.isPresent() && l.getAsDouble() != 0);
        visible(largest, reach.isPresent());
        reach.ifPresent(l -> {
            largest.setText(words.of("editor.here.largest", Map.of("amount.signed", l.getAsDouble())));
            largest.setOnAction(e -> change(w -> w.withAmount(l.getAsDouble())));
        });
        keep.setDisable(desk.shownTrial().isEmpty());
        leave.setDisable(wanted.amount() == 0);
    }

    private void words(Words words) {
        title.setText(words.of("editor.here.title"));
        level.setAccessibleText(words.of("editor.here.level"));
        level.setTooltip(new Tooltip(words.of("editor.here.level.hint")));
        amount.describe(words.of("editor.here.amount"), words.of("editor.here.amount.hint"));
        less.setTooltip(new Tooltip(words.of("editor.here.less")));
        less.setAccessibleText(words.of("editor.here.less"));
        more.setTooltip(new Tooltip(words.of("editor.here.more")));
        more.setAccessibleText(words.of("editor.here.more"));
        seamsTitle.setText(words.of("editor.here.seams"));
        shapeTitle.setText(words.of("editor.here.shape"));
        smooth.setText(words.of("editor.here.smooth"));
        smooth.setTooltip(new Tooltip(words.of("editor.here.smooth.hint")));
        straight.setText(words.of("editor.here.straight"));
        straight.setTooltip(new Tooltip(words.of("editor.here.straight.hint")));
        carry.setText(words.of("editor.here.carry"));
        carry.setTooltip(new Tooltip(words.of("editor.here.carry.hint")));
        oneSide.setText(words.of("editor.here.one-side"));
        oneSide.setTooltip(new Tooltip(words.of("editor.here.one-side.hint")));
        keep.setText(words.of("editor.here.keep"));
        keep.setTooltip(new Tooltip(words.of("editor.here.keep.hint")));
        leave.setText(words.of("editor.here.leave"));
        leave.setTooltip(new Tooltip(words.of("editor.here.leave.hint")));
        openUp.setText(words.of("editor.here.open-up"));
        openUp.setTooltip(new Tooltip(words.of("editor.here.open-up.hint")));
    }

    /** One chip a seam edge at the level; a chip that is off leaves its seam alone. */
    private void chips(Desk desk, Wanted wanted) {
        List<EdgeRef> edges = desk.holds().stream().map(Hold::edge).distinct().toList();
        seams.getChildren().clear();
        for (EdgeRef edge : edges) {
            ToggleButton chip = new ToggleButton(HereWords.seam(desk, edge));
            chip.getStyleClass().addAll("small", "chip");
            chip.setId("seam-" + edge);
            chip.setSelected(!wanted.leftOut().contains(edge));
            chip.setTooltip(new Tooltip(desk.words().of("editor.here.seam.hint")));
            chip.setOnAction(e -> change(w -> {
                Set<EdgeRef> out = new HashSet<>(w.leftOut());
                if (chip.isSelected()) {
                    out.remove(edge);
                } else if (out.size() + 1 < edges.size()) {
                    out.add(edge);
                }
                return w.withLeftOut(out);
            }));
            seams.getChildren().add(chip);
        }
        if (edges.isEmpty()) {
            Label none = new Label(desk.words().of("editor.here.no-seam"));
            none.setWrapText(true);
            none.getStyleClass().add("quiet");
            seams.getChildren().add(none);
        }
    }

    private static void visible(Region node, boolean is) {
        node.setVisible(is);
        node.setManaged(is);
    }
}
