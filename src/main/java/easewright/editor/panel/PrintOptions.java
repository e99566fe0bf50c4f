package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.paper.PaperChoice;
import easewright.editor.paper.PaperChoice.Surface;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.print.Use;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** What can be chosen for a print or a report. */
final class PrintOptions extends VBox {
    /** Between things to be ticked, pixels. */
    private static final double TICKS = 1;

    private final Desk desk;
    private final Words words;
    private final Consumer<PaperChoice> chosen;
    private final VBox print = new VBox(8);
    private final VBox report = new VBox(8);
    private final Node margin;
    private final Node overlap;
    private final Map<Piece, Node> pieces = new LinkedHashMap<>();
    private final ChoiceBox<Surface> surface;
    private final ChoiceBox<Surface> reportOn;
    private PaperChoice choice;

    /** @param chosen told whenever something else is chosen */
    PrintOptions(Desk desk, Consumer<PaperChoice> chosen) {
        super(12);
        this.desk = desk;
        this.words = desk.words();
        this.chosen = chosen;
        choice = PaperChoice.first(desk.unit() == LengthUnit.INCH).withSizes(Set.copyOf(desk.sizesTaking()));
        getStyleClass().add("print-options");
        surface = papers("surface", List.of(Surface.values()), PaperChoice::withSurface);
        reportOn = papers("report-paper", PaperChoice.SHEETS, PaperChoice::withReportOn);
        margin = length("margin", choice.margin(), (c, mm) -> c.withMargin(mm));
        overlap = length("overlap", choice.overlap(), (c, mm) -> c.withOverlap(mm));
        print.getChildren().setAll(title("editor.print.paper"), surface, margin, overlap);
        VBox ticks = new VBox(TICKS, title("editor.print.pieces"));
        desk.pattern().pieces().forEach(p -> pieces.put(p, piece(p)));
        ticks.getChildren().addAll(pieces.values());
        // Below all that is asked once, since there may be many.
        ticks.visibleProperty().bind(print.visibleProperty());
        ticks.managedProperty().bind(print.managedProperty());
        CheckBox oneWay = new CheckBox(words.of("editor.print.one-way"));
        oneWay.setId("print-one-way");
        Hints.on(oneWay, words.of("editor.print.one-way.hint"));
        oneWay.setOnAction(e -> choose(c -> c.withCloth(c.clothWidth(), oneWay.isSelected())));
        report.getChildren()
                .setAll(
                        title("editor.print.paper"),
                        reportOn,
                        title("editor.print.layout"),
                        length("cloth", choice.clothWidth(), (c, mm) -> c.withCloth(mm, c.oneWay())),
                        oneWay);
        Label why = new Label(words.of("editor.print.garment.why"));
        why.getStyleClass().add("quiet");
        why.setWrapText(true);
        VBox uses = new VBox(TICKS, title("editor.print.garment"), why);
        for (Use use : Use.values()) {
            uses.getChildren().add(use(use));
        }
        getChildren().setAll(kinds(), sizes(), print, report, uses, ticks);
        show();
    }

    PaperChoice choice() {
        return choice;
    }

    ScrollPane scrolled() {
        ScrollPane scroll = new ScrollPane(this);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("sheet-page");
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        WholeLines.on(scroll, this);
        return scroll;
    }

    private void choose(UnaryOperator<PaperChoice> step) {
        PaperChoice next = step.apply(choice);
        if (!next.equals(choice)) {
            choice = next;
            show();
            chosen.accept(choice);
        }
    }

    private void show() {
        Parts.present(print, !choice.report());
        Parts.present(report, choice.report());
        Parts.present(margin, choice.onPaper());
        Parts.present(overlap, choice.joined());
        pieces.forEach((piece, tick) ->
                Parts.present(tick, piece.size().map(choice.sizes()::contains).orElse(true)));
        surface.setValue(choice.surface());
        reportOn.setValue(choice.reportOn());
    }

    private Label title(String key) {
        Label title = new Label(words.of(key));
        title.getStyleClass().add("section-title");
        return title;
    }

