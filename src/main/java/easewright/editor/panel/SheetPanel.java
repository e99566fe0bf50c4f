package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.OpenPieces;
import easewright.editor.model.Desk;
import easewright.editor.model.Notes;
import easewright.editor.model.Session;
import easewright.editor.model.TrueBench;
import easewright.text.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The sheet beside the table: its pages, and below them always the one place to say "this much, here". */
public final class SheetPanel extends VBox {
    private final Map<String, Node> pages = new LinkedHashMap<>();
    private final Map<String, SheetTab> tabs = new LinkedHashMap<>();
    /** The pages of which it is told how much there is on them. */
    private static final Set<String> COUNTED = Set.of("true", "notes");

    /** Of the window's width, and in pixels: in a wide window names and lines find more room. */
    private static final double SHARE = 0.29;

    private static final double NARROWEST = 452;
    private static final double WIDEST = 560;

    private final Marker marker;
    private final TrueBench bench;
    /** The place for "this much, here", which makes room while marks are made. */
    private final HerePanel here;

    private final EasePanel ease;
    private Runnable onTurned = () -> {};

    public SheetPanel(Session session, CuttingTable table, Marker marker, FileWork files) {
        this.marker = marker;
        bench = new TrueBench(session);
        bench.workProperty().addListener(o -> show(session.desk()));
        TruePanel truing = new TruePanel(session, bench, table, this::decide);
        here = new HerePanel(session, table, bench, () -> {
            turnTo("true");
            truing.toOffers();
        });
        StackPane below = new StackPane(here);
        ease = new EasePanel(session, files, table::showSize, this::toAmount);
        HBox row = new HBox();
        heightProperty().addListener(o -> here.share(getHeight(), row.prefHeight(-1) + PageStack.LEAST));
        setId("sheet");
        getStyleClass().add("sheet");
        setMinWidth(USE_PREF_SIZE);
        setMaxWidth(USE_PREF_SIZE);
        pages.put("marks", new MarksPanel(session, marker, files, table::show, table::show, () -> goTo("ease")));
        pages.put("ease", ease);
        pages.put("rings", new RingsPanel(session));
        pages.put("size", new SizePanel(session));
        pages.put("changes", new ChangesPanel(session, files.background()));
        pages.put("true", truing);
        pages.put(
                "notes",
                new NotesPanel(
                        session,
                        table::show,
                        table::show,
                        id -> showGap(id, session.desk(), table),
                        bench,
                        seam -> {
                            turnTo("true");
                            truing.toOffer(seam);
                        },
                        line -> {
                            turnTo("marks");
                            marker.go(MarkState.Step.PIECES);
                            marker.askOutline(Optional.of(line));
                            // Whoever asked by key answers there.
                            Platform.runLater(() -> lookupAll("#line-card .button").stream()
                                    .findFirst()
                                    .ifPresent(Node::requestFocus));
                        },
                        (piece, level) -> {
                            turnTo("marks");
                            marker.go(MarkState.Step.LEVELS);
                            Platform.runLater(() -> Optional.ofNullable(lookup("#" + OverlapLine.id(level, piece)))
                                    .ifPresent(field -> {
                                        InView.show(field);
                                        field.requestFocus();
                                    }));
                        }));
        PageStack stack = new PageStack();
        stack.hold(pages.values());
        VBox.setVgrow(stack, Priority.ALWAYS);
        row.getStyleClass().add("sheet-tabs");
        ToggleGroup group = new OneOf();
        for (String key : pages.keySet()) {
            SheetTab tab = new SheetTab(COUNTED.contains(key));
            tab.setId("page-" + key);
            tab.setToggleGroup(group);
            tab.setOnAction(e -> {
                session.goOn();
                turnTo(key);
            });
            tab.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(tab, Priority.ALWAYS);
            tabs.put(key, tab);
            row.getChildren().add(tab);
        }
        getChildren().setAll(row, stack, below);
        ByPages.in(this);
        session.deskProperty().addListener((o, before, now) -> {
            boolean other = now.isOtherWork(before);
            if (other && now.isOpen()) {
                begin(now);
            }
            show(now);
        });
        show(session.desk());
        begin(session.desk());
    }

    /** A drawing without marks has to be marked first; else the ease is what is looked for. */
    private void begin(Desk desk) {
        boolean bare = desk.file().map(f -> !f.svg().marked()).orElse(false);
        turnTo(bare ? "marks" : "ease");
        if (bare) {
            marker.begin();
        }
    }

    /** Takes its share of a window so wide, pixels. */
    public void share(double window) {
        setPrefWidth(Math.rint(Math.max(NARROWEST, Math.min(WIDEST, SHARE * window))));
    }

    /** Puts the fields into the window that are folded away and were not seen yet. */
    void fill() {
        here.fill();
        ease.fill();
    }

