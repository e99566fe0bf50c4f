package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.model.StretchTest;
import easewright.editor.model.WashTest;
import easewright.pattern.Cloth;
import easewright.print.EaseText;
import easewright.text.Words;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The cloth: woven or knit, the stretch test by hand where it matters, and what the wash takes. */
final class ClothPanel extends VBox {
    private final Session session;
    private final Label title = new Label();
    private final ToggleButton woven = new ToggleButton();
    private final ToggleButton knit = new ToggleButton();
    private final Question stretch = new Question("cloth-stretched", this::stretched);
    private final Question wash = new Question("cloth-washed", this::washed);
    private final Label said = new Label();

    /** A length that the user finds out by a test, and what comes of it. */
    private static final class Question extends VBox {
        private final Label asked = new Label();
        private final Label result = new Label();
        private final LengthField field;

        Question(String id, Consumer<OptionalDouble> taker) {
            super(2);
            Label wrong = new Label();
            field = new LengthField(wrong, taker);
            field.setId(id);
            field.setPrefWidth(80);
            field.setMinWidth(USE_PREF_SIZE);
            asked.setWrapText(true);
            asked.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(asked, Priority.ALWAYS);
            result.getStyleClass().add("quiet");
            result.setWrapText(true);
            HBox row = new HBox(8, asked, field);
            row.setAlignment(Pos.CENTER_LEFT);
            getChildren().setAll(row, wrong, result);
        }

        void said(String text) {
            result.setText(text);
            Parts.present(result, !text.isEmpty());
        }
    }

    ClothPanel(Session session) {
        this.session = session;
        getStyleClass().add("cloth");
        ToggleGroup kinds = new OneOf();
        woven.setToggleGroup(kinds);
        knit.setToggleGroup(kinds);
        woven.setId("cloth-woven");
        knit.setId("cloth-knit");
        woven.getStyleClass().addAll("small", "chip");
        knit.getStyleClass().addAll("small", "chip");
        woven.setOnAction(e -> setKnit(false));
        knit.setOnAction(e -> setKnit(true));
        title.getStyleClass().add("section-title");
        said.getStyleClass().add("quiet");
        said.setWrapText(true);
        said.setId("cloth-said");
        HBox kind = new HBox(6, title, woven, knit);
        kind.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(kind, stretch, said, wash);
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    private Cloth cloth() {
        return session.desk().pattern().cloth();
    }

    private void setKnit(boolean isKnit) {
        Cloth old = cloth();
        session.setCloth(new Cloth(isKnit, old.across(), old.along(), old.recovery(), old.shrinkage()));
    }

    private void stretched(OptionalDouble mm) {
        Cloth old = cloth();
        double marked = StretchTest.marked(session.desk().unit());
        OptionalDouble percent = mm.isEmpty() ? mm : found(StretchTest.percent(mm.getAsDouble(), marked));
        session.setCloth(new Cloth(old.knit(), percent, old.along(), old.recovery(), old.shrinkage()));
    }

    private void washed(OptionalDouble mm) {
        Cloth old = cloth();
        double marked = WashTest.marked(session.desk().unit());
        OptionalDouble percent = mm.isEmpty() ? mm : found(WashTest.percent(mm.getAsDouble(), marked));
        session.setCloth(new Cloth(old.knit(), old.across(), old.along(), old.recovery(), percent));
    }

    private static OptionalDouble found(OptionalDouble percent) {
        if (percent.isEmpty()) {
            throw new IllegalArgumentException("No cloth comes out so");
        }
        return percent;
    }

    /** A woven is asked for its stretch only where the garment leans on it. */
    private static boolean stretchMatters(Desk desk) {
        Cloth cloth = desk.pattern().cloth();
        return cloth.knit()
                || cloth.across().isPresent()
                || desk.shownReading().sheet().lines().stream()
                        .anyMatch(line -> line.ease().orElse(0) < 0);
    }

    private void show(Desk desk) {
        Words words = desk.words();
        Cloth cloth = desk.pattern().cloth();
        title.setText(words.of("editor.cloth.title"));
        woven.setText(words.of("editor.cloth.woven"));
        knit.setText(words.of("editor.cloth.knit"));
        Heard.oneOf(title, woven);
        Heard.oneOf(title, knit);
        Hints.on(woven, words.of("editor.cloth.woven.hint"));
        Hints.on(knit, words.of("editor.cloth.knit.hint"));
        woven.setSelected(!cloth.knit());
        knit.setSelected(cloth.knit());
        Parts.present(stretch, stretchMatters(desk));
        double marked = StretchTest.marked(desk.unit());
        stretch.asked.setText(words.of("editor.cloth.test", Map.of("marked", marked)));
        stretch.field.describe(words.of("editor.cloth.test.name"), words.of("editor.cloth.test.hint"));
        stretch.field.show(length(cloth.across(), marked, 1, words), desk.unit());
        stretch.said(result("editor.cloth.result", "stretch.percent", cloth.across(), words));
        String sources = new EaseText(words)
                .cloth(desk.reading().sheet()).stream()
                        .map(line -> words.of("editor.cloth.said", Map.of("line", line)))
                        .collect(Collectors.joining("\n"));
        said.setText(sources);
        Parts.present(said, !sources.isEmpty());
        double unwashed = WashTest.marked(desk.unit());
        wash.asked.setText(words.of("editor.cloth.wash", Map.of("marked", unwashed)));
        wash.field.describe(words.of("editor.cloth.wash.name"), words.of("editor.cloth.wash.hint"));
        wash.field.show(length(cloth.shrinkage(), unwashed, -1, words), desk.unit());
        wash.said(result("editor.cloth.shrinks", "shrinkage.percent", cloth.shrinkage(), words));
        Parts.present(this, desk.isOpen());
    }

    /** What the marked length became, by the percentage that is known. */
    private static String length(OptionalDouble percent, double marked, int sign, Words words) {
        return percent.isEmpty() ? "" : words.length(marked * (1 + sign * percent.getAsDouble() / 100));
    }

    private static String result(String key, String name, OptionalDouble percent, Words words) {
        return percent.isEmpty() ? "" : words.of(key, Map.of(name, percent.getAsDouble()));
    }
}
