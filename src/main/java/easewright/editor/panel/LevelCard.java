package easewright.editor.panel;

import easewright.editor.mark.LastPlaced;
import easewright.editor.mark.LevelEdits;
import easewright.editor.mark.LevelElsewhere;
import easewright.editor.mark.LevelMeetings;
import easewright.editor.mark.LevelOrder;
import easewright.editor.mark.LevelsView;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.SeamsView;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One level: put it on all pieces by its distance from another one, or piece by piece. */
final class LevelCard extends VBox {
    /** As high as two lines, or as the button beside them: room for what comes to be said while distances are typed. */
    private static final double SAID = 34;

    /** At the right of their heading, so that it stands over them; pixels. */
    private static final double BESIDE_TICKS = 29;

    private final Session session;
    private final Marker marker;
    private final Label title = new Label();
    private final Label girth = new Label();
    private final ToggleButton place = new ToggleButton();
    private final Label measured = new Label();
    private final MenuButton along = new MenuButton();
    private final MenuItem across = new MenuItem();
    private final MenuButton round = new MenuButton();
    private final MenuItem roundBody = new MenuItem();
    private final MenuItem roundLimb = new MenuItem();
    private final LevelOffer offer;
    private final HBox top;
    private final VBox belowRow;
    private final Label belowLead = new Label();
    private final Label way = new Label();
    private final ComboBox<String> other = new ComboBox<>();
    private final LengthField below;
    private final Label notBelow = new Label();
    /** From where all places are measured, where that is the same. */
    private final Label howHead = new Label();

    private final Label countsHead = new Label();
    /** Over the distances and the ticks of the places. */
    private final HBox heads = new HBox(howHead, Parts.gap(), countsHead);

    private final VBox places = new VBox(2);
    private final Label apart = new Label();
    private final Button meet = new Button();
    /** What is wrong with what was typed, in the place of what else is said of the distances. */
    private final VBox wrong = new VBox(3);

    /** What else is said of them. */
    private final HBox said;

    private final StackPane foot;
    private final List<LevelPlaceRow> rows = new ArrayList<>();
    private LevelsView.Row row;
    /** How far it lies from the other level, mm, and in which pattern: asked for by every move of the mouse. */
    private OptionalDouble far = OptionalDouble.empty();

    private Pattern lain;
    private List<SeamsView.EdgeChoice> offered = List.of();
    private Optional<String> inHand = Optional.empty();

    LevelCard(Session session, Marker marker) {
        super(6);
        this.session = session;
        this.marker = marker;
        getStyleClass().add("mark-card");
        title.getStyleClass().add("section-title");
        title.setWrapText(true);
        title.setMinHeight(USE_PREF_SIZE);
        girth.setMinWidth(USE_PREF_SIZE);
        girth.getStyleClass().add("quiet");
        place.getStyleClass().add("small");
        place.setMinWidth(USE_PREF_SIZE);
        place.setOnAction(e -> marker.takeLevel(row.name()));
        across.setOnAction(e -> marker.holdLevel(row.name()));
        measured.setMinWidth(USE_PREF_SIZE);
        focusWithinProperty().addListener((o, was, is) -> {
            if (is) {
                marker.workAt(row.name());
            }
        });
        along.getStyleClass().add("small");
        along.setMinWidth(USE_PREF_SIZE);
        round.getStyleClass().add("small");
        round.setMinWidth(USE_PREF_SIZE);
        round.getItems().setAll(roundBody, roundLimb);
        roundBody.setOnAction(e -> goRound(false));
        roundLimb.setOnAction(e -> goRound(true));
        top = new HBox(6);
        top.setAlignment(Pos.CENTER_LEFT);
        below = new LengthField(notBelow, this::putBelow);
        below.setPrefWidth(84);
        below.setMinWidth(84);
        way.setMinWidth(USE_PREF_SIZE);
        other.setMinWidth(84);
        other.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(other, Priority.ALWAYS);
        HBox from = new HBox(8, below, way, other);
        from.setAlignment(Pos.CENTER_LEFT);
        belowLead.setWrapText(true);
        belowLead.setMinHeight(USE_PREF_SIZE);
        belowRow = new VBox(5, belowLead, from);
        said = new HBox(8, apart, meet);
        HBox.setHgrow(apart, Priority.ALWAYS);
        apart.setMaxWidth(Double.MAX_VALUE);
        foot = new StackPane(said, wrong);
        wrong.mouseTransparentProperty().bind(said.visibleProperty());
        foot.setAlignment(Pos.TOP_LEFT);
        addEventHandler(CheckedField.JUDGED, e -> judged());
        offer = new LevelOffer(marker);
        HBox how = new HBox(6, measured, along, round);
        how.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(top, how, offer, belowRow, new VBox(heads, places), foot);
        howHead.getStyleClass().add("quiet");
        countsHead.getStyleClass().add("quiet");
        heads.setMaxWidth(LevelPlaceRow.WIDEST);
        heads.setPadding(new Insets(0, BESIDE_TICKS, 0, LevelPlaceRow.PIECE + LeadLine.GAP));
        meet.getStyleClass().add("small");
        meet.setMinWidth(USE_PREF_SIZE);
        meet.setOnAction(e -> letMeet());
        apart.setWrapText(true);
        apart.setMinHeight(USE_PREF_SIZE);
    }

