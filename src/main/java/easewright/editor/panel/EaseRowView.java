package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.EaseRow;
import easewright.editor.model.EaseScale;
import easewright.editor.model.Session;
import easewright.pattern.Wish;
import easewright.text.PerCent;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * One level of the ease sheet: numbers in columns, then the bar and what it means. It is as high from the start as with
 * all that can come to be said in it, so that nothing below it moves while measurements are typed or a level is chosen.
 */
final class EaseRowView extends MeasuredBox {
    /** All columns with these gaps are as wide as the sheet beside its bar. */
    static final double GAP = 3;

    static final double NAME = 79;
    /** Wide enough for the girth of a large body in hundredths, or in sixteenths of an inch. */
    static final double FIELD = 87;

    static final double NUMBER = 80;
    static final double EASE = 69;
    static final double WISH = 84;
    private static final double PERCENT = 124;
    /** As high as the button that gives what is missing: while it is not seen, it has no height of its own. */
    private static final double JUDGED = 32;

    /** A line without words that is as high as one with some. */
    private static final String EMPTY = "\u00a0";

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    /** What was done on purpose is told and not warned of. */
    private static final PseudoClass ON_PURPOSE = PseudoClass.getPseudoClass("on-purpose");

    private final String level;
    private final Session session;
    private final Button name = new Button();
    private final Label finished = new Label();
    private final Label ease = new Label();
    private final Label percent = new Label();
    private final Label verdict = new Label();
    private final MarkedLine classes;
    private final EaseBar bar = new EaseBar();
    private final Tooltip barHint = new Tooltip();
    private final LengthField body;
    private final LengthField wish;
    /** The length of a wish in per cent, for which the field is too narrow. */
    private final Label wished = new Label();

    private final WishOffer offer;
    private List<Object> shown = List.of();
    /** What it shows; none before it shows anything. */
    private EaseRow row;

    private String garmentFigure = "";
    private String easeFigure = "";
    /** The desk it was for. */
    private Desk shownOn;
    /** The size whose body is in the field. */
    private Optional<String> size = Optional.empty();

