package easewright.editor.panel;

import easewright.alter.Refusal;
import easewright.editor.model.Desk;
import easewright.editor.model.Partners;
import easewright.editor.model.Trial;
import easewright.editor.model.Wanted;
import easewright.pattern.EdgeRef;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Why a change cannot be made, and what can be made in its place: the largest amount, or a cut through an edge. */
final class RefusalView extends VBox {
    private final Consumer<UnaryOperator<Wanted>> changer;
    private final Label why = new Label();
    private final Button largest = new Button();
    private final Button openUp = new Button();
    private final Button takeIn = new Button();
    private final HBox ways = new HBox(6, largest, openUp, takeIn);

    /**
     * @param changer alters the wish
     */
    RefusalView(Consumer<UnaryOperator<Wanted>> changer) {
        super(8);
        this.changer = changer;
        why.setWrapText(true);
        why.setMinHeight(USE_PREF_SIZE);
        why.setId("refusal");
        why.getStyleClass().add("complaint");
        largest.setId("largest");
        largest.getStyleClass().add("small");
        openUp.setId("open-up");
        openUp.getStyleClass().add("small");
        openUp.setOnAction(e -> changer.accept(w -> w.withOpenUp(true)));
        takeIn.setId("take-in");
        takeIn.getStyleClass().add("small");
        getChildren().setAll(why, ways);
    }

    /**
     * @param typing whether another amount is being typed, of which nothing is known yet
     */
    void show(Desk desk, boolean typing) {
        Optional<Trial.Refused> refused = typing ? Optional.empty() : desk.refusedTrial();
        Words words = desk.words();
        why.setText(typing ? "" : words(desk));
        boolean isProtected = refused.map(Trial.Refused::refusal)
                .map(Refusal::code)
                .filter("edge-protected"::equals)
                .isPresent();
        offerOpenUp(isProtected && !desk.wanted().map(Wanted::openUp).orElse(false), words);
        offerLargest(refused.map(r -> r.largest(words)).orElse(OptionalDouble.empty()), words);
        boolean oneSide = refused.map(Trial.Refused::refusal)
                .map(Refusal::code)
                .filter("even-one-side"::equals)
                .isPresent();
        offerPartners(oneSide ? Partners.leftOut(desk) : List.of(), desk);
        Parts.present(ways, largest.isManaged() || openUp.isManaged() || takeIn.isManaged());
        Parts.present(this, refused.isPresent());
    }

    /** Why not; nothing where it can be made. */
    static String words(Desk desk) {
        return desk.refusedTrial().map(r -> r.words(desk.words())).orElse("");
    }

    private void offerOpenUp(boolean may, Words words) {
        Parts.present(openUp, may);
        openUp.setText(words.of("editor.here.open-up"));
        Hints.on(openUp, words.of("editor.here.open-up.hint"));
    }

    private void offerPartners(List<EdgeRef> partners, Desk desk) {
        Parts.present(takeIn, !partners.isEmpty());
        takeIn.setText(Partners.words(desk, partners));
        Hints.on(takeIn, desk.words().of("editor.here.take-in.hint"));
        takeIn.setOnAction(e -> changer.accept(w -> Partners.taking(w, partners)));
    }

    private void offerLargest(OptionalDouble reach, Words words) {
        Parts.present(largest, reach.isPresent());
        reach.ifPresent(mm -> {
            largest.setText(words.of("editor.here.largest", Map.of("amount.signed", mm)));
            Hints.on(largest, words.of("editor.here.largest.hint"));
            largest.setOnAction(e -> changer.accept(w -> w.withAmount(mm)));
        });
    }
}
