package easewright.editor.panel;

import easewright.editor.mark.Marker;
import easewright.editor.mark.MateEdits;
import easewright.editor.mark.SeamsView;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One seam: its name, the edges on both sides, the ease between them and how they fit. */
final class SeamCard extends VBox {
    private static final PseudoClass AWAY = PseudoClass.getPseudoClass("away");
    private static final PseudoClass MET = PseudoClass.getPseudoClass("met");
    private static final int MOST_TIMES = 4;

    /** How wide the words before each row are, pixels. */
    private static final double LEAD = 80;

    /** How high a line of edges is, pixels. */
    private static final double EDGE = 26;

    /** Beside an edge with more letters there may be no room for the sign for one more. */
    private static final int LONGEST_LED = 36;

    private final Session session;
    private final Marker marker;
    private final NameField name;
    private final HBox top = new HBox(8);
    private final Label firstLabel = new Label();
    private final FlowPane first = new FlowPane(4, 4);
    private final Label secondLabel = new Label();
    private final FlowPane second = new FlowPane(4, 4);
    private final Label easeLabel = new Label();
    private final LengthField ease;
    private final Label verdict = new Label();
    private final Label halves = new Label();
    private final Button count = new Button();
    private final Label underlap = new Label();
    private final FlowPane ends = new FlowPane(6, 4);
    private SeamsView.Seam seam;

    SeamCard(Session session, Marker marker) {
        super(6);
        this.session = session;
        this.marker = marker;
        Label wrongName = new Label();
        name = new NameField(wrongName, text -> marker.attempt(p -> MateEdits.rename(p, seam.name(), text)));
        // What takes the seam away stands beside its name, however wide the sheet.
        name.setPrefWidth(200);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        Label wrongEase = new Label();
        ease = new LengthField(
                wrongEase, mm -> session.edit(MateEdits.ease(session.desk().pattern(), seam.name(), mm.orElse(0))));
        ease.setPrefWidth(90);
        verdict.setWrapText(true);
        verdict.getStyleClass().add("verdict");
        List.of(firstLabel, secondLabel, easeLabel).forEach(label -> {
            label.getStyleClass().add("quiet");
            label.setMinWidth(LEAD);
        });
        HBox declared = new HBox(4, easeLabel, ease);
        declared.setAlignment(Pos.CENTER_LEFT);
        top.setAlignment(Pos.CENTER_LEFT);
        halves.setWrapText(true);
        halves.getStyleClass().add("quiet");
        count.getStyleClass().add("small");
        count.setOnAction(e -> session.edit(MateEdits.countHalves(session.desk().pattern(), seam.name())));
        underlap.setWrapText(true);
        underlap.getStyleClass().add("quiet");
        getChildren()
                .setAll(
                        top,
                        wrongName,
                        led(firstLabel, first),
                        led(secondLabel, second),
                        declared,
                        wrongEase,
                        verdict,
                        halves,
                        count,
                        underlap,
                        ends);
        getStyleClass().addAll("mark-card", "seam-card");
        Parts.lights(this, marker, () -> seam.shown());
    }

    void show(SeamsView.Seam now, List<SeamsView.EdgeChoice> edges, Desk desk) {
        Words words = desk.words();
        boolean same = now.equals(seam);
        seam = now;
        Map<String, Object> values = Map.of("seam", now.name());
        name.describe(words.of("editor.seam.name", values), words.of("editor.seam.name.hint"));
        name.show(now.name());
        ease.describe(words.of("editor.seam.ease.name", values), words.of("editor.seam.ease.hint"));
        ease.show(now.ease(), desk.unit());
        firstLabel.setText(words.of("editor.seam.first"));
        secondLabel.setText(words.of("editor.seam.second"));
        easeLabel.setText(words.of("editor.seam.ease"));
        verdict.setText(now.verdict());
        verdict.pseudoClassStateChanged(AWAY, !now.fits());
        verdict.pseudoClassStateChanged(MET, now.fits());
        halves.setText(now.halves());
        Parts.present(halves, !now.halves().isEmpty());
        Parts.say(count, words, "editor.seam.halves.count");
        Parts.about(count, now.name());
        Parts.present(count, now.count());
        underlap(desk);
        if (!same || top.getChildren().isEmpty()) {
            Button away = Parts.cross(
                    words.of("editor.seam.away", values),
                    () -> session.edit(MateEdits.remove(session.desk().pattern(), seam.name())));
            top.getChildren().setAll(name, away);
            keepingFocus(first, () -> side(first, true, now.first(), edges, words));
            keepingFocus(second, () -> side(second, false, now.second(), edges, words));
        }
    }