    /** @param toAmount takes the keys to the amount that is tried */
    EaseRowView(EaseRow row, Session session, SourceList sources, Runnable toAmount) {
        this.classes = MarkedLine.brief(sources);
        this.level = row.level().name();
        this.session = session;
        this.offer = new WishOffer(level, session, toAmount, this::toWish);
        getStyleClass().add("ease-row");
        setId("ease-" + level);
        Label bodyWrong = new Label();
        Label wishWrong = new Label();
        body = new LengthField(bodyWrong, mm -> {
            session.setBody(row.level(), mm, girthName(row));
            again();
        });
        body.setId("body-" + level);
        body.getStyleClass().add("body-field");
        wish = new LengthField(wishWrong, this::wish);
        body.addEventHandler(CheckedField.JUDGED, e -> unsure());
        wish.setId("wish-" + level);
        wish.takeParts(this::bodyHere, false);
        wished.setId("wished-" + level);
        wished.getStyleClass().add("quiet");
        wished.setMinWidth(USE_PREF_SIZE);
        wished.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> wish.partProperty().get().isEmpty()
                                ? ""
                                : wish.getText().strip() + " "
                                        + wish.partProperty().get(),
                        wish.partProperty(),
                        wish.textProperty()));
        name.setId("level-name-" + level);
        name.getStyleClass().addAll("flat", "level-name");
        name.setOnAction(e -> session.chooseLevel(level));
        name.setAlignment(Pos.CENTER_LEFT);
        fix(body, FIELD);
        fix(wish, WISH);
        finished.getStyleClass().add("number");
        ease.getStyleClass().addAll("number", "ease-number");
        fix(finished, NUMBER);
        fix(ease, EASE);
        HBox columns = new HBox(GAP, body, finished, ease, wish);
        columns.setAlignment(Pos.CENTER_LEFT);
        LeadLine numbers = LeadLine.growing(name, columns, NAME);

        percent.getStyleClass().add("quiet");
        verdict.getStyleClass().add("verdict");
        // Of several sizes more may be said than there is room for on one line.
        verdict.setWrapText(true);
        verdict.setMinHeight(USE_PREF_SIZE);
        fix(percent, PERCENT);
        percent.setAlignment(Pos.CENTER_RIGHT);
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox scale = new HBox(4, bar, percent);
        scale.setAlignment(Pos.CENTER_LEFT);
        HBox stands = new HBox(8, verdict, wished);
        stands.setAlignment(Pos.BASELINE_LEFT);
        VBox words = new VBox(1, stands, classes.pane());
        words.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox judged = new HBox(8, words, offer);
        judged.setMinHeight(JUDGED);
        judged.setAlignment(Pos.CENTER_LEFT);
        Tooltip.install(bar, barHint);
        VBox said = new VBox(2, scale, judged);
        VBox wrong = new VBox(3, bodyWrong, wishWrong);
        wrong.mouseTransparentProperty().bind(said.visibleProperty());
        said.visibleProperty()
                .bind(bodyWrong
                        .visibleProperty()
                        .or(wishWrong.visibleProperty())
                        .not());
        getChildren().setAll(numbers, new StackPane(said, wrong));
        // Whoever goes from field to field types all measurements in turn, and the level at work stays.
        setOnMouseClicked(e -> {
            if (!body.isFocused() && !wish.isFocused()) {
                session.chooseLevel(level);
            }
        });
    }

    /**
     * Takes a wish as it was said: in per cent it stays so, whatever the body comes to be. Unless something is tried
     * elsewhere, what is wished is what is worked at next.
     */
    private void wish(OptionalDouble mm) {
        session.setWish(level, mm, PerCent.of(wish.getText()));
        boolean free = session.desk().trial().isEmpty()
                && session.desk().wanted().filter(w -> w.amount() != 0).isEmpty();
        if (mm.isPresent() && free) {
            session.chooseLevel(level);
        }
        again();
    }

    /** What was typed may be what there was already, written otherwise: then nothing comes to be shown by itself. */
    private void again() {
        shown = List.of();
        show(row, garmentFigure, easeFigure, session.desk());
    }

    private OptionalDouble bodyHere(String typed) throws Unreadable {
        return OptionalDouble.of(session.desk().bodyAt(level, typed));
    }

    private String girthName(EaseRow row) {
        return session.desk().words().girth(row.level().kind(), level);
    }

    /**
     * @param garment what the garment measures and {@code left} its ease, set beside the figures of the other rows
     */
    void show(EaseRow is, String garment, String left, Desk desk) {
        boolean chosenNow = desk.wanted().map(w -> w.level().equals(level)).orElse(false);
        List<Object> now = List.of(
                is,
                garment,
                left,
                chosenNow,
                desk.unit(),
                desk.dark(),
                desk.trial().isEmpty(),
                desk.size());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        row = is;
        garmentFigure = garment;
        easeFigure = left;
        Words words = desk.words();
        Map<String, String> named = Map.of("level", level);
        name.setText(row.name());
        Hints.on(name, words.of("editor.ease.show", named));
        // The wish is one for all sizes; of a body, what was typed for one is nothing to another.
        body.showOf(!desk.size().equals(size), row.body(), desk.unit());
        size = desk.size();
        body.setPromptText(words.of("editor.ease.body.prompt"));
        body.describe(words.of("editor.ease.body.name", named), words.of("editor.ease.body.hint"));
        Wish said = desk.pattern().wishes().get(level);
        boolean part = said != null && said.percent().isPresent();
        wish.show(part ? PerCent.shown(said.percent().getAsDouble()) : row.wish(), desk.unit());
        wish.setPromptText(words.of("editor.ease.wish.prompt"));
        wish.describe(
                words.of("editor.ease.wish.name", named),
                words.of(desk.size().isPresent() ? "editor.ease.wish.hint.sizes" : "editor.ease.wish.hint"));
        finished.setText(row.finished().isEmpty() ? "\u2013" : garmentFigure);
        body.meanwhile(row.body().isEmpty() ? "" : words.of("editor.ease.body.kept", Map.of("body", row.body())));
        percent.setText(row.percent());
        String judged = row.verdict(words);
        verdict.setText(judged);
        Hints.on(verdict, judged);
        offer.show(row, desk);
        verdict.pseudoClassStateChanged(ON_PURPOSE, WishOffer.isOnPurpose(row, desk));
        for (EaseRow.Standing standing : EaseRow.Standing.values()) {
            verdict.pseudoClassStateChanged(
                    PseudoClass.getPseudoClass(
                            standing.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')),
                    standing == row.standing());
        }
        scale(row.scale(), desk);
        String brief = row.brief(words);
        // A long list of sizes is cut short on the one line that there is.
        classes.say(brief.isEmpty() ? EMPTY : brief, brief);
        pseudoClassStateChanged(CHOSEN, chosenNow);
        unsure();
    }

    /** The figures of the row are no fields: they are heard with the name of the level. */
    private void heard(EaseRow row, Words words, boolean wrong) {
        name.setAccessibleText(words.of(
                row.finished().isEmpty()
                        ? "editor.ease.accessible.nowhere"
                        : row.ease().isEmpty() || wrong ? "editor.ease.accessible.bare" : "editor.ease.accessible",
                Map.of(
                        "level", row.name(),
                        "finished", row.finished(),
                        "ease", row.ease(),
                        "verdict", wrong ? body.getAccessibleHelp() : row.heard(words))));
    }

    private void scale(EaseScale now, Desk desk) {
        shownOn = desk;
        Words words = desk.words();
        bar.show(now, desk.dark(), words);
        Map<String, Object> ends = new HashMap<>(Map.of("from", now.from(), "to", now.to()));
        now.least().ifPresent(mm -> ends.put("least", mm));
        String said = words.of("editor.ease.bar.scale" + (now.least().isPresent() ? ".least" : ""), ends);
        barHint.setText(said + " " + words.of("editor.ease.bar"));
        bar.setAccessibleText(said);
    }

    /** While what was typed as the body is not understood, there is no ease that it could be told by. */
    private void unsure() {
        if (shownOn != null) {
            Words words = shownOn.words();
            boolean wrong = isUnsure();
            ease.setText(wrong || row.ease().isEmpty() ? "\u2013" : easeFigure);
            heard(row, words, wrong);
        }
    }

    String level() {
        return level;
    }

    /** Whether what stands in the field for the body is not understood. */
    boolean isUnsure() {
        return body.isWrong();
    }

    /** A length is begun beside the fields: it goes on in the first of them that is still empty, or else as a wish. */
    void begin(String typed) {
        LengthField field = body.getText().isEmpty() ? body : wish;
        field.requestFocus();
        field.setText(typed);
        field.end();
    }

    private void toWish() {
        wish.requestFocus();
    }

    /** Whether the keys are at its name, which takes no digits itself. */
    boolean isNamed(Object target) {
        return name.equals(target);
    }

    /** Those of this level, from left to right. */
    List<? extends Node> fields() {
        return List.of(body, wish);
    }

    private static void fix(Region node, double width) {
        node.setMinWidth(width);
        node.setPrefWidth(width);
        node.setMaxWidth(width);
    }
}
