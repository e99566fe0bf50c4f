package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.model.AlignedFigures;
import easewright.editor.model.Desk;
import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The ease sheet: how much ease there is at each level, and whether that is what is wanted. */
public final class EasePanel extends ScrollPane {
    /** So little is no scrolling, pixels. */
    private static final double NEAR = 2;

    /** So many letters of a figure have room in the narrowest column. */
    private static final int ROOM = 8;

    private final Session session;
    private final Runnable toAmount;
    private final VBox rows = new MeasuredBox();
    private final HBox heads = new HBox(EaseRowView.GAP);
    /** The unit that stands in the heads. */
    private LengthUnit headed;

    private final Label none = new Label();
    private final SizeChoice sizes;
    private final WearerChoice wearer;
    private final ClothPanel cloth;
    private final Map<String, EaseRowView> views = new LinkedHashMap<>();
    private final SourceList sources = new SourceList();
    private final LevelTold told = new LevelTold(sources);
    private final WholeLines lines;
    private String seen = "";
    private double room;
    /** Where it was last scrolled to without a hand, from its top, pixels. */
    private double led;

    /**
     * @param looked   shows the pieces of a size
     * @param toAmount takes the keys to the amount that is tried
     */
    public EasePanel(Session session, FileWork files, Consumer<String> looked, Runnable toAmount) {
        this.session = session;
        this.toAmount = toAmount;
        setId("ease-sheet");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("sheet-page");
        none.setWrapText(true);
        none.getStyleClass().add("quiet");
        heads.getStyleClass().add("ease-heads");
        rows.getStyleClass().add("ease-rows");
        wearer = new WearerChoice(session);
        sizes = new SizeChoice(session, wearer, looked);
        cloth = new ClothPanel(session, new JudgedAs(session), new OwnTablesView(session, files), rows);
        VBox content = new MeasuredBox(sizes, cloth, heads, none, rows, told, sources);
        setContent(content);
        BarRoom.keep(this);
        lines = WholeLines.on(this, content);
        rows.addEventFilter(KeyEvent.KEY_PRESSED, this::upOrDown);
        addEventHandler(KeyEvent.KEY_TYPED, this::typedBeside);
        rows.addEventHandler(CheckedField.JUDGED, e -> unsure());
        viewportBoundsProperty().addListener(o -> Platform.runLater(this::resized));
        session.deskProperty().addListener((o, before, now) -> {
            if (now.isOtherWork(before)) {
                scrollTo(0);
            }
            show(now);
        });
        show(session.desk());
    }

    /** Puts all its fields into the window. */
    void fill() {
        cloth.fill();
    }

    private void show(Desk desk) {
        Words words = desk.words();
        if (words.unit() != headed) {
            headed = words.unit();
            heads(words);
        }
        sizes.show(desk);
        wearer.show(desk);
        EasePage page = EasePage.of(desk);
        sources.show(page, words);
        none.setText(words.of("editor.ease.none"));
        Parts.present(none, page.rows().isEmpty());
        List<String> names = page.rows().stream().map(EaseRow::name).toList();
        if (!names.equals(new ArrayList<>(views.keySet()))) {
            views.clear();
            page.rows().forEach(row -> views.put(row.name(), new EaseRowView(row, session, sources, toAmount)));
            rows.getChildren().setAll(views.values());
        }
        List<String> finished =
                AlignedFigures.of(page.rows().stream().map(EaseRow::finished).toList(), ROOM, words);
        List<String> eases =
                AlignedFigures.of(page.rows().stream().map(EaseRow::ease).toList(), ROOM, words);
        for (int i = 0; i < page.rows().size(); i++) {
            EaseRow row = page.rows().get(i);
            views.get(row.name()).show(row, finished.get(i), eases.get(i), desk);
        }
        String chosen = desk.wanted().map(Wanted::level).orElse("");
        told.show(page, chosen, words);
        if (!chosen.equals(seen)) {
            seen = chosen;
            // A row that was pressed is in sight, and is to stay where the hand is.
            if (!rows.isHover()) {
                Platform.runLater(this::reveal);
            }
        }
        unsure();
    }