    /** The keys go to where the level is placed: by its distance from another one where there is one. */
    void takeKeys() {
        (belowRow.isManaged() ? below : place).requestFocus();
    }

    /** What was put last stays where it was put: the other pieces follow it. */
    private void letMeet() {
        Set<String> last = LastPlaced.on(session.desk().history().upToPresent(), row.name());
        LevelMeetings.better(session.desk().pattern(), row.name(), last).ifPresent(session::edit);
    }

    private void goRound(boolean limb) {
        session.edit(LevelEdits.limb(session.desk().pattern(), row.name(), limb));
    }

    private void judged() {
        said.setVisible(wrong.getChildren().stream().noneMatch(Node::isVisible));
    }

    private String wayTo(String base, Desk desk) {
        return base != null && LevelOrder.isAbove(desk.pattern(), row.name(), base)
                ? "editor.level.above.what"
                : "editor.level.below.what";
    }

    /** How far it lies from the other level, where that is the same on all pieces. */
    private void showBelow(boolean another, Desk desk) {
        if (desk.pattern() != lain || another) {
            lain = desk.pattern();
            String base = other.getValue();
            OptionalDouble down =
                    base == null ? OptionalDouble.empty() : LevelEdits.below(desk.pattern(), row.name(), base);
            boolean up = base != null && LevelOrder.isAbove(desk.pattern(), row.name(), base);
            belowLead.setText(lead(base, down.isPresent(), desk));
            far = down.isPresent() ? OptionalDouble.of(up ? -down.getAsDouble() : down.getAsDouble()) : down;
        }
        String said = far.isPresent() && far.getAsDouble() > 0 ? desk.words().length(far.getAsDouble()) : "";
        below.showOf(another, said, desk.unit());
    }

    /** Where the pieces have it at different distances, on which one the distance in the field is measured. */
    private String lead(String base, boolean lies, Desk desk) {
        return Optional.ofNullable(base)
                .filter(b -> lies && row.apart())
                .flatMap(b -> LevelEdits.measuredOn(desk.pattern(), row.name(), b))
                .map(p -> led(p, base, desk))
                .orElseGet(() -> evenly(base, desk));
    }

    private String evenly(String base, Desk desk) {
        OptionalDouble side =
                base == null ? OptionalDouble.empty() : LevelEdits.atSides(desk.pattern(), row.name(), base);
        return side.isPresent()
                ? desk.words().of("editor.level.below.shaped", Map.of("side", Math.abs(side.getAsDouble())))
                : desk.words().of("editor.level.below");
    }

    /** At the centre and at the side it is not the same, where the other is shaped: both are told. */
    private String led(Piece piece, String base, Desk desk) {
        OptionalDouble side = LevelEdits.atSide(piece, row.name(), base);
        return side.isPresent()
                ? desk.words()
                        .of(
                                "editor.level.below.led.side",
                                Map.of("piece", piece.plainName(), "side", Math.abs(side.getAsDouble())))
                : desk.words().of("editor.level.below.led", Map.of("piece", piece.plainName()));
    }

    private void putBelow(OptionalDouble mm) {
        if (mm.isPresent() && other.getValue() != null) {
            String base = other.getValue();
            marker.tryTo(p -> LevelEdits.below(
                    p,
                    row.name(),
                    base,
                    LevelOrder.isAbove(p, row.name(), base) ? -mm.getAsDouble() : mm.getAsDouble()));
        }
    }

