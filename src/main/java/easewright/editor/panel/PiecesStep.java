package easewright.editor.panel;

import easewright.editor.mark.MarkRefused;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.MeasureEdits;
import easewright.editor.mark.OtherLines;
import easewright.editor.mark.PieceEdits;
import easewright.editor.mark.PieceView;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The marks of one piece after the other: name and count, edges, darts, notches, grain. */
final class PiecesStep extends StepPage {
    /** What stands before the fields at the left, and how wide those at the right are; pixels. */
    private static final double LEAD = 76;

    private static final double RIGHT = 90;

    private final OpenCard open;
    private final LineCard line;
    private final ComboBox<PieceView.Choice> pieces = new ComboBox<>();
    private final Button noPiece = new Button();
    private final LooseMenu more;
    private final Label nameLabel = new Label();
    private final NameField name;
    private final Label cutLabel = new Label();
    private final NameField times;
    private final CheckBox fold = new CheckBox();
    private final CheckBox lined = new CheckBox();
    private final Label sizeLabel = new Label();
    private final NameField size;
    private final Label lineLabel = new Label();
    private final ToggleButton stitching = new ToggleButton();
    private final ToggleButton cutting = new ToggleButton();
    private final Label allowanceLabel = new Label();
    private final LengthField allowance;
    private final Label edgesTitle = new Label();
    private final ToggleButton split;
    private final HBox heads = new HBox(4);
    private final VBox edges = new VBox();
    private final MarkList darts;
    private final MarkList notches;
    private final Label grainTitle = new Label();
    private final Label grain = new Label();
    private final ToggleButton drawGrain;
    private final Button noGrain = new Button();
    private final List<EdgeRowView> rows = new ArrayList<>();
    private String shownPiece = "";
    private boolean filling;

    /**
     * @param shower brings a place into sight
     */
    PiecesStep(Session session, Marker marker, Consumer<Pointed> shower) {
        super(session, marker, MarkState.Step.PIECES);
        open = new OpenCard(session, marker, shower);
        line = new LineCard(session, marker);
        more = new LooseMenu(session, marker, line);
        setSpacing(10);
        pieces.setId("piece-choice");
        pieces.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(pieces, Priority.ALWAYS);
        pieces.setOnAction(e -> {
            if (!filling && pieces.getValue() != null) {
                marker.choosePiece(pieces.getValue().id());
            }
        });
        noPiece.setId("no-piece");
        noPiece.getStyleClass().add("small");
        noPiece.setMinWidth(USE_PREF_SIZE);
        noPiece.setOnAction(e -> line.noPiece(shownPiece));
        Label wrongName = new Label();
        name = new NameField(wrongName, text -> marker.attempt(p -> PieceEdits.rename(p, shownPiece, text)));
        name.setId("piece-name");
        name.setPrefWidth(150);
        Label wrongTimes = new Label();
        times = new NameField(
                wrongTimes, text -> marker.attempt(p -> PieceEdits.cut(p, shownPiece, text, fold.isSelected())));
        times.setId("piece-times");
        times.setPrefWidth(48);
        size = new NameField(new Label(), text -> marker.attempt(p -> PieceEdits.size(p, shownPiece, text)));
        size.setId("piece-size");
        size.setPrefWidth(RIGHT);
        fold.setId("piece-fold");
        fold.setOnAction(e -> marker.attempt(p -> PieceEdits.cut(p, shownPiece, times.getText(), fold.isSelected())));
        lined.setId("piece-lined");
        lined.setOnAction(
                e -> session.edit(PieceEdits.layers(session.desk().pattern(), shownPiece, lined.isSelected() ? 2 : 1)));
        Label wrongAllowance = new Label();
        allowance = LengthField.refusing(wrongAllowance, mm -> line(cutting.isSelected(), mm));
        allowance.setId("piece-allowance");
        allowance.setPrefWidth(RIGHT);
        List.of(nameLabel, cutLabel, lineLabel).forEach(label -> label.setMinWidth(LEAD));
        ToggleGroup kinds = new OneOf();
        for (ToggleButton kind : List.of(stitching, cutting)) {
            kind.setToggleGroup(kinds);
            kind.getStyleClass().addAll("small", "chip");
        }
        stitching.setId("line-stitching");
        cutting.setId("line-cutting");
        stitching.setOnAction(e -> line(false, present()));
        cutting.setOnAction(e -> {
            line(true, present());
            // A cutting line says nothing without its allowance: it is to be typed next.
            if (present().orElse(0) == 0) {
                allowance.requestFocus();
                allowance.selectAll();
            }
        });
        split = Parts.tool(Tool.SPLIT, marker);
        heads.getStyleClass().add("edge-heads");
        darts = new MarkList(Tool.DART, "editor.darts", marker);
        notches = new MarkList(Tool.NOTCH, "editor.notches", marker);
        drawGrain = Parts.tool(Tool.GRAIN, marker);
        noGrain.getStyleClass().add("small");
        noGrain.setMinWidth(USE_PREF_SIZE);
        noGrain.setOnAction(e -> session.edit(PieceEdits.noGrain(session.desk().pattern(), shownPiece)));
        grain.getStyleClass().add("quiet");
        HBox called = new HBox(8, nameLabel, name, Parts.gap(), sizeLabel, size);
        called.setAlignment(Pos.CENTER_LEFT);
        HBox cut = new HBox(8, cutLabel, times, fold, lined);
        cut.setAlignment(Pos.CENTER_LEFT);
        HBox drawn = new HBox(8, lineLabel, new HBox(4, stitching, cutting), Parts.gap(), allowanceLabel, allowance);
        drawn.setAlignment(Pos.CENTER_LEFT);
        HBox choice = new HBox(8, pieces, noPiece, more);
        choice.setAlignment(Pos.CENTER_LEFT);
        VBox grainBox = new VBox(2, Parts.heading(grainTitle, drawGrain, noGrain), grain);
        VBox edgeBox = new VBox(2, Parts.heading(edgesTitle, split), heads, edges);
        for (VBox section : List.of(edgeBox, darts, notches, grainBox)) {
            section.getStyleClass().add("mark-card");
        }
        begin(
                open,
                choice,
                line,
                called,
                wrongName,
                cut,
                wrongTimes,
                drawn,
                wrongAllowance,
                edgeBox,
                darts,
                notches,
                grainBox);
    }