    /** Of a level whose body is not understood nothing is told. */
    private void unsure() {
        boolean unsure = views.values().stream().anyMatch(v -> v.level().equals(seen) && v.isUnsure());
        told.setVisible(told.isManaged() && !unsure);
    }

    /**
     * A press may miss a field, as when what was folded away above it moved it: what is typed then is not lost, but goes
     * on in the row that was pressed, or in that of the level at work.
     */
    private void typedBeside(KeyEvent e) {
        if (TableKeys.beginsAmount(e)) {
            Optional<EaseRowView> row = isFocused()
                    ? Optional.ofNullable(views.get(seen))
                    : views.values().stream()
                            .filter(r -> r.isNamed(e.getTarget()))
                            .findFirst();
            row.ifPresent(r -> {
                e.consume();
                r.begin(e.getCharacter());
            });
        }
    }

    /** From a field to the one of the next level, or of the one before: measurements are typed one below the other. */
    private void upOrDown(KeyEvent e) {
        int by = e.getCode() == KeyCode.UP ? -1 : e.getCode() == KeyCode.DOWN ? 1 : 0;
        if (by == 0 || e.isShiftDown() || e.isAltDown() || e.isShortcutDown()) {
            return;
        }
        List<EaseRowView> all = List.copyOf(views.values());
        for (int i = 0; i < all.size(); i++) {
            int column = all.get(i).fields().indexOf(e.getTarget());
            if (column >= 0) {
                e.consume();
                int to = i + by;
                if (to >= 0 && to < all.size()) {
                    all.get(to).fields().get(column).requestFocus();
                }
                return;
            }
        }
    }

    /**
     * What is in sight stays where it is when the room below it changes, as far as there is room for it; what no hand has
     * scrolled begins at its top as soon as it can.
     */
    private void resized() {
        double now = getViewportBounds().getHeight();
        double whole = getContent().getLayoutBounds().getHeight();
        if (now == room) {
            return;
        }
        double top = getVvalue() * Math.max(0, whole - room);
        boolean byHand = Math.abs(top - led) > NEAR;
        room = now;
        if (byHand) {
            setVvalue(whole > now ? Math.min(1, top / (whole - now)) : 0);
        } else if (!rows.isFocusWithin()) {
            scrollTo(0);
        } else {
            scrollTo(top);
        }
        if (!rows.isFocusWithin()) {
            reveal();
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
            scrollTo(top);
        } else if (bottom > from + room) {
            // A line that this would cut would leave its room blank.
            scrollTo(Math.min(top, lines.wholeBelow(bottom - room)));
        }
    }

    /** As far down as it goes, from its top, pixels. */
    private void scrollTo(double top) {
        double rest =
                getContent().getLayoutBounds().getHeight() - getViewportBounds().getHeight();
        setVvalue(rest > 0 ? Math.min(1, top / rest) : 0);
        led = getVvalue() * Math.max(0, rest);
    }

    private void heads(Words words) {
        heads.getChildren()
                .setAll(
                        head(words, "level", EaseRowView.NAME, Pos.CENTER_LEFT),
                        head(words, "body", EaseRowView.FIELD, Pos.CENTER_RIGHT),
                        head(words, "garment", EaseRowView.NUMBER, Pos.CENTER_RIGHT),
                        head(words, "ease", EaseRowView.EASE, Pos.CENTER_RIGHT),
                        head(words, "wish", EaseRowView.WISH, Pos.CENTER_RIGHT));
    }

    private static Label head(Words words, String key, double width, Pos side) {
        Label label = new Label(
                words.of("editor.ease.head." + key, Map.of("unit", words.unit().symbol())));
        Hints.on(label, words.of("editor.ease.head." + key + ".hint"));
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setPrefWidth(width);
        if (side == Pos.CENTER_LEFT) {
            // As the names of the levels below it.
            label.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(label, Priority.ALWAYS);
        }
        label.getStyleClass().add(key + "-head");
        label.setAlignment(side);
        return label;
    }
}
