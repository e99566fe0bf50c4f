package easewright.editor.panel;

import easewright.alter.Taper;
import easewright.editor.model.Desk;
import easewright.editor.model.HereWords;
import easewright.editor.model.Hold;
import easewright.editor.model.SeamsInFull;
import easewright.editor.model.Wanted;
import easewright.pattern.EdgeRef;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How a change at the seams is made: which seams take part, how it dies away, how far down it goes. */
final class SeamSettings extends VBox {
    /** A longer name may not be seen whole, letters. */
    private static final int LONG = 40;

    private final Consumer<UnaryOperator<Wanted>> changer;
    /** How wide the word before a row is, so that what is chosen in them stands one below the other; pixels. */
    static final double LEAD = 38;

    private final Label seamsTitle = new Label();
    private final FlowPane seams = new FlowPane(6, 6);
    private final Label shapeTitle = new Label();
    private final ToggleButton smooth = new ToggleButton();
    private final ToggleButton straight = new ToggleButton();
    private final HBox taper;
    private final CheckBox carry = new CheckBox();
    private final CheckBox even = new CheckBox();
    private final Label stillSet = new Label();
    private final Button takeAway = new Button();
    private final HBox still = new HBox(8, stillSet, takeAway);
    private List<Object> chipsShown = List.of();
    private LengthUnit told;

    /**
     * @param changer alters the wish
     */
    SeamSettings(Consumer<UnaryOperator<Wanted>> changer) {
        super(8);
        this.changer = changer;
        ToggleGroup shapes = new OneOf();
        smooth.setToggleGroup(shapes);
        straight.setToggleGroup(shapes);
        smooth.setId("taper-smooth");
        straight.setId("taper-straight");
        smooth.getStyleClass().addAll("small", "chip");
        straight.getStyleClass().addAll("small", "chip");
        smooth.setOnAction(e -> changer.accept(w -> w.withTaper(Taper.SMOOTH)));
        straight.setOnAction(e -> changer.accept(w -> w.withTaper(Taper.STRAIGHT)));
        carry.setId("carry");
        carry.setOnAction(e -> changer.accept(w -> w.withCarry(carry.isSelected())));
        even.setId("even");
        even.setOnAction(e -> changer.accept(w -> w.withEven(even.isSelected())));
        OneStop.in(seams);
        HBox which = new HBox(8, seamsTitle, seams);
        which.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(seams, Priority.ALWAYS);
        // Else it would be no narrower than the longest name.
        seams.setMinWidth(0);
        seamsTitle.setMinWidth(LEAD);
        taper = new HBox(8, shapeTitle, new HBox(6, smooth, straight));
        taper.setAlignment(Pos.CENTER_LEFT);
        shapeTitle.setMinWidth(LEAD);
        stillSet.setId("still-set");
        stillSet.setWrapText(true);
        stillSet.setMinHeight(USE_PREF_SIZE);
        stillSet.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(stillSet, Priority.ALWAYS);
        takeAway.setId("still-set-take");
        takeAway.getStyleClass().add("small");
        takeAway.setMinWidth(USE_PREF_SIZE);
        takeAway.setOnAction(e -> {
            changer.accept(SeamsInFull::withoutBeyond);
            carry.requestFocus();
        });
        still.setAlignment(Pos.CENTER_LEFT);
        FlowPane ticks = new FlowPane(10, 6, carry, even);
        // Beneath what is chosen in the row above, not beneath the word before it.
        VBox.setMargin(ticks, new Insets(0, 0, 0, LEAD + 8));
        getChildren().setAll(which, ticks, still);
    }

    /** How the change dies away: short enough to share its line with another choice. */
    Node taper() {
        return taper;
    }

    void show(Desk desk, Wanted wanted) {
        if (desk.unit() != told) {
            told = desk.unit();
            words(desk.words());
        }
        chips(desk, wanted);
        smooth.setSelected(wanted.taper() == Taper.SMOOTH);
        straight.setSelected(wanted.taper() == Taper.STRAIGHT);
        carry.setSelected(wanted.carry());
        even.setSelected(wanted.even());
        String set = SeamsInFull.stillSet(wanted, desk.words());
        stillSet.setText(set);
        Parts.about(takeAway, set);
        Parts.present(still, !set.isEmpty());
    }

    private void words(Words words) {
        seamsTitle.setText(words.of("editor.here.seams"));
        shapeTitle.setText(words.of("editor.here.shape"));
        smooth.setText(words.of("editor.here.smooth"));
        Heard.oneOf(shapeTitle, smooth);
        Hints.on(smooth, words.of("editor.here.smooth.hint"));
        straight.setText(words.of("editor.here.straight"));
        Heard.oneOf(shapeTitle, straight);
        Hints.on(straight, words.of("editor.here.straight.hint"));
        Parts.say(takeAway, words, "editor.here.still-set.take");
        carry.setText(words.of("editor.here.carry"));
        Hints.on(carry, words.of("editor.here.carry.hint"));
        even.setText(words.of("way.seam.setting.even"));
        Hints.on(even, words.of("way.seam.setting.even.hint"));
    }

    /** One chip a seam edge at the level; a chip that is off leaves its seam alone. */
    private void chips(Desk desk, Wanted wanted) {
        List<EdgeRef> edges = desk.holds().stream().map(Hold::edge).distinct().toList();
        List<String> names = edges.stream().map(e -> HereWords.seam(desk, e)).toList();
        List<Object> wish = List.of(edges, names, wanted.leftOut());
        if (wish.equals(chipsShown) && !edges.isEmpty()) {
            return;
        }
        chipsShown = wish;
        seams.getChildren().clear();
        for (int i = 0; i < edges.size(); i++) {
            EdgeRef edge = edges.get(i);
            ToggleButton chip = new ToggleButton(names.get(i));
            chip.setMnemonicParsing(false);
            // A longer name loses its middle, so that the edge at its end can be read.
            chip.setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
            chip.maxWidthProperty().bind(seams.widthProperty());
            chip.getStyleClass().addAll("small", "chip");
            chip.setId("seam-" + edge);
            chip.setSelected(!wanted.leftOut().contains(edge));
            String hint = desk.words().of("editor.here.seam.hint");
            Hints.on(chip, names.get(i).length() > LONG ? names.get(i) + "\n" + hint : hint);
            chip.setOnAction(
                    e -> changer.accept(w -> w.withLeftOut(leftOut(w, edge, chip.isSelected(), edges.size()))));
            seams.getChildren().add(chip);
        }
        if (edges.isEmpty()) {
            Label none = new Label(desk.words().of("editor.here.no-seam"));
            none.setWrapText(true);
            none.getStyleClass().add("quiet");
            seams.getChildren().add(none);
        }
    }

    /** One seam at least takes part. */
    private static Set<EdgeRef> leftOut(Wanted wanted, EdgeRef edge, boolean takesPart, int edges) {
        Set<EdgeRef> out = new HashSet<>(wanted.leftOut());
        if (takesPart) {
            out.remove(edge);
        } else if (out.size() + 1 < edges) {
            out.add(edge);
        }
        return out;
    }
}
