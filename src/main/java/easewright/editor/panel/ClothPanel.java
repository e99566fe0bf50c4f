package easewright.editor.panel;

import easewright.editor.model.ClothWords;
import easewright.editor.model.Desk;
import easewright.editor.model.RecoveryTest;
import easewright.editor.model.Session;
import easewright.editor.model.StretchTest;
import easewright.editor.model.WashTest;
import easewright.pattern.Cloth;
import easewright.print.EaseText;
import easewright.text.Words;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What the ease is judged by: the cloth and the garment. Two lines say it above the levels, where it is seen at any
 * height of the window; what is tested, and what is chosen and added by hand, is folded away behind a button each.
 */
final class ClothPanel extends MeasuredBox {
    /** As high as the cloth and the garment on a line each, so that nothing below moves when one is found out; pixels. */
    private static final double TWO_LINES = 36;

    private final Session session;
    private final JudgedAs judged;
    private final Label title = new Label();
    private final ToggleButton woven = new ToggleButton();
    private final ToggleButton knit = new ToggleButton();
    private final ToggleButton test = new ToggleButton();
    private final ToggleButton garment = new ToggleButton();
    private final Label now = new Label();
    private final Label garmentNow = new Label();
    private final HBox told = new HBox(6);
    private final Label untested = new Label();
    private final VBox stretch;
    private final FoldedBox tests = new FoldedBox(8);
    private final VBox garments;
    private final Node below;
    private final HandTest across = new HandTest("cloth-stretched", this::stretched);
    private final HandTest along = new HandTest("cloth-along", this::stretchedAlong);
    private final HandTest recovery = new HandTest("cloth-rested", this::rested);
    private final HandTest wash = new HandTest("cloth-washed", this::washed);
    private final Label said = new Label();
    private List<Object> shown = List.of();

    /**
     * @param below keeps its place, as far as there is room for it, when what is above it is folded away
     */
    ClothPanel(Session session, JudgedAs judged, OwnTablesView tables, Node below) {
        this.session = session;
        this.judged = judged;
        this.below = below;
        getStyleClass().add("cloth");
        woven.setToggleGroup(new OneOf());
        knit.setToggleGroup(woven.getToggleGroup());
        woven.setId("cloth-woven");
        knit.setId("cloth-knit");
        test.setId("cloth-test");
        garment.setId("cloth-garment");
        now.setId("cloth-now");
        garmentNow.setId("cloth-judged");
        woven.getStyleClass().addAll("small", "chip");
        knit.getStyleClass().addAll("small", "chip");
        for (ToggleButton folder : List.of(test, garment)) {
            folder.getStyleClass().addAll("small", "chip", "opens");
            folder.setMinWidth(USE_PREF_SIZE);
        }
        woven.setOnAction(e -> setKnit(false));
        knit.setOnAction(e -> setKnit(true));
        stretch = new VBox(8, across, along, recovery);
        tests.hold(stretch, wash, said);
        test.setOnAction(e -> foldTests(test.isSelected()));
        garments = new VBox(8, judged, tables);
        garment.setOnAction(e -> fold(garments, garment, garment.isSelected()));
        title.getStyleClass().add("section-title");
        for (Label line : List.of(now, garmentNow)) {
            line.getStyleClass().add("quiet");
            line.setWrapText(true);
            line.setMinHeight(USE_PREF_SIZE);
            line.setMaxWidth(Double.MAX_VALUE);
        }
        untested.setId("cloth-untested");
        untested.getStyleClass().add("quiet");
        said.getStyleClass().add("quiet");
        said.setWrapText(true);
        said.setId("cloth-said");
        HBox kind = new HBox(6, title, woven, knit, untested, Parts.gap(), test);
        kind.setAlignment(Pos.CENTER_LEFT);
        VBox says = new VBox(3, now, garmentNow);
        says.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(says, Priority.ALWAYS);
        told.getChildren().setAll(says, garment);
        told.setAlignment(Pos.CENTER_LEFT);
        told.setMinHeight(TWO_LINES);
        for (VBox fold : List.of(tests, garments)) {
            fold.getStyleClass().add("cloth-fold");
            Parts.present(fold, false);
        }
        getChildren().setAll(kind, tests, told, garments);
        session.deskProperty().addListener((o, before, is) -> show(is));
        show(session.desk());
    }

    private void foldTests(boolean open) {
        if (open) {
            tests.fill();
        }
        fold(tests, test, open);
    }

    /** Puts all its fields into the window, so that a text can be put back into one that is folded away. */
    void fill() {
        tests.fill();
    }