    private HBox kinds() {
        ToggleGroup group = new OneOf();
        ToggleButton pieces = kind(group, "pieces", false);
        ToggleButton record = kind(group, "report", true);
        pieces.setSelected(true);
        pieces.getStyleClass().add("left-pill");
        record.getStyleClass().add("right-pill");
        return new HBox(pieces, record);
    }

    /** Which of several sizes are wanted, at first those in which something is done. */
    private Node sizes() {
        FlowPane ticks = new FlowPane(12, 4);
        List<String> known = desk.size().isEmpty() ? List.of() : PatternPart.sizes(desk.pattern());
        for (String size : known) {
            CheckBox tick = new CheckBox(size);
            tick.setMnemonicParsing(false);
            tick.setId("print-size-" + size);
            Heard.name(tick, words.of("editor.print.size.name", Map.of("size", size)));
            Hints.on(tick, words.of("editor.print.size.hint", Map.of("size", size)));
            tick.setSelected(choice.sizes().contains(size));
            tick.setOnAction(e -> choose(c -> c.withSize(size, tick.isSelected())));
            ticks.getChildren().add(tick);
        }
        VBox box = new VBox(8, title("editor.print.sizes"), ticks);
        Parts.present(box, !known.isEmpty());
        return box;
    }

    private ToggleButton kind(ToggleGroup group, String name, boolean isReport) {
        ToggleButton button = new ToggleButton(words.of("editor.print.kind." + name));
        button.setId("print-kind-" + name);
        Hints.on(button, words.of("editor.print.kind." + name + ".hint"));
        button.setToggleGroup(group);
        button.setOnAction(e -> choose(c -> c.withReport(isReport)));
        return button;
    }

    private ChoiceBox<Surface> papers(String name, List<Surface> offered, PaperStep step) {
        ChoiceBox<Surface> box = new ChoiceBox<>();
        box.setId("print-" + name);
        box.setMaxWidth(Double.MAX_VALUE);
        box.getItems().setAll(offered);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(Surface paper) {
                return paper == null ? "" : words.of("editor.print." + name + "." + key(paper));
            }

            @Override
            public Surface fromString(String text) {
                return box.getValue();
            }
        });
        Hints.on(box, words.of("editor.print." + name + ".hint"));
        Heard.name(box, words.of("editor.print." + name + ".hint"));
        box.setOnAction(e -> choose(c -> step.with(c, box.getValue())));
        return box;
    }

    private Node length(String name, double mm, LengthStep step) {
        Label complaint = new Label();
        LengthField field = new LengthField(complaint, value -> value.ifPresent(v -> choose(c -> step.with(c, v))));
        field.setId("print-" + name);
        field.setPrefColumnCount(7);
        field.describe(words.of("editor.print." + name), words.of("editor.print." + name + ".hint"));
        field.show(words.entered(mm), desk.unit());
        Label label = new Label(words.of("editor.print." + name));
        label.setMinWidth(150);
        label.setWrapText(true);
        HBox row = new HBox(8, label, field);
        row.setAlignment(Pos.CENTER_LEFT);
        return new VBox(2, row, complaint);
    }

    private Node piece(Piece piece) {
        CheckBox box = new CheckBox(piece.name());
        box.setMnemonicParsing(false);
        box.setId("print-piece-" + piece.id());
        Hints.on(box, words.of("editor.print.piece.hint", Map.of("piece", piece.name())));
        box.setSelected(true);
        box.setOnAction(e -> choose(c -> c.withPiece(piece.id(), box.isSelected())));
        return box;
    }

    private Node use(Use use) {
        CheckBox box = new CheckBox(words.of("editor.print.use." + key(use)));
        box.setId("print-use-" + key(use));
        Hints.on(box, words.of("editor.print.use.hint"));
        box.setWrapText(true);
        box.setOnAction(e -> choose(c -> c.withUse(use, box.isSelected())));
        return box;
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** Sets a paper of the choice. */
    private interface PaperStep {
        PaperChoice with(PaperChoice choice, Surface paper);
    }

    /** Sets a length of the choice. */
    private interface LengthStep {
        PaperChoice with(PaperChoice choice, double mm);
    }
}
