package easewright.editor.panel;

import easewright.editor.model.Advice;
import easewright.editor.model.Desk;
import easewright.editor.model.FitSign;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.pattern.Side;
import easewright.text.Words;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Where to put it: asks how it shows and where, and proposes a place and a way with its source. */
final class WhereView extends VBox {
    private final Session session;
    private final Runnable taken;
    private final Label question = new Label();
    private final FlowPane feels = new FlowPane(6, 6);
    private final FlowPane signs = new FlowPane(6, 6);
    private final VBox advice = new VBox(6);
    private final FlowPane sides = new FlowPane(6, 6);
    private Side side = Side.BOTH;
    private Desk shown;

    /**
     * @param taken what comes after a proposal was taken
     */
    WhereView(Session session, Runnable taken) {
        super(8);
        this.session = session;
        this.taken = taken;
        setId("where");
        OneStop.in(feels);
        OneStop.in(signs);
        OneStop.in(sides);
        question.setWrapText(true);
        advice.getStyleClass().add("advice");
        getChildren().setAll(question, feels, signs, advice);
        open(false);
    }

    /** Begins anew, or goes away. */
    void open(boolean is) {
        Parts.present(this, is);
        if (is) {
            ask();
        }
    }

    /** The keys go to the first question. */
    void takeKeys() {
        feels.getChildren().get(0).requestFocus();
        Platform.runLater(() -> InView.first(question));
    }

    boolean isOpen() {
        return isVisible();
    }

    private void ask() {
        shown = session.desk();
        Words words = shown.words();
        question.setText(words.of("editor.where.question"));
        feels.getChildren().clear();
        signs.getChildren().clear();
        advise(null);
        for (FitSign.Feels kind : FitSign.Feels.values()) {
            String name = kind.name().toLowerCase(Locale.ROOT);
            ToggleButton chip = chip("feels-" + name, words.of("editor.where." + name));
            Hints.on(chip, words.of("editor.where." + name + ".hint"));
            chip.setOnAction(e -> {
                only(feels, chip);
                listSigns(kind);
            });
            feels.getChildren().add(chip);
        }
    }

    private void seen(Node chip) {
        if (getScene() == null) {
            return;
        }
        // The room around it may become lower or higher with the answer.
        getScene().getRoot().applyCss();
        getScene().getRoot().layout();
        InView.first(question);
        InView.show(advice);
        InView.show(chip);
    }

    private void listSigns(FitSign.Feels kind) {
        List<Advice> all = Advice.of(shown, kind);
        signs.getChildren().clear();
        advise(null);
        for (Advice each : all) {
            ToggleButton chip = chip("sign-" + each.about().id(), each.sign());
            Hints.on(chip, shown.words().of("editor.where.sign.hint"));
            chip.setOnAction(e -> {
                only(signs, chip);
                advise(each);
                // The answer has no place yet, and may lie below what is to be seen; the keys stay on the question.
                Platform.runLater(() -> seen(chip));
            });
            signs.getChildren().add(chip);
        }
        if (all.isEmpty()) {
            Label none = new Label(shown.words().of("editor.where.none"));
            none.setWrapText(true);
            signs.getChildren().add(none);
        }
    }

    private void advise(Advice chosen) {
        advice.getChildren().clear();
        Parts.present(advice, chosen != null);
        if (chosen == null) {
            return;
        }
        Label said = new Label(chosen.words());
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        Label source = new Label(chosen.source());
        source.setWrapText(true);
        source.setMinHeight(USE_PREF_SIZE);
        source.getStyleClass().add("quiet");
        Button take = new Button(shown.words().of("editor.where.take"));
        take.setId("where-take");
        take.getStyleClass().addAll("small", "accent");
        // What it says above is heard with the only thing there is to press.
        Parts.about(take, chosen.words() + " " + chosen.source());
        Hints.on(take, shown.words().of("editor.where.take.hint"));
        take.setOnAction(e -> {
            Set<String> also = session.desk().wanted().map(Wanted::alsoIn).orElse(Set.of());
            Wanted wanted = chosen.taken(session.desk().pattern()).withAlsoIn(also);
            session.want(wanted.maySided() ? wanted.withSide(side) : wanted);
            open(false);
            taken.run();
        });
        advice.getChildren().setAll(said, source);
        if (chosen.taken(shown.pattern()).maySided()) {
            askSide(chosen.about().oneSided(), take);
            advice.getChildren().add(sides);
        }
        advice.getChildren().add(take);
    }

    /**
     * A body need not be the same on both sides.
     *
     * @param one  whether it is one of the two
     * @param take what takes the advice, once that is known
     */
    private void askSide(boolean one, Button take) {
        Words words = shown.words();
        side = Side.BOTH;
        Label on = new Label(words.of("editor.here.side"));
        on.getStyleClass().add("quiet");
        sides.getChildren().setAll(on);
        take.setDisable(one);
        for (Side each : one ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.values())) {
            ToggleButton chip =
                    chip("where-side-" + each.name().toLowerCase(Locale.ROOT), words.of("editor.here.side." + each));
            Hints.on(chip, words.of("editor.here.side." + each + ".hint"));
            chip.setSelected(each == side);
            chip.setOnAction(e -> {
                side = each;
                only(sides, chip);
                take.setDisable(false);
            });
            sides.getChildren().add(chip);
        }
    }

    private static ToggleButton chip(String id, String text) {
        ToggleButton chip = new ToggleButton(text);
        chip.setId(id);
        chip.getStyleClass().addAll("small", "chip");
        return chip;
    }

    private static void only(FlowPane chips, ToggleButton chosen) {
        chips.getChildren().stream()
                .filter(ToggleButton.class::isInstance)
                .forEach(c -> ((ToggleButton) c).setSelected(c == chosen));
    }
}