    /**
     * @param sizes what is offered of it for other sizes
     */
    void show(LevelsView.Row now, LevelElsewhere sizes, List<SeamsView.EdgeChoice> edges, Desk desk, MarkState state) {
        Words words = desk.words();
        boolean another = row == null || !row.name().equals(now.name());
        row = now;
        Map<String, Object> level = Map.of("level", now.name());
        String id = now.name().replace(' ', '-');
        title.setText(now.name());
        girth.setText(now.girth());
        Hints.on(girth, words.of("editor.level.girth.hint"));
        place.setId("level-place-" + id);
        Parts.say(place, words, "editor.level.place");
        Parts.about(place, now.name());
        place.setSelected(state.tool() == Tool.LEVEL && state.level().equals(Optional.of(now.name())));
        roundBody.setText(words.of("editor.level.round.body"));
        roundLimb.setText(words.of("editor.level.round.limb"));
        round.setId("level-round-" + id);
        round.setText(now.limb() ? roundLimb.getText() : roundBody.getText());
        Heard.name(round, words.of("editor.level.round.name", level) + ": " + round.getText());
        Hints.on(round, words.of("editor.level.round.hint"));
        measured.setText(words.of("editor.level.measured"));
        along.setId("level-measured-" + id);
        along.setText(now.measured());
        Heard.name(along, words.of("editor.level.measured.name", level) + ": " + now.measured());
        Hints.on(along, words.of("editor.level.measured.hint"));
        across.setText(words.of("editor.level.measured.across.choose"));
        if (!edges.equals(offered) || !state.piece().equals(inHand)) {
            offered = edges;
            inHand = state.piece();
            EdgeMenu.fill(
                    along,
                    edges,
                    desk.pattern(),
                    inHand,
                    edge -> session.edit(LevelEdits.along(
                            session.desk().pattern(),
                            edge.ref().piece(),
                            row.name(),
                            edge.ref().edge())));
            along.getItems().add(0, across);
        }
        if (another) {
            top.getChildren()
                    .setAll(
                            title,
                            girth,
                            Parts.gap(),
                            place,
                            Parts.cross(
                                    words.of("editor.level.away", level),
                                    () -> marker.tryTo(p -> LevelEdits.remove(p, row.name()))));
        }
        offer.show(now.name(), sizes, words);
        below.setId("level-below-" + id);
        below.describe(words.of("editor.level.below.name", level), words.of("editor.level.below.hint"));
        if (!other.getItems().equals(now.others())) {
            other.getItems().setAll(now.others());
        }
        if (other.getValue() == null && !now.others().isEmpty()) {
            other.setValue(
                    now.others().contains("waist") ? "waist" : now.others().get(0));
        }
        way.setText(words.of(wayTo(other.getValue(), desk)));
        other.setOnAction(e -> {
            way.setText(session.desk().words().of(wayTo(other.getValue(), session.desk())));
            showBelow(true, session.desk());
        });
        Hints.name(other, words.of("editor.level.other"));
        below.setPromptText(words.of("editor.level.below.prompt"));
        showBelow(another, desk);
        boolean alongOnly = !now.places().isEmpty()
                && now.places().stream().allMatch(p -> p.distance().isEmpty());
        boolean can = !now.others().isEmpty() && !alongOnly;
        Parts.present(belowRow, can);
        if (another || rows.size() != now.places().size()) {
            rows.clear();
            now.places().forEach(p -> rows.add(new LevelPlaceRow(session)));
            places.getChildren().setAll(rows);
            wrong.getChildren().setAll(notBelow);
            rows.forEach(r -> wrong.getChildren().add(r.wrong()));
            judged();
        }
        List<String> hows =
                now.places().stream().map(LevelsView.Place::how).distinct().toList();
        howHead.setText(hows.size() == 1 && !alongOnly ? hows.get(0) : "");
        Parts.present(heads, !rows.isEmpty());
        countsHead.setText(words.of("editor.level.counts.head"));
        Hints.on(countsHead, words.of("editor.level.counts.hint"));
        boolean misses = !now.misses().isEmpty();
        apart.setText(misses ? now.misses() : words.of("editor.level.apart"));
        apart.getStyleClass().setAll("label", now.meetable() ? "complaint" : "quiet");
        Parts.present(apart, misses || now.apart());
        meet.setId("level-meet-" + id);
        Parts.say(meet, words, "editor.level.meet");
        Parts.about(meet, now.name());
        Parts.present(meet, now.meetable());
        boolean typed = can || now.places().stream().anyMatch(p -> !p.distance().isEmpty());
        foot.setMinHeight(typed ? SAID : 0);
        Parts.present(foot, typed || apart.isManaged());
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(now.name(), now.places().get(i), hows.size() > 1, desk);
        }
    }
}
