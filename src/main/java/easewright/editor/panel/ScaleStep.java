package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.mark.Marker;
import easewright.editor.mark.ScaleView;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * How large the drawing is: what is known, one line to check, and how to prove it by a line of known length. Before that,
 * which layers of it are meant.
 */
final class ScaleStep extends VBox {
    private final Session session;
    private final Marker marker;
    private final Runnable done;
    private final Label sign = new Label();
    private final Label headline = new Label();
    private final Label size = new Label();
    private final VBox check = new VBox(6);
    private final VBox lead = new VBox();
    private final VBox offers = new VBox(8);
    private final Fold others = new Fold("scale-others", offers);
    private final Label measureTitle = new Label();
    private final Label measureLine = new Label();
    private final ToggleButton pick = new ToggleButton();
    private final ComboBox<ScaleView.Choice> lines = new ComboBox<>();
    /** The list of lines is being made anew, and none is chosen by that. */
    private boolean filling;

    private final Label lengthLabel = new Label();
    private final LengthField length;
    private final Fold measure;
    private final LayersCard layers;
    private final Label statedAsk = new Label();
    private final RadioButton statedKeep = new RadioButton();
    private final RadioButton statedMove = new RadioButton();
    private final VBox stated = new VBox(6, statedAsk, statedKeep, statedMove);
    private ScaleView shown;
    private Desk shownFor;

    /**
     * @param done called when a scale was taken
     */
    ScaleStep(Session session, Marker marker, FileWork files, Runnable done) {
        this.done = done;
        layers = new LayersCard(session, marker, files);
        this.session = session;
        this.marker = marker;
        setSpacing(14);
        getStyleClass().add("step-page");
        sign.getStyleClass().add("sign");
        headline.getStyleClass().add("section-title");
        headline.setWrapText(true);
        size.getStyleClass().add("quiet");
        size.setWrapText(true);
        measureTitle.setWrapText(true);
        measureLine.setWrapText(true);
        pick.setId("scale-pick");
        pick.setMinWidth(USE_PREF_SIZE);
        pick.setGraphic(Icons.of(Icons.TAPE));
        pick.setOnAction(e -> marker.take(Tool.KNOWN_LINE));
        lines.setId("scale-lines");
        lines.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        lines.setOnAction(e -> {
            if (!filling && lines.getValue() != null) {
                marker.choose(lines.getValue().line());
            }
        });
        Label wrong = new Label();
        length = new LengthField(wrong, mm -> mm.ifPresent(v -> marker.prove(v, statedMove.isSelected())));
        length.setId("scale-length");
        length.setPrefWidth(110);
        Label reading = new Label();
        reading.setId("scale-reading");
        reading.textProperty().bind(length.readingProperty());
        HBox typed = new HBox(8, lengthLabel, length, reading);
        typed.setAlignment(Pos.CENTER_LEFT);
        measure = new Fold("scale-otherwise", new VBox(8, measureLine, new HBox(8, pick, lines), typed, wrong));
        HBox.setHgrow(lines, Priority.ALWAYS);
        HBox head = new HBox(10, sign, new VBox(2, headline, size));
        statedAsk.setWrapText(true);
        ToggleGroup answers = new OneOf();
        for (RadioButton answer : List.of(statedKeep, statedMove)) {
            answer.setToggleGroup(answers);
            answer.setWrapText(true);
        }
        statedKeep.setId("stated-keep");
        statedMove.setId("stated-move");
        statedKeep.setSelected(true);
        getChildren().setAll(layers, head, check, stated, lead, others, measureTitle, measure);
        session.deskProperty().addListener((o, before, now) -> show());
        marker.stateProperty().addListener((o, before, now) -> show());
        show();
    }

    private void show() {
        Desk desk = session.desk();
        Words words = desk.words();
        length.describe(words.of("editor.scale.truth.name"), words.of("editor.scale.truth.hint"));
        if (!marker.state().on()) {
            return;
        }
        if (desk != shownFor) {
            if (shownFor != null && desk.isOtherWork(shownFor)) {
                others.close();
                measure.close();
            }
            shownFor = desk;
            layers.show(desk);
            ScaleView view = ScaleView.of(desk, marker.sheet());
            if (!view.equals(shown)) {
                shown = view;
                fill(view, words);
            }
        }
        pick.setText(words.of("editor.scale.pick"));
        Hints.on(pick, words.of("editor.scale.pick.hint"));
        pick.setSelected(marker.state().tool() == Tool.KNOWN_LINE);
        boolean any = marker.state().line().isPresent();
        measureLine.setText(marker.state()
                .line()
                .map(l -> words.of("editor.scale.measured", Map.of("drawn", l.length())))
                .orElse(words.of("editor.scale.invite")));
        lengthLabel.setText(words.of("editor.scale.truth"));
        lengthLabel.setDisable(!any);
        length.setDisable(!any);
        length.show("", desk.unit());
    }

