package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The page on which a drawing becomes a pattern, part by part. */
public final class MarksPanel extends VBox {
    private final Session session;
    private final Marker marker;
    private final Map<MarkState.Step, ToggleButton> tabs = new EnumMap<>(MarkState.Step.class);
    private final Map<MarkState.Step, Node> pages = new EnumMap<>(MarkState.Step.class);

    public MarksPanel(Session session, Marker marker) {
        this.session = session;
        this.marker = marker;
        setId("marks");
        getStyleClass().add("marks");
        pages.put(MarkState.Step.SCALE, page(new ScaleStep(session, marker)));
        HBox row = new HBox(4);
        row.getStyleClass().add("mark-steps");
        ToggleGroup group = new ToggleGroup();
        for (MarkState.Step step : MarkState.Step.values()) {
            ToggleButton tab = new ToggleButton();
            tab.setId("step-" + key(step));
            tab.setToggleGroup(group);
            tab.getStyleClass().addAll("small", "chip");
            tab.setOnAction(e -> {
                tab.setSelected(true);
                marker.go(step);
            });
            tabs.put(step, tab);
            row.getChildren().add(tab);
        }
        StackPane stack = new StackPane();
        stack.getChildren().setAll(pages.values());
        stack.setMinHeight(0);
        VBox.setVgrow(stack, Priority.ALWAYS);
        getChildren().setAll(row, stack);
        session.deskProperty().addListener((o, before, now) -> show());
        marker.stateProperty().addListener((o, before, now) -> show());
        show();
    }

    private static ScrollPane page(Node content) {
        ScrollPane page = new ScrollPane(content);
        page.setFitToWidth(true);
        page.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        page.getStyleClass().add("sheet-page");
        return page;
    }

    private static String key(MarkState.Step step) {
        return step.name().toLowerCase(Locale.ROOT);
    }

    private void show() {
        Words words = session.desk().words();
        MarkState.Step now = marker.state().step();
        tabs.forEach((step, tab) -> {
            tab.setText(words.of("editor.step." + key(step)));
            tab.setTooltip(new Tooltip(words.of("editor.step." + key(step) + ".hint")));
            tab.setSelected(step == now);
        });
        pages.forEach((step, page) -> page.setVisible(step == now));
    }
}