    /** The page that is open. */
    String page() {
        return pages.keySet().stream()
                .filter(key -> pages.get(key).isVisible())
                .findFirst()
                .orElse("");
    }

    /** The page on which something lies; empty where it is on none. */
    String pageOf(Node part) {
        for (Node n = part; n != null; n = n.getParent()) {
            for (Map.Entry<String, Node> page : pages.entrySet()) {
                if (page.getValue() == n) {
                    return page.getKey();
                }
            }
        }
        return "";
    }

    /** Turns to a page: marks, ease, rings, size, changes, true or notes. */
    public void turnTo(String key) {
        if (!pages.containsKey(key)) {
            return;
        }
        boolean turned = !page().equals(key);
        pages.forEach((name, page) -> page.setVisible(name.equals(key)));
        tabs.forEach((name, tab) -> tab.setSelected(name.equals(key)));
        boolean marking = key.equals("marks");
        Parts.present(here.getParent(), !marking);
        here.fold(!key.equals("ease"));
        here.leaveSeamsTo(key.equals("true") || key.equals("notes"));
        marker.open(marking);
        if (turned) {
            onTurned.run();
        }
    }

    /** @param turned another page was opened */
    public void onTurned(Runnable turned) {
        onTurned = turned;
    }

    /** Where a line that does not close is shown with its gap, it can be closed as well. */
    private void showGap(String id, Desk desk, CuttingTable table) {
        turnTo("marks");
        marker.go(MarkState.Step.PIECES);
        OpenPieces.on(desk, marker.sheet()).stream()
                .filter(open -> open.id().equals(id))
                .findFirst()
                .ifPresent(open -> {
                    table.show(open.pointed());
                    marker.light(List.of(open.gap()));
                });
    }

    /** Turns to a page by key: whoever works by keyboard goes on in it. */
    public void goTo(String key) {
        marker.goOn();
        turnTo(key);
        // At once: on a slow machine the next keys come before anything that is left for later. What scrolls has its
        // parts only once it is styled.
        pages.get(key).applyCss();
        first(key).orElse(tabs.get(key)).requestFocus();
    }

    /** Where the keys begin on a page; where there is something to be measured, in its first field. */
    private Optional<Node> first(String key) {
        List<Node> stops = pages.get(key).lookupAll("*").stream()
                .filter(n -> n instanceof ButtonBase || n instanceof TextField || n instanceof SheetPage)
                .filter(n -> n.isFocusTraversable() && !n.isDisabled() && shown(n) && !isLeftOff(n))
                .toList();
        Optional<Node> measured = stops.stream()
                .filter(n -> n.getStyleClass().contains("body-field"))
                .findFirst();
        return measured.isPresent() ? measured : stops.stream().findFirst();
    }

    /** To the amount, from wherever one is; while marks are made there is none to be seen. */
    public void toAmount() {
        if (marker.state().on()) {
            turnTo("ease");
        }
        here.toAmount();
    }

    private void decide() {
        here.toDecision();
    }

    /** Of a choice the keys go to what is chosen. */
    private static boolean isLeftOff(Node node) {
        return node instanceof ToggleButton b && b.getToggleGroup() != null && !b.isSelected();
    }

    private static boolean shown(Node node) {
        return node == null || node.isVisible() && shown(node.getParent());
    }

    private void show(Desk desk) {
        Words words = desk.words();
        // A seam that does not fit counts once, where it is put right.
        Map<String, Long> found =
                Map.of("true", Notes.open(desk, bench.work()), "notes", Notes.count(desk, bench.work()));
        tabs.forEach((key, tab) -> {
            String title = words.of("editor.page." + key);
            tab.setText(title);
            long count = found.getOrDefault(key, 0L);
            if (COUNTED.contains(key)) {
                String said = count > 0 ? words.of("editor.page.count", Map.of("count", count)) : "";
                tab.count(said);
                tab.setAccessibleText(title + " " + said);
            }
            Hints.on(tab, words.of("editor.page." + key + ".hint"));
        });
        Parts.present(this, desk.isOpen());
    }

    /** The pages on top of each other. What is below may take the height that the page in sight has no use for. */
    private static final class PageStack extends Turned {
        private static final double LEAST = 190;

        @Override
        protected double computeMinHeight(double width) {
            return getChildren().stream()
                    .filter(Node::isVisible)
                    .filter(ScrollPane.class::isInstance)
                    .map(page -> ((ScrollPane) page).getContent())
                    .mapToDouble(content -> Math.min(LEAST, content.prefHeight(wide(content))))
                    .findFirst()
                    .orElse(LEAST);
        }

        /** As wide as it was laid out: how high it is then is known already. */
        private double wide(Node content) {
            double laid = content.getLayoutBounds().getWidth();
            return laid > 0 ? laid : getWidth();
        }

        @Override
        protected double computePrefHeight(double width) {
            return computeMinHeight(width);
        }
    }
}