    private void fold(VBox fold, ToggleButton folder, boolean open) {
        folder.setSelected(open);
        // Unfolded it says the same as the choice just below, and keeps its room.
        garmentNow.setVisible(!garment.isSelected());
        HeldStill.during(open ? null : below, () -> Parts.present(fold, open));
    }

    private Cloth cloth() {
        return session.desk().pattern().cloth();
    }

    private void setKnit(boolean isKnit) {
        Cloth old = cloth();
        session.setCloth(new Cloth(isKnit, old.across(), old.along(), old.recovery(), old.shrinkage()));
        if (isKnit && cloth().across().isEmpty()) {
            foldTests(true);
        }
    }

    private double marked() {
        return StretchTest.marked(session.desk().unit());
    }

    private boolean stretched(OptionalDouble mm) {
        return found(
                mm,
                length -> StretchTest.percent(length, marked()),
                (old, percent) -> new Cloth(old.knit(), percent, old.along(), old.recovery(), old.shrinkage()));
    }

    private boolean stretchedAlong(OptionalDouble mm) {
        return found(
                mm,
                length -> StretchTest.percent(length, marked()),
                (old, percent) -> new Cloth(old.knit(), old.across(), percent, old.recovery(), old.shrinkage()));
    }

    private boolean rested(OptionalDouble mm) {
        double stretch = cloth().across().orElse(0);
        return found(
                mm,
                length -> RecoveryTest.percent(length, stretch, marked()),
                (old, percent) -> new Cloth(old.knit(), old.across(), old.along(), percent, old.shrinkage()));
    }

    private boolean washed(OptionalDouble mm) {
        double marked = WashTest.marked(session.desk().unit());
        return found(
                mm,
                length -> WashTest.percent(length, marked),
                (old, percent) -> new Cloth(old.knit(), old.across(), old.along(), old.recovery(), percent));
    }

    /** Takes what was found, or that nothing is known any more; says whether a cloth can come out so. */
    private boolean found(
            OptionalDouble mm, DoubleFunction<OptionalDouble> percent, BiFunction<Cloth, OptionalDouble, Cloth> taken) {
        OptionalDouble found = mm.isEmpty() ? mm : percent.apply(mm.getAsDouble());
        if (mm.isPresent() && found.isEmpty()) {
            return false;
        }
        session.setCloth(taken.apply(cloth(), found));
        return true;
    }

    private void show(Desk desk) {
        Words words = desk.words();
        judged.show(desk);
        title.setText(words.of("editor.cloth.title"));
        Parts.say(woven, words, "editor.cloth.woven");
        Parts.say(knit, words, "editor.cloth.knit");
        Heard.oneOf(title, woven);
        Heard.oneOf(title, knit);
        test.setText(words.of("editor.cloth.test"));
        Parts.say(garment, words, "editor.cloth.garment");
        Cloth cloth = desk.pattern().cloth();
        woven.setSelected(!cloth.knit());
        knit.setSelected(cloth.knit());
        ClothWords known = ClothWords.of(desk, judged.garments());
        Parts.present(this, desk.isOpen());
        // While a seam is pulled, nothing of this changes.
        List<Object> shows = List.of(known, desk.unit(), desk.reading().sheet().stretch());
        if (shows.equals(shown)) {
            return;
        }
        shown = shows;
        // Who is testing the cloth has the rows in sight while a line comes to be above them.
        HeldStill.during(test.isSelected() ? below : null, () -> {
            now.setText(known.known());
            Parts.present(now, !known.known().isEmpty());
            garmentNow.setText(known.judged());
        });
        // Beside the kind of cloth, where nothing is pushed down when it comes and goes with a measurement.
        untested.setText(known.untested());
        Hints.on(now, known.known());
        Hints.on(garmentNow, known.judged());
        Hints.on(test, words.of(known.stretches() ? "editor.cloth.test.hint" : "editor.cloth.test.woven.hint"));
        Parts.present(stretch, known.stretches());
        across.show("across", known.across(), desk);
        along.show("along", known.along(), desk);
        recovery.show("recovery", known.recovery(), desk);
        wash.show("wash", known.wash(), desk);
        sources(desk, words);
    }

    private void sources(Desk desk, Words words) {
        String sources = new EaseText(words)
                .cloth(desk.reading().sheet()).stream()
                        .map(line -> Character.toUpperCase(line.charAt(0)) + line.substring(1))
                        .collect(Collectors.joining("\n"));
        said.setText(sources);
        Parts.present(said, !sources.isEmpty());
    }
}
