package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import javafx.scene.text.TextAlignment;

/** What lies on the table while it is empty: three steps, a file to open, samples to try. */
public final class StartPanel extends VBox {
    private final FileWork files;
    private final List<Sample> samples = Sample.all();

    public StartPanel(Session session, FileWork files) {
        this.files = files;
        setId("start");
        getStyleClass().add("start");
        setAlignment(Pos.CENTER);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        session.deskProperty().addListener((o, before, now) -> {
            if (before.isOpen() != now.isOpen() || before.unit() != now.unit()) {
                show(now);
            }
        });
        show(session.desk());
    }

    /** Gives it its shadow, which is missed last and was a fifth of what there was to paint. */
    public void lift() {
        getStyleClass().add("lifted");
    }

    /** Gives the keys to what is done first. */
    public void takeKeys() {
        lookup("#start-open").requestFocus();
    }

    private void show(Desk desk) {
        Parts.present(this, !desk.isOpen());
        Words words = desk.words();
        Label title = new Label(words.of("editor.start.title"));
        title.getStyleClass().add("start-title");
        Label line = new Label(words.of("editor.start.line"));
        line.setWrapText(true);
        line.getStyleClass().add("quiet");
        VBox steps = new VBox(14, step(words, 1), step(words, 2), step(words, 3));
        steps.getStyleClass().add("start-steps");
        Button open = new Button(words.of("editor.start.open"));
        open.setId("start-open");
        open.getStyleClass().add("accent");
        Hints.on(open, words.of("editor.open.hint"));
        open.setOnAction(e -> files.choose());
        Label or = new Label(words.of("editor.start.or"));
        or.getStyleClass().add("quiet");
        HBox tries = new HBox(10);
        OneStop.in(tries);
        tries.setAlignment(Pos.CENTER);
        for (Sample sample : samples) {
            tries.getChildren().add(card(sample, words));
        }
        Label paper = new Label(words.of("editor.start.paper"));
        paper.setId("start-paper");
        paper.setWrapText(true);
        paper.setTextAlignment(TextAlignment.CENTER);
        paper.getStyleClass().add("quiet");
        Label keys = new Label(words.of("editor.start.keys"));
        keys.getStyleClass().add("quiet");
        getChildren().setAll(title, line, steps, open, paper, or, tries, keys);
    }

    private Button card(Sample sample, Words words) {
        String title = sample.title(words);
        SVGPath picture = new SVGPath();
        picture.setContent(sample.picture());
        picture.getStyleClass().add("sample-pieces");
        StackPane frame = new StackPane(picture);
        frame.setMinSize(Sample.WIDE, Sample.HIGH);
        Button card = new Button(title, frame);
        card.setId("sample-" + sample.id());
        card.setContentDisplay(ContentDisplay.TOP);
        card.setWrapText(true);
        card.setMaxHeight(Double.MAX_VALUE);
        card.getStyleClass().add("sample-card");
        Hints.on(card, words.of("editor.start.sample.hint", Map.of("title", title)));
        card.setOnAction(e -> files.openSample(sample));
        return card;
    }

    private static HBox step(Words words, int number) {
        Label sign = new Label(String.valueOf(number));
        sign.getStyleClass().add("step-number");
        Label head = new Label(words.of("editor.start.step" + number));
        head.getStyleClass().add("section-title");
        Label text = new Label(words.of("editor.start.step" + number + ".text"));
        text.setWrapText(true);
        text.getStyleClass().add("quiet");
        HBox row = new HBox(14, sign, new VBox(2, head, text));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }
}
