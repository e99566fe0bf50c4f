package easewright.editor.panel;

import easewright.ease.EaseLine;
import easewright.editor.model.Desk;
import easewright.editor.model.EaseRow;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The ease sheet: how much ease there is at each level, and whether that is what is wanted. */
public final class EasePanel extends ScrollPane {
    private final Session session;
    private final VBox rows = new VBox();
    private final HBox heads = new HBox(4);
    private final Label none = new Label();
    private final SizeChoice sizes;
    private final Map<String, EaseRowView> views = new LinkedHashMap<>();
    private String seen = "";

    public EasePanel(Session session) {
        this.session = session;
        setId("ease-sheet");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("sheet-page");
        none.setWrapText(true);
        none.getStyleClass().add("quiet");
        heads.getStyleClass().add("ease-heads");
        rows.getStyleClass().add("ease-rows");
        sizes = new SizeChoice(session);
        setContent(new VBox(sizes, heads, none, rows, new ClothPanel(session)));
        viewportBoundsProperty().addListener(o -> Platform.runLater(this::reveal));
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    private void show(Desk desk) {
        Words words = desk.words();
        if (heads.getChildren().isEmpty()) {
            heads(words);
        }
        sizes.show(desk);
        List<EaseLine> lines = desk.shownReading().sheet().lines();
        none.setText(words.of("editor.ease.none"));
        none.setVisible(lines.isEmpty());
        none.setManaged(lines.isEmpty());
        List<String> names = lines.stream().map(EaseLine::name).toList();
        if (!names.equals(new ArrayList<>(views.keySet()))) {
            views.clear();
            lines.forEach(l -> views.put(l.name(), new EaseRowView(EaseRow.of(l, words), session)));
            rows.getChildren().setAll(views.values());
        }
        lines.forEach(l -> views.get(l.name()).show(EaseRow.of(l, words), desk));
        String chosen = desk.wanted().map(Wanted::level).orElse("");
        if (!chosen.equals(seen)) {
            seen = chosen;
            Platform.runLater(this::reveal);
        }
    }

    /** Scrolls so that the level at work is in sight. */
    private void reveal() {
        EaseRowView row = views.get(seen);
        double room = getViewportBounds().getHeight();
        double whole = getContent().getLayoutBounds().getHeight();
        if (row == null || whole <= room) {
            return;
        }
        double top = rows.getLayoutY() + row.getBoundsInParent().getMinY();
        double bottom = rows.getLayoutY() + row.getBoundsInParent().getMaxY();
        double from = getVvalue() * (whole - room);
        if (top < from) {
            setVvalue(top / (whole - room));
        } else if (bottom > from + room) {
            setVvalue((bottom - room) / (whole - room));
        }
    }

    private void heads(Words words) {
        heads.getChildren()
                .setAll(
                        head(words, "level", EaseRowView.NAME, Pos.CENTER_LEFT),
                        head(words, "body", EaseRowView.FIELD, Pos.CENTER_RIGHT),
                        head(words, "garment", EaseRowView.NUMBER, Pos.CENTER_RIGHT),
                        head(words, "ease", EaseRowView.NUMBER, Pos.CENTER_RIGHT),
                        head(words, "wish", EaseRowView.FIELD, Pos.CENTER_RIGHT));
    }

    private static Label head(Words words, String key, double width, Pos side) {
        Label label = new Label(words.of("editor.ease.head." + key));
        Hints.on(label, words.of("editor.ease.head." + key + ".hint"));
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setPrefWidth(width);
        label.setAlignment(side);
        return label;
    }
}
