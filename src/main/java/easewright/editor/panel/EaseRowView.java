package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.EaseRow;
import easewright.editor.model.Session;
import easewright.editor.model.SizeWishes;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One level of the ease sheet: numbers in columns, then the bar and what it means. */
final class EaseRowView extends VBox {
    static final double NAME = 74;
    /** Wide enough for the girth of a large body in hundredths. */
    static final double FIELD = 84;

    static final double NUMBER = 74;
    static final double EASE = 78;
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final String level;
    private final Session session;
    private final Button name = new Button();
    private final Label finished = new Label();
    private final Label ease = new Label();
    private final Label percent = new Label();
    private final Label verdict = new Label();
    private final Label classes = new Label();
    private final Label minimums = new Label();
    private final Label sizes = new Label();
    private final EaseBar bar = new EaseBar();
    private final Tooltip barHint = new Tooltip();
    private final LengthField body;
    private final LengthField wish;
    private final Button give = new Button();
    private List<Object> shown = List.of();

    EaseRowView(EaseRow row, Session session) {
        this.level = row.level().name();
        this.session = session;
        getStyleClass().add("ease-row");
        setId("ease-" + level);
        Label bodyWrong = new Label();
        Label wishWrong = new Label();
        body = new LengthField(bodyWrong, mm -> session.setBody(row.level(), mm, girthName(row)));
        body.setId("body-" + level);
        wish = new LengthField(wishWrong, mm -> session.setWish(level, mm));
        wish.setId("wish-" + level);
        name.setId("level-name-" + level);
        name.getStyleClass().addAll("flat", "level-name");
        name.setOnAction(e -> session.chooseLevel(level));
        fix(name, NAME);
        name.setAlignment(Pos.CENTER_LEFT);
        name.setWrapText(true);
        fix(body, FIELD);
        fix(wish, FIELD);
        finished.getStyleClass().add("number");
        ease.getStyleClass().addAll("number", "ease-number");
        fix(finished, NUMBER);
        fix(ease, EASE);
        HBox numbers = new HBox(4, name, body, finished, ease, wish);
        numbers.setAlignment(Pos.CENTER_LEFT);

        sizes.setWrapText(true);
        sizes.setId("wish-sizes-" + level);
        percent.getStyleClass().add("quiet");
        classes.setWrapText(true);
        minimums.setWrapText(true);
        minimums.getStyleClass().add("quiet");
        verdict.getStyleClass().add("verdict");
        verdict.setWrapText(true);
        percent.setMinWidth(USE_PREF_SIZE);
        give.setMinWidth(USE_PREF_SIZE);
        give.getStyleClass().addAll("small", "give");
        give.setOnAction(e -> giveIt());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox judged = new HBox(8, verdict, gap, percent, give);
        judged.setAlignment(Pos.CENTER_LEFT);
        Tooltip.install(bar, barHint);
        getChildren().setAll(numbers, bodyWrong, wishWrong, bar, judged, sizes, classes, minimums);
        // Of the level at work more is said, so that rows move: not while someone goes from field to field.
        setOnMouseClicked(e -> {
            if (!body.isFocused() && !wish.isFocused()) {
                session.chooseLevel(level);
            }
        });
    }

    private String girthName(EaseRow row) {
        return session.desk().words().girth(row.level().kind(), level);
    }

    private void giveIt() {
        session.chooseLevel(level);
        session.desk().reading().sheet().lines().stream()
                .filter(l -> l.name().equals(name.getText()))
                .findFirst()
                .filter(l -> l.missing().isPresent())
                .ifPresent(l -> session.desk()
                        .wanted()
                        .ifPresent(w -> session.want(w.withAmount(l.missing().getAsDouble()))));
    }

    void show(EaseRow row, Desk desk) {
        boolean chosenNow = desk.wanted().map(w -> w.level().equals(level)).orElse(false);
        List<Object> now =
                List.of(row, chosenNow, desk.unit(), desk.dark(), desk.trial().isEmpty());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Words words = desk.words();
        Map<String, String> named = Map.of("level", level);
        name.setText(row.name());
        Hints.on(name, words.of("editor.ease.show", named));
        body.show(row.body(), desk.unit());
        body.setPromptText(words.of("editor.ease.body.prompt"));
        body.describe(words.of("editor.ease.body.name", named), words.of("editor.ease.body.hint"));
        wish.show(row.wish(), desk.unit());
        wish.setPromptText(words.of("editor.ease.wish.prompt"));
        wish.describe(
                words.of("editor.ease.wish.name", named),
                words.of(desk.size().isPresent() ? "editor.ease.wish.hint.sizes" : "editor.ease.wish.hint"));
        finished.setText(row.finished());
        ease.setText(row.ease().isEmpty() ? "\u2013" : row.ease());
        percent.setText(row.percent());
        verdict.setText(row.verdict());
        give.setText(words.of(row.missing().orElse(0) < 0 ? "editor.ease.take-in" : "editor.ease.give"));
        give.setAccessibleText(words.of(
                "editor.ease.give.name",
                Map.of("level", row.name(), "give", give.getText(), "verdict", row.verdict())));
        Hints.on(give, words.of("editor.ease.give.hint"));
        boolean away = row.standing() == EaseRow.Standing.AWAY && desk.trial().isEmpty();
        Parts.present(give, away);
        for (EaseRow.Standing standing : EaseRow.Standing.values()) {
            verdict.pseudoClassStateChanged(
                    PseudoClass.getPseudoClass(
                            standing.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')),
                    standing == row.standing());
        }
        boolean known = row.standing() != EaseRow.Standing.UNKNOWN;
        Parts.present(bar, known);
        bar.show(row.scale(), desk.dark());
        sources(row, words, chosenNow);
        pseudoClassStateChanged(CHOSEN, chosenNow);
        // The figures of the row are no fields: they are heard with the name of the level.
        name.setAccessibleText(words.of(
                row.ease().isEmpty() ? "editor.ease.accessible.bare" : "editor.ease.accessible",
                Map.of("level", row.name(), "finished", row.finished(), "ease", row.ease(), "verdict", row.verdict())));
    }

    /** The class words always; what sources ask for wearing where the level is at work. */
    private void sources(EaseRow row, Words words, boolean chosen) {
        boolean known = row.standing() != EaseRow.Standing.UNKNOWN;
        text(classes, known ? String.join(words.of("editor.ease.between"), row.classes()) : "");
        String asked = String.join(words.of("editor.ease.between"), row.minimums());
        List<String> lines = new ArrayList<>();
        if (!asked.isEmpty()) {
            lines.add(words.of("editor.ease.minimums", Map.of("asked", asked)));
        }
        lines.addAll(row.stretch());
        text(minimums, known && chosen ? String.join("\n", lines) : "");
        boolean differ = row.sizes().map(SizeWishes.Said::differ).orElse(false);
        text(sizes, chosen || differ ? row.sizes().map(SizeWishes.Said::words).orElse("") : "");
        barHint.setText(words.of("editor.ease.bar"));
    }

    private static void text(Label label, String text) {
        label.setText(text);
        Parts.present(label, !text.isEmpty());
    }

    private static void fix(Region node, double width) {
        node.setMinWidth(width);
        node.setPrefWidth(width);
        node.setMaxWidth(width);
    }
}
