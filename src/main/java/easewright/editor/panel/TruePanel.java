package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.FollowUp;
import easewright.editor.model.Notes;
import easewright.editor.model.Pointed;
import easewright.editor.model.Said;
import easewright.editor.model.Session;
import easewright.editor.model.TrueBench;
import easewright.editor.model.TrueWork;
import easewright.text.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What could be made to fit again after the changes, and what is not true as it will be sewn: each with what it would
 * move, shown on the table while it is pointed at, and done by one press.
 */
public final class TruePanel extends SheetPage {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final TrueBench bench;
    private final CuttingTable table;
    private final Runnable decider;
    private final Label intro = new Label();
    private final VBox list = new VBox();
    private Optional<TrueWork> shown = Optional.empty();
    /** Where the keys were when the rows went. */
    private String place = "";

    /** What the table was brought near to, and goes on showing. */
    private Optional<Pointed> held = Optional.empty();

    /** The row of which that is. */
    private Optional<Node> heldRow = Optional.empty();

    /**
     * @param decider leads to where what is tried is kept or taken back
     */
    TruePanel(Session session, TrueBench bench, CuttingTable table, Runnable decider) {
        super(session, "true");
        this.bench = bench;
        this.table = table;
        this.decider = decider;
        setHbarPolicy(ScrollBarPolicy.NEVER);
        intro.getStyleClass().add("page-intro");
        intro.setWrapText(true);
        begin(new VBox(12, intro, list));
        bench.workProperty().addListener((o, before, now) -> showIfSeen());
        visibleProperty().addListener(o -> {
            if (!isVisible()) {
                letGo();
                session.point(held);
            }
        });
    }

    @Override
    void show(Desk desk) {
        Words words = desk.words();
        Optional<TrueWork> now = bench.work();
        intro.setText(now.map(work -> TrueIntro.of(work, desk.trial().isPresent(), words))
                .orElseGet(() -> words.of("editor.true.looking")));
        if (!now.equals(shown)) {
            shown = now;
            letGo();
            rows(words);
        }
        // While a change is being tried, the list is about what was before it.
        list.setDisable(now.isEmpty() || desk.trial().isPresent());
        keysBack();
    }

    /** To the first of what is offered for the pieces sewn to the changed ones, wherever the page was scrolled to. */
    void toOffers() {
        Platform.runLater(() -> {
            toOffer(0);
            InView.show(list);
        });
    }

    /** To what is offered for a seam. */
    void toOffer(String seam) {
        List<FollowUp> offers = bench.work().map(TrueWork::offers).orElse(List.of());
        Optional<String> size = session.desk().size();
        IntStream.range(0, offers.size())
                .filter(i -> offers.get(i).seam().equals(seam))
                .boxed()
                // What is noticed is noticed in the size at work.
                .min(Comparator.comparing(i -> !offers.get(i).size().equals(size)))
                .ifPresent(at -> Platform.runLater(() -> toOffer(at)));
    }

    private void toOffer(int i) {
        Node take = lookup("#follow-take-" + i);
        if (take != null) {
            take.requestFocus();
            InView.show(take.getParent().getParent());
        }
    }

    /** Rows anew; whoever works by keyboard keeps the place, also while the lines are looked along once more. */
    private void rows(Words words) {
        Node focused = getScene() == null ? null : getScene().getFocusOwner();
        String now = focused == null || focused.getId() == null ? "" : focused.getId();
        if (now.startsWith("true-") || now.startsWith("follow-take-")) {
            place = now;
        } else if (focused != this) {
            place = "";
        }
        list.getChildren().clear();
        shown.ifPresent(work -> {
            offers(work.offers(), words);
            places(work, words);
            still(work, words);
            if (!work.others().isEmpty()) {
                Label others = quiet(words.of("editor.true.others", Map.of("sizes", work.others())));
                others.setId("true-others");
                others.getStyleClass().add("list-row");
                list.getChildren().add(others);
            }
        });
    }

    private void keysBack() {
        if (!place.isEmpty() && shown.isPresent() && !list.isDisabled()) {
            Node same = lookup("#" + place);
            if (same != null) {
                same.requestFocus();
            } else {
                list.lookupAll(".button").stream().findFirst().ifPresent(Node::requestFocus);
            }
            place = "";
        }
    }

    private void offers(List<FollowUp> offers, Words words) {
        for (boolean changed : new boolean[] {true, false}) {
            String head = changed ? "editor.true.offers" : "editor.true.seams";
            if (offers.stream().anyMatch(o -> o.changed() == changed)) {
                list.getChildren().add(head(words.of(head), List.of()));
            }
            for (int i = 0; i < offers.size(); i++) {
                if (offers.get(i).changed() == changed) {
                    list.getChildren().add(offer(i, offers.get(i), words));
                }
            }
        }
    }

    /** Last, since it asks for nothing. */
    private void still(TrueWork work, Words words) {
        if (!work.still().isEmpty()) {
            list.getChildren().add(head(words.of("editor.true.still"), List.of()));
        }
        for (int i = 0; i < work.still().size(); i++) {
            list.getChildren().add(offer(work.offers().size() + i, work.still().get(i), words));
        }
    }

