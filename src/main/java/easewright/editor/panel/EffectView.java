package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Effect;
import easewright.editor.model.Partners;
import easewright.pattern.EdgeRef;
import easewright.text.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What moved, what stayed and what drifted, beside the amount: a sign and a line for each. */
final class EffectView extends VBox {
    private final Runnable evener;
    private final Consumer<List<EdgeRef>> taker;
    private Effect shown = new Effect(List.of());

    /**
     * @param evener makes seams that are sewn together change alike
     * @param taker  lets seams take part that are left out
     */
    EffectView(Runnable evener, Consumer<List<EdgeRef>> taker) {
        this.evener = evener;
        this.taker = taker;
        setId("effect");
        getStyleClass().add("effect");
        Parts.present(this, false);
    }

    void show(Effect effect, Desk desk) {
        Words words = desk.words();
        Parts.present(this, !effect.lines().isEmpty());
        if (effect.equals(shown)) {
            return;
        }
        shown = effect;
        getChildren().clear();
        for (Effect.Line line : effect.lines()) {
            // A caution asks for a look, as a seam does that no longer fits.
            Effect.Kind look = line.kind() == Effect.Kind.CAUTION ? Effect.Kind.DRIFTED : line.kind();
            String kind = look.name().toLowerCase(Locale.ROOT);
            Label sign = new Label(sign(line.kind()));
            sign.getStyleClass().addAll("effect-sign", kind);
            sign.setAccessibleText(words.of("editor.effect." + kind + ".sign"));
            Hints.on(sign, words.of("editor.effect." + kind + ".sign"));
            Label said = new WrappedLabel(line.words());
            said.getStyleClass().add("effect-words");
            said.setMinHeight(USE_PREF_SIZE);
            HBox.setHgrow(said, Priority.ALWAYS);
            HBox row = new HBox(7, sign, said);
            if (line.evens()) {
                Button even = new Button(words.of("editor.effect.even"));
                even.getStyleClass().add("small");
                even.setMinWidth(USE_PREF_SIZE);
                Hints.on(even, words.of("editor.effect.even.hint"));
                even.setOnAction(e -> evener.run());
                row.getChildren().add(even);
            }
            getChildren().add(row);
            if (!line.partners().isEmpty()) {
                Button take = new Button(Partners.words(desk, line.partners()));
                take.setId("effect-take-in");
                take.getStyleClass().add("small");
                Hints.on(take, words.of("editor.here.take-in.hint"));
                take.setOnAction(e -> taker.accept(line.partners()));
                VBox.setMargin(take, new Insets(0, 0, 0, 20));
                getChildren().add(take);
            }
        }
    }

    private static String sign(Effect.Kind kind) {
        return switch (kind) {
            case MOVED -> "\u2194";
            case STAYED -> "=";
            case FITS -> "\u2713";
            case DRIFTED, CAUTION -> "!";
        };
    }
}