    /** What goes on in another line goes on beneath the edges, not beneath the words before them. */
    private static HBox led(Label lead, FlowPane edges) {
        HBox.setHgrow(edges, Priority.ALWAYS);
        edges.setRowValignment(VPos.CENTER);
        // As high as one line of edges, so that it stands beside the first.
        lead.setMinHeight(EDGE);
        return new HBox(4, lead, edges);
    }

    /** A band that is longer than the waist: whether by its underlap, and at which end. */
    private void underlap(Desk desk) {
        Words words = desk.words();
        Parts.present(underlap, seam.underlap().isPresent());
        Parts.present(ends, seam.underlap().isPresent());
        ends.getChildren().clear();
        seam.underlap().ifPresent(band -> {
            underlap.setText(words.of("editor.seam.underlap", Map.of("by", band.mm())));
            band.ends(desk.pattern()).forEach((end, atEnd) -> {
                Button press = new Button();
                press.getStyleClass().add("small");
                Parts.say(press, words, "editor.seam.underlap." + end.name());
                Parts.about(press, seam.name());
                press.setOnAction(e -> session.edit(band.parted(session.desk().pattern(), atEnd)));
                ends.getChildren().add(press);
            });
        });
    }

    /** What was worked with is made anew: the keys stay there, or they would go to the name and what is typed as well. */
    private static void keepingFocus(FlowPane pane, Runnable anew) {
        int at = -1;
        List<Node> before = presses(pane);
        for (int i = 0; i < before.size(); i++) {
            at = before.get(i).isFocused() ? i : at;
        }
        int parts = before.size();
        anew.run();
        if (at >= 0) {
            // The sign for one more edge stays the last.
            boolean last = at == parts - 1;
            List<Node> after = presses(pane);
            int now = after.size() - 1;
            after.get(last ? now : Math.min(at, now)).requestFocus();
        }
    }

    private static List<Node> presses(FlowPane pane) {
        return pane.getChildren().stream()
                .flatMap(n -> n instanceof HBox row ? row.getChildren().stream() : Stream.of(n))
                .toList();
    }

    /** Each edge as a button with its choices, and at the end one to add another. */
    private void side(
            FlowPane pane,
            boolean isFirst,
            List<SeamsView.EdgeChoice> side,
            List<SeamsView.EdgeChoice> all,
            Words words) {
        pane.getChildren().clear();
        for (SeamsView.EdgeChoice edge : side) {
            pane.getChildren().add(edge(edge, isFirst, words));
        }
        MenuButton add = new MenuButton("+");
        add.getStyleClass().addAll("small", "dots");
        Parts.name(
                add,
                words.of(isFirst ? "editor.seam.add.first" : "editor.seam.add.second", Map.of("seam", seam.name())));
        List<SeamsView.EdgeChoice> others =
                all.stream().filter(c -> !seam.has(c)).toList();
        add.setDisable(others.isEmpty());
        EdgeMenu.fill(
                add,
                others,
                session.desk().pattern(),
                marker.state().piece(),
                each -> session.edit(MateEdits.addEdge(session.desk().pattern(), seam.name(), isFirst, each.ref())));
        // It never stands in a line of its own, where it would seem to belong to the next side.
        List<Node> edges = pane.getChildren();
        HBox end = new HBox(4);
        if (!edges.isEmpty() && side.get(side.size() - 1).words().length() <= LONGEST_LED) {
            end.getChildren().add(edges.remove(edges.size() - 1));
        }
        end.getChildren().add(add);
        edges.add(end);
    }

    private MenuButton edge(SeamsView.EdgeChoice edge, boolean isFirst, Words words) {
        MenuButton button = new MenuButton(edge.words());
        button.setMnemonicParsing(false);
        button.getStyleClass().addAll("small", "chip");
        button.setMinWidth(Region.USE_PREF_SIZE);
        Parts.name(button, words.of("editor.seam.edge.hint", Map.of("edge", edge.words())));
        for (int times = 1; times <= MOST_TIMES; times++) {
            int count = times;
            MenuItem item = new MenuItem(
                    words.of(times == 1 ? "editor.seam.count.one" : "editor.seam.count", Map.of("times", times)));
            item.setOnAction(
                    e -> session.edit(MateEdits.times(session.desk().pattern(), seam.name(), edge.ref(), count)));
            button.getItems().add(item);
        }
        MenuItem away = new MenuItem(words.of("editor.seam.edge.away"));
        away.setOnAction(e -> marker.tryTo(p -> MateEdits.removeEdge(p, seam.name(), isFirst, edge.ref())));
        button.getItems().add(away);
        return button;
    }
}