    private VBox offer(int i, FollowUp offer, Words words) {
        FlowPane presses = new FlowPane(8, 6);
        for (int k = 0; k < offer.presses().size(); k++) {
            FollowUp.Press press = offer.presses().get(k);
            Button take = button("follow-take-" + i + (k == 0 ? "" : "-" + k), words, press.label());
            Parts.about(take, offer.words());
            take.setOnAction(e -> {
                session.tryOut(press);
                if (session.desk().trial().isPresent()) {
                    // The list waits until that is decided.
                    decider.run();
                }
                Notes.pointed(session.desk(), offer.seam()).ifPresent(table::showIfAway);
            });
            presses.getChildren().add(take);
        }
        VBox row = row(offer.words(), offer.care(), presses);
        row.setId("follow-" + i);
        row.setOnMouseEntered(e -> session.point(Notes.pointed(session.desk(), offer.seam())));
        row.setOnMouseExited(e -> session.point(held));
        return row;
    }

    private void places(TrueWork work, Words words) {
        if (work.places().isEmpty()) {
            return;
        }
        Button all = button("true-all", words, "editor.true.all");
        boolean some = work.possible() < work.places().size();
        all.setText(words.of(some ? "editor.true.all-that-can" : "editor.true.all", Map.of("count", work.possible())));
        all.setOnAction(e -> bench.trueAll(true));
        boolean several = work.possible() > 1;
        boolean guarded = several && work.redrawing() > 0;
        long free = work.possible() - work.redrawing();
        Button unguarded = button("true-all-free", words, "editor.true.all-free");
        unguarded.setText(words.of("editor.true.all-free", Map.of("count", free)));
        unguarded.setOnAction(e -> bench.trueAll(false));
        list.getChildren().add(head(words.of("editor.true.places"), several && !guarded ? List.of(all) : List.of()));
        if (guarded) {
            FlowPane presses = new FlowPane(8, 6);
            if (free > 0) {
                presses.getChildren().add(unguarded);
            }
            presses.getChildren().add(all);
            VBox row = new VBox(
                    5, quiet(words.of("editor.true.all-protected", Map.of("count", work.redrawing()))), presses);
            row.getStyleClass().add("list-row");
            list.getChildren().add(row);
        }
        for (int i = 0; i < work.places().size(); i++) {
            place(i, work.places().get(i), words);
        }
    }

    /** The table goes on showing a place, and its row is marked as the one that is shown. */
    private void hold(TrueWork.Place place, Node row) {
        letGo();
        held = place.pointed();
        heldRow = Optional.of(row);
        row.pseudoClassStateChanged(CHOSEN, true);
        session.point(held);
        held.ifPresent(table::show);
    }

    private void letGo() {
        held = Optional.empty();
        heldRow.ifPresent(row -> row.pseudoClassStateChanged(CHOSEN, false));
        heldRow = Optional.empty();
    }

    private void place(int i, TrueWork.Place place, Words words) {
        Button show = button("true-show-" + i, words, "editor.true.show");
        Button make = button("true-make-" + i, words, "editor.true.make");
        Parts.about(show, place.words());
        Parts.about(make, place.redraws().isEmpty() ? place.words() : place.redraws() + "; " + place.words());
        make.setDisable(place.result().isEmpty());
        make.setOnAction(e -> place.result().ifPresent(session::edit));
        VBox row = row(place.words(), place.brings(), pressed(show, make, place));
        row.setId("true-" + i);
        show.setOnAction(e -> hold(place, row));
        row.setOnMouseEntered(e -> session.point(place.pointed()));
        row.setOnMouseExited(e -> session.point(held));
        row.setOnMouseClicked(e -> show.fire());
        row.focusWithinProperty().addListener((o, was, is) -> session.point(is ? place.pointed() : held));
        list.getChildren().add(row);
    }

    private static HBox head(String text, List<Button> beside) {
        Label title = new Label(text);
        title.getStyleClass().add("list-head");
        title.setMinWidth(Region.USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap);
        head.getChildren().addAll(beside);
        head.getStyleClass().add("list-head-row");
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    /** The presses, and in one line with the second what it redraws although it is protected. */
    private static HBox pressed(Button show, Button make, TrueWork.Place place) {
        HBox doings = new HBox(8, show, make);
        doings.setAlignment(Pos.CENTER_LEFT);
        if (!place.redraws().isEmpty()) {
            Label redraws = quiet(place.redraws());
            redraws.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(redraws, Priority.ALWAYS);
            doings.getChildren().add(redraws);
        }
        return doings;
    }

    private static Label quiet(String said) {
        Label label = new Label(said);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add("quiet");
        return label;
    }

    private static VBox row(String said, String brings, Pane doings) {
        Label what = new Label(said);
        what.setWrapText(true);
        what.setMinHeight(USE_PREF_SIZE);
        VBox row = new VBox(5, what);
        if (!brings.isEmpty()) {
            row.getChildren().add(quiet(brings));
        }
        row.getChildren().add(doings);
        row.getStyleClass().addAll("list-row", "true-row");
        return row;
    }

    private static Button button(String id, Words words, String key) {
        return button(id, words, new Said(key, Map.of()));
    }

    private static Button button(String id, Words words, Said label) {
        Button button = new Button(label.in(words));
        button.setId(id);
        button.getStyleClass().add("small");
        button.setMinWidth(Region.USE_PREF_SIZE);
        Hints.on(button, words.of(label.key() + ".hint"));
        return button;
    }
}