    private void fill(ScaleView view, Words words) {
        sign.setText(view.proved() ? "\u2713" : "!");
        sign.getStyleClass().removeAll("good", "caution");
        sign.getStyleClass().add(view.proved() ? "good" : "caution");
        headline.setText(view.headline());
        Parts.present(size, !view.size().isEmpty());
        size.setText(view.size());
        check.getChildren().clear();
        for (ScaleView.Choice c : view.checks()) {
            Label line = new Label(c.words());
            line.setWrapText(true);
            HBox.setHgrow(line, Priority.ALWAYS);
            line.setMaxWidth(Double.MAX_VALUE);
            Button see = new Button(words.of("editor.notes.show"));
            see.setId("scale-check"
                    + (check.getChildren().isEmpty()
                            ? ""
                            : "-" + check.getChildren().size()));
            Parts.about(see, c.words());
            see.getStyleClass().add("small");
            see.setMinWidth(USE_PREF_SIZE);
            Hints.on(see, words.of("editor.scale.check.hint"));
            see.setOnAction(e -> {
                lines.setValue(null);
                marker.choose(c.line());
            });
            HBox row = new HBox(8, line, see);
            row.setAlignment(Pos.CENTER_LEFT);
            check.getChildren().add(row);
        }
        view.stated().ifPresent(s -> {
            statedAsk.setText(s.ask());
            statedKeep.setText(s.keep());
            statedMove.setText(s.move());
            Hints.on(statedKeep, words.of("editor.scale.stated.hint"));
            Hints.on(statedMove, words.of("editor.scale.stated.hint"));
        });
        Parts.present(stated, view.stated().isPresent());
        lead.getChildren().clear();
        offers.getChildren().clear();
        for (int i = 0; i < view.offers().size(); i++) {
            boolean leads = i == 0 && view.leads();
            (leads ? lead : offers).getChildren().add(offer(view.offers().get(i), words, i, leads));
        }
        Parts.present(lead, !lead.getChildren().isEmpty());
        Parts.present(others, !offers.getChildren().isEmpty());
        others.show(words.of("editor.scale.others"), words.of("editor.scale.others.hint"), view.leads());
        boolean open = view.locked().isEmpty();
        // A thing to do only while the scale is not proved.
        boolean asked = open && !view.proved();
        measureTitle.setText(open ? words.of("editor.scale.measure") : view.locked());
        Parts.present(measureTitle, asked || !open);
        measureTitle.getStyleClass().remove("section-title");
        if (asked) {
            measureTitle.getStyleClass().add("section-title");
        }
        measure.show(words.of("editor.scale.measure-anew"), words.of("editor.scale.measure-anew.hint"), !asked);
        Parts.present(measure, open);
        filling = true;
        lines.getItems().setAll(view.lines());
        filling = false;
        lines.setPromptText(words.of("editor.scale.lines"));
        Hints.on(lines, words.of("editor.scale.lines.hint"));
        Heard.name(lines, words.of("editor.scale.lines.name"));
    }

    private HBox offer(ScaleView.Offer offer, Words words, int number, boolean leads) {
        Label line = new Label(offer.words());
        line.setWrapText(true);
        line.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(line, Priority.ALWAYS);
        Button take = new Button(offer.take());
        take.setId("scale-offer-" + number);
        Parts.about(take, offer.words());
        take.getStyleClass().add(leads ? "accent" : "small");
        take.setMinWidth(USE_PREF_SIZE);
        Hints.on(take, words.of("editor.scale.take.hint"));
        take.setOnAction(e -> {
            marker.scale(offer, statedMove.isSelected());
            done.run();
        });
        HBox row = new HBox(10, line, take);
        row.setAlignment(Pos.CENTER_LEFT);
        if (!leads) {
            row.getStyleClass().add("list-row");
        }
        return row;
    }
}
