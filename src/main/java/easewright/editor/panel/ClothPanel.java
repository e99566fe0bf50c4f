package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.model.StretchTest;
import easewright.pattern.Cloth;
import easewright.print.EaseText;
import easewright.text.Words;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The cloth: woven or knit, and for a knit the stretch test by hand. */
final class ClothPanel extends VBox {
    private final Session session;
    private final Label title = new Label();
    private final ToggleButton woven = new ToggleButton();
    private final ToggleButton knit = new ToggleButton();
    private final Label question = new Label();
    private final Label result = new Label();
    private final Label said = new Label();
    private final LengthField stretched;
    private final HBox test;

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
        Label wrong = new Label();
        stretched = new LengthField(wrong, this::tested);
        stretched.setId("cloth-stretched");
        stretched.setPrefWidth(80);
        stretched.setMinWidth(USE_PREF_SIZE);
        title.getStyleClass().add("section-title");
        question.setWrapText(true);
        result.getStyleClass().add("quiet");
        result.setWrapText(true);
        said.getStyleClass().add("quiet");
        said.setWrapText(true);
        said.setId("cloth-said");
        HBox kind = new HBox(6, title, woven, knit);
        kind.setAlignment(Pos.CENTER_LEFT);
        test = new HBox(8, question, stretched);
        test.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(kind, test, wrong, result, said);
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    private void setKnit(boolean isKnit) {
        Cloth old = session.desk().pattern().cloth();
        session.setCloth(new Cloth(isKnit, old.across(), old.along(), old.recovery(), old.shrinkage()));
    }

    private void tested(OptionalDouble mm) {
        Cloth old = session.desk().pattern().cloth();
        OptionalDouble percent = OptionalDouble.empty();
        if (mm.isPresent()) {
            percent = StretchTest.percent(mm.getAsDouble());
            if (percent.isEmpty()) {
                throw new IllegalArgumentException("No cloth stretches to " + mm.getAsDouble() + " mm");
            }
        }
        session.setCloth(new Cloth(true, percent, old.along(), old.recovery(), old.shrinkage()));
    }

    private void show(Desk desk) {
        Words words = desk.words();
        Cloth cloth = desk.pattern().cloth();
        title.setText(words.of("editor.cloth.title"));
        woven.setText(words.of("editor.cloth.woven"));
        knit.setText(words.of("editor.cloth.knit"));
        Hints.on(woven, words.of("editor.cloth.woven.hint"));
        Hints.on(knit, words.of("editor.cloth.knit.hint"));
        woven.setSelected(!cloth.knit());
        knit.setSelected(cloth.knit());
        test.setVisible(cloth.knit());
        test.setManaged(cloth.knit());
        question.setText(words.of("editor.cloth.test", Map.of("marked", StretchTest.MARKED)));
        stretched.describe(words.of("editor.cloth.test.name"), words.of("editor.cloth.test.hint"));
        boolean known = cloth.knit() && cloth.across().isPresent();
        double percent = cloth.across().orElse(0);
        stretched.show(known ? words.length(StretchTest.MARKED * (1 + percent / 100)) : "", desk.unit());
        result.setText(known ? words.of("editor.cloth.result", Map.of("stretch.percent", percent)) : "");
        result.setVisible(known);
        result.setManaged(known);
        said.setText(new EaseText(words)
                .cloth(desk.reading().sheet()).stream()
                        .map(line -> words.of("editor.cloth.said", Map.of("line", line)))
                        .collect(Collectors.joining("\n")));
        said.setVisible(known);
        said.setManaged(known);
        boolean any = desk.isOpen();
        setVisible(any);
        setManaged(any);
    }
}