    private OptionalDouble present() {
        return session.desk().pattern().piece(shownPiece).stream()
                .mapToDouble(p -> p.allowance())
                .findFirst();
    }

    private String line(boolean cut, OptionalDouble mm) {
        LineKind kind = cut ? LineKind.CUTTING : LineKind.STITCHING;
        return marker.attempt(p -> PieceEdits.line(p, shownPiece, kind, mm));
    }

    @Override
    void show(Desk desk, MarkState state) {
        Words words = desk.words();
        PieceView view = PieceView.of(desk, state);
        filling = true;
        if (!pieces.getItems().equals(view.pieces())) {
            pieces.getItems().setAll(view.pieces());
        }
        view.pieces().stream().filter(c -> c.id().equals(view.id())).findFirst().ifPresent(pieces::setValue);
        filling = false;
        open.show(desk);
        List<OtherLines.Other> others = marker.lines().all(marker.sheet());
        line.show(others, state, words);
        more.offer(others, words);
        boolean another = !view.id().equals(shownPiece);
        if (another) {
            shownPiece = view.id();
            name.showAnother(view.name());
            times.showAnother(view.times());
            size.showAnother(view.size());
            darts.clear();
            notches.clear();
        }
        name.show(view.name());
        times.show(view.times());
        size.show(view.size());
        fold.setSelected(view.onFold());
        Parts.present(lined, view.lined().isPresent());
        lined.setSelected(view.lined().orElse(false));
        stitching.setSelected(!view.cutting());
        cutting.setSelected(view.cutting());
        allowance.showOf(another, view.allowance(), desk.unit());
        if (another || rows.size() != view.edges().size()) {
            rows.clear();
            view.edges().forEach(e -> rows.add(new EdgeRowView(view.id(), marker, words)));
            edges.getChildren().setAll(rows);
        }
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(view.edges().get(i), view.allowance(), !view.cutting(), desk.unit());
        }
        darts.show(
                view.darts(),
                words,
                desk.unit(),
                (i, text) -> marker.attempt(p ->
                        PieceEdits.renameDart(p, shownPiece, view.darts().get(i).name(), text)),
                (i, key, mm) -> marker.attempt(p -> dart(p, view.darts().get(i).name(), key, mm)),
                i -> session.edit(PieceEdits.removeDart(
                        desk.pattern(), shownPiece, view.darts().get(i).name())));
        notches.show(
                view.notches(),
                words,
                desk.unit(),
                (i, text) -> marker.attempt(p -> PieceEdits.renameNotch(p, shownPiece, i, text)),
                (i, key, mm) -> marker.attempt(p -> MeasureEdits.notchAt(p, shownPiece, i, mm)),
                i -> session.edit(PieceEdits.removeNotch(desk.pattern(), shownPiece, i)));
        grain.setText(view.grain());
    }

    private Pattern dart(Pattern pattern, String dart, String key, double mm) throws MarkRefused {
        return switch (key) {
            case PieceView.DART_WIDTH -> MeasureEdits.dartWidth(pattern, shownPiece, dart, mm);
            case PieceView.DART_OTHER -> MeasureEdits.dartOtherLength(pattern, shownPiece, dart, mm);
            default -> MeasureEdits.dartLength(pattern, shownPiece, dart, mm);
        };
    }

    @Override
    void words(Words words) {
        Hints.on(pieces, words.of("editor.piece.choose.hint"));
        Heard.name(pieces, words.of("editor.piece.choose"));
        Parts.say(noPiece, words, "editor.piece.none");
        nameLabel.setText(words.of("editor.piece.name"));
        name.describe(words.of("editor.piece.name"), words.of("editor.piece.name.hint"));
        cutLabel.setText(words.of("editor.piece.times"));
        times.describe(words.of("editor.piece.times"), words.of("editor.piece.times.hint"));
        sizeLabel.setText(words.of("editor.piece.size"));
        size.setPromptText(words.of("editor.piece.size.prompt"));
        size.describe(words.of("editor.piece.size"), words.of("editor.piece.size.hint"));
        Parts.say(fold, words, "editor.piece.on-fold");
        Parts.say(lined, words, "editor.piece.lined");
        lineLabel.setText(words.of("editor.piece.line"));
        Parts.say(stitching, words, "editor.piece.stitching");
        Parts.say(cutting, words, "editor.piece.cutting");
        Heard.oneOf(lineLabel, stitching);
        Heard.oneOf(lineLabel, cutting);
        allowanceLabel.setText(words.of("editor.piece.allowance"));
        allowance.describe(words.of("editor.piece.allowance"), words.of("editor.piece.allowance.hint"));
        edgesTitle.setText(words.of("editor.edges"));
        Parts.show(split, Tool.SPLIT, marker, words);
        Parts.show(drawGrain, Tool.GRAIN, marker, words);
        darts.words(words);
        notches.words(words);
        grainTitle.setText(words.of("editor.grain"));
        Parts.say(noGrain, words, "editor.grain.away");
        Parts.about(noGrain, grainTitle.getText());
        if (heads.getChildren().isEmpty()) {
            heads.getChildren()
                    .setAll(
                            head(words, "name", EdgeRowView.NAME, Pos.CENTER_LEFT),
                            head(words, "role", EdgeRowView.ROLE, Pos.CENTER_LEFT),
                            head(words, "allowance", EdgeRowView.ALLOWANCE, Pos.CENTER_RIGHT),
                            head(words, "length", EdgeRowView.LENGTH, Pos.CENTER_RIGHT));
            Parts.takeRoom((Label) heads.getChildren().get(0), EdgeRowView.NAME, edges);
        }
    }

    private static Label head(Words words, String key, double width, Pos side) {
        Label label = new Label(words.of("editor.edge.head." + key));
        label.setMinWidth(width);
        label.setPrefWidth(width);
        label.setAlignment(side);
        return label;
    }
}
