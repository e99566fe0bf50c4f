package easewright.editor.panel;

import easewright.ease.EaseTables;
import easewright.editor.file.Asking;
import easewright.editor.model.Desk;
import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.editor.model.Garments;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The ease sheet: how much ease there is at each level, and whether that is what is wanted. */
public final class EasePanel extends ScrollPane {
    private final Session session;
    private final VBox rows = new VBox();
    private final HBox heads = new HBox(4);
    private final Label none = new Label();
    private final SizeChoice sizes;
    private final Map<String, EaseRowView> views = new LinkedHashMap<>();
    private final Label asTitle = new Label();
    private final ComboBox<String> as = new ComboBox<>();
    private final HBox judgedAs;
    private final VBox sources = new VBox(3);
    private final Label legend = new Label();
    private List<Object> sourcesShown = List.of();
    private Pattern known;
    private EaseTables tables;
    private Garments garments;
    private boolean showing;
    private String seen = "";

    public EasePanel(Session session, Asking asking) {
        this.session = session;
        setId("ease-sheet");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("sheet-page");
        none.setWrapText(true);
        none.getStyleClass().add("quiet");
        heads.getStyleClass().add("ease-heads");
        rows.getStyleClass().add("ease-rows");
        asTitle.setMinWidth(Region.USE_PREF_SIZE);
        as.setId("judged-as");
        as.setOnAction(e -> {
            if (!showing && as.getValue() != null) {
                session.setGarment(as.getValue());
            }
        });
        as.setConverter(new StringConverter<>() {
            @Override
            public String toString(String word) {
                return word == null ? "" : garments.said(word, session.desk().words());
            }

            @Override
            public String fromString(String word) {
                return word;
            }
        });
        HBox judged = new HBox(8, asTitle, as);
        judged.setAlignment(Pos.CENTER_LEFT);
        judgedAs = judged;
        judged.getStyleClass().add("judged-as");
        sources.getStyleClass().add("sources");
        legend.setWrapText(true);
        legend.getStyleClass().add("quiet");
        sizes = new SizeChoice(session);
        setContent(new VBox(
                sizes,
                heads,
                none,
                rows,
                new ClothPanel(session),
                judged,
                new OwnTablesView(session, asking),
                sources));
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
        if (desk.pattern() != known || desk.reading().tables() != tables) {
            known = desk.pattern();
            tables = desk.reading().tables();
            garments = Garments.of(known, tables);
        }
        EasePage page = EasePage.of(desk);
        none.setText(words.of("editor.ease.none"));
        Parts.present(none, page.rows().isEmpty());
        List<String> names = page.rows().stream().map(EaseRow::name).toList();
        if (!names.equals(new ArrayList<>(views.keySet()))) {
            views.clear();
            page.rows().forEach(row -> views.put(row.name(), new EaseRowView(row, session)));
            rows.getChildren().setAll(views.values());
        }
        page.rows().forEach(row -> views.get(row.name()).show(row, desk));
        judged(words);
        sources(page, words);
        String chosen = desk.wanted().map(Wanted::level).orElse("");
        if (!chosen.equals(seen)) {
            seen = chosen;
            Platform.runLater(this::reveal);
        }
    }

    private void judged(Words words) {
        showing = true;
        asTitle.setText(words.of("editor.ease.as"));
        Heard.name(as, words.of("editor.ease.as"));
        Hints.on(as, words.of("editor.ease.as.hint"));
        if (!as.getItems().equals(garments.choices())) {
            as.getItems().setAll(garments.choices());
        }
        as.setValue(garments.chosen());
        Parts.present(judgedAs, garments.any());
        showing = false;
    }

    /** What the bar means, and each source once, below all that leads to it. */
    private void sources(EasePage page, Words words) {
        boolean any = page.rows().stream().anyMatch(r -> r.standing() != EaseRow.Standing.UNKNOWN);
        List<Object> now = List.of(any, page.foot().sources(), page.nearlyMet());
        if (now.equals(sourcesShown)) {
            return;
        }
        sourcesShown = now;
        Parts.present(sources, any);
        legend.setText(words.of("editor.ease.bar"));
        sources.getChildren().setAll(legend);
        List<String> lines = new ArrayList<>(page.foot().lines(words));
        if (page.nearlyMet()) {
            lines.add(words.of("ease.nearly-met"));
        }
        for (String line : lines) {
            Label said = new Label(line);
            said.setWrapText(true);
            said.getStyleClass().add("quiet");
            sources.getChildren().add(said);
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
                        head(words, "ease", EaseRowView.EASE, Pos.CENTER_RIGHT),
                        head(words, "wish", EaseRowView.FIELD, Pos.CENTER_RIGHT));
    }

    private static Label head(Words words, String key, double width, Pos side) {
        Label label = new Label(words.of("editor.ease.head." + key));
        Hints.on(label, words.of("editor.ease.head." + key + ".hint"));
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setPrefWidth(width);
        label.getStyleClass().add(key + "-head");
        label.setAlignment(side);
        return label;
    }
}
