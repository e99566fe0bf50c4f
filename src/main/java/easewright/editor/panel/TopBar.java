package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.file.RecentPlaces;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.SavingDoes;
import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.SplitMenuButton;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Files on the left, what lies on the table in the middle, unit and light on the right. */
public final class TopBar extends HBox {
    private static final PseudoClass BAD = PseudoClass.getPseudoClass("bad");

    /** In a narrow window what is in the middle has so much, even if it has to leave the middle for it; pixels. */
    private static final double LEAST_MIDDLE = 200;

    private final SplitMenuButton open = new SplitMenuButton();
    private final Button save = new Button();
    private final Button export = new Button();
    private final Button print = new Button();
    private final Button undo = new Button();
    private final Button redo = new Button();
    private final Label name = new Label();
    private final Label state = new Label();
    private final ToggleButton cm = new ToggleButton();
    private final ToggleButton inch = new ToggleButton();
    private final ToggleButton lamp = new ToggleButton();
    private final FileWork files;
    private final PrintHand prints;
    private final Runnable onwards;

    /**
     * @param onwards to where the work goes on with another file
     */
    public TopBar(Session session, FileWork files, Runnable onwards) {
        this.files = files;
        this.onwards = onwards;
        this.prints = new PrintHand(files::begun);
        getStyleClass().add("top-bar");
        setAlignment(Pos.CENTER_LEFT);
        open.setId("open");
        open.setGraphic(Icons.of(Icons.OPEN));
        open.setOnAction(e -> {
            if (files.choose()) {
                onwards.run();
            }
        });
        open.setOnShowing(e -> recent());
        open.setOnShown(e -> wholePlaces());
        icon(save, "save", Icons.SAVE, files::save);
        icon(export, "export", Icons.EXPORT, files::saveAs);
        icon(print, "print", Icons.PRINT, () -> print(session));
        icon(undo, "undo", Icons.UNDO, session::undo);
        icon(redo, "redo", Icons.REDO, session::redo);
        // Gone through on the way to the lamp, a unit is not to change: it is chosen by a press.
        ToggleGroup units = new ToggleGroup();
        units.selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null) {
                was.setSelected(true);
            }
        });
        for (ToggleButton unit : List.of(cm, inch)) {
            unit.setToggleGroup(units);
            unit.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        }
        cm.setId("unit-cm");
        inch.setId("unit-inch");
        cm.getStyleClass().add("left-pill");
        inch.getStyleClass().add("right-pill");
        cm.setOnAction(e -> session.setUnit(LengthUnit.CM));
        inch.setOnAction(e -> session.setUnit(LengthUnit.INCH));
        lamp.setId("lamp");
        lamp.setGraphic(Icons.of(Icons.LAMP));
        lamp.getStyleClass().add("flat");
        lamp.setOnAction(e -> session.setDark(lamp.isSelected()));
        name.getStyleClass().add("file-name");
        name.setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
        state.getStyleClass().add("quiet");
        VBox middle = new VBox(name, state);
        middle.setAlignment(Pos.CENTER);
        middle.setMinWidth(0);
        HBox.setHgrow(middle, Priority.ALWAYS);
        Region gap = new Region();
        gap.setMinWidth(12);
        HBox unit = new HBox(cm, inch);
        unit.setAlignment(Pos.CENTER);
        HBox left = new HBox(6, open, save, export, print, gap, undo, redo);
        left.setAlignment(Pos.CENTER_LEFT);
        left.setMinWidth(USE_PREF_SIZE);
        HBox right = new HBox(6, unit, lamp);
        OneStop.in(left, unit, right);
        right.setAlignment(Pos.CENTER_RIGHT);
        for (Region each : List.of(cm, inch, lamp)) {
            each.setMinWidth(USE_PREF_SIZE);
        }
        // As wide as what is on the left, where there is room, so that the name stands in the middle of the window; a
        // long name is cut short for that.
        right.prefWidthProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> {
                            double room = getWidth()
                                    - snappedLeftInset()
                                    - snappedRightInset()
                                    - left.getWidth()
                                    - 2 * getSpacing()
                                    - Math.min(LEAST_MIDDLE, middle.prefWidth(-1));
                            return Math.max(right.minWidth(-1), Math.min(left.getWidth(), room));
                        },
                        widthProperty(),
                        left.widthProperty(),
                        name.textProperty(),
                        state.textProperty()));
        getChildren().setAll(left, middle, right);
        session.deskProperty().addListener((o, before, now) -> show(now));
        files.unsafeProperty().addListener(o -> show(session.desk()));
        files.savingProperty().addListener(o -> show(session.desk()));
        show(session.desk());
    }

    private static void icon(Button button, String id, String path, Runnable act) {
        button.setId(id);
        button.setGraphic(Icons.of(path));
        button.getStyleClass().add("flat");
        button.setOnAction(e -> act.run());
    }

    /** Gives the keys to where they were last in the row. */
    public void takeKeys() {
        Stream.<Node>of(open, save, export, print, undo, redo, cm, inch, lamp)
                .filter(Node::isFocusTraversable)
                .findFirst()
                .orElse(open)
                .requestFocus();
    }

    /** Opens the window for prints and reports of what lies on the table. */
    public void print(Session session) {
        files.takeTyped();
        files.background().onceMade(() -> {
            if (session.desk().isOpen()) {
                PrintPanel.open(session.desk(), files, prints, getScene().getWindow());
            }
        });
    }

    /** What is half typed in that window. */
    public PrintHand prints() {
        return prints;
    }

    private void recent() {
        List<Path> recent = files.recent();
        open.getItems().clear();
        if (!recent.isEmpty()) {
            MenuItem head = new MenuItem(files.words().of("editor.recent"));
            head.setDisable(true);
            head.getStyleClass().add("menu-head");
            open.getItems().add(head);
        }
        List<String> places = RecentPlaces.of(recent, Path.of(System.getProperty("user.home")));
        for (int i = 0; i < recent.size(); i++) {
            Path file = recent.get(i);
            MenuItem item = new MenuItem(file.getFileName() + "  \u2013  " + places.get(i));
            item.setMnemonicParsing(false);
            item.setUserData(file);
            item.setOnAction(e -> {
                onwards.run();
                files.open(file);
            });
            open.getItems().add(item);
        }
        if (recent.isEmpty()) {
            MenuItem none = new MenuItem(files.words().of("editor.recent.none"));
            none.setDisable(true);
            open.getItems().add(none);
        }
    }

    /** Where each file lies, in full, for who points at it: only what is seen has a place for a hint. */
    private void wholePlaces() {
        for (MenuItem item : open.getItems()) {
            if (item.getUserData() instanceof Path file && item.getStyleableNode() != null) {
                Tooltip.install(item.getStyleableNode(), new Tooltip(file.toString()));
            }
        }
    }

    private void show(Desk desk) {
        Words words = desk.words();
        open.setText(words.of("editor.open"));
        Heard.name(open, words.of("editor.open"));
        Hints.on(open, words.of("editor.open.hint"));
        if (open.getItems().isEmpty()) {
            recent();
        }
        named(save, words, "editor.save");
        named(export, words, "editor.save-as");
        named(print, words, "editor.print");
        save.setText(words.of("editor.save"));
        export.setText(words.of("editor.save-as.short"));
        print.setText(words.of("editor.print.short"));
        named(undo, words, "editor.undo");
        named(redo, words, "editor.redo");
        save.setDisable(!desk.isOpen());
        export.setDisable(!desk.isOpen());
        print.setDisable(!desk.isOpen());
        undo.setDisable(!desk.canUndo());
        redo.setDisable(!desk.history().canRedo());
        cm.setText(words.of("editor.unit.cm"));
        inch.setText(words.of("editor.unit.inch"));
        cm.setAccessibleText(words.of("editor.unit", Map.of("unit", cm.getText())));
        inch.setAccessibleText(words.of("editor.unit", Map.of("unit", inch.getText())));
        Hints.on(cm, words.of("editor.unit.cm.hint"));
        Hints.on(inch, words.of("editor.unit.inch.hint"));
        cm.setSelected(desk.unit() != LengthUnit.INCH);
        inch.setSelected(desk.unit() == LengthUnit.INCH);
        lamp.setSelected(desk.dark());
        lamp.setAccessibleText(words.of("editor.lamp"));
        Hints.on(lamp, words.of("editor.lamp.hint"));
        name.setText(desk.file().map(f -> f.name()).orElse(words.of("editor.title")));
        Hints.on(name, desk.file().flatMap(OpenFile::path).map(Path::toString).orElse(name.getText()));
        Optional<SavingDoes> saving = saving(desk);
        state.setText(state(desk).map(words::of).orElse(""));
        String does = saving.map(d -> d.whole(words)).orElse("");
        Hints.on(state, does.isEmpty() ? state.getText() : does);
        if (!does.isEmpty()) {
            Hints.on(save, does + " " + words.of("editor.save.hint"));
        }
        state.pseudoClassStateChanged(BAD, files.unsafeProperty().get() && !desk.isSaved());
        Parts.present(state, desk.isOpen());
    }

    private Optional<String> state(Desk desk) {
        boolean trying = desk.shownTrial().isPresent();
        return desk.file().map(file -> {
            if (desk.isSaved()) {
                return trying ? "editor.state.trial" : file.saved() ? "editor.state.saved" : "editor.state.opened";
            }
            if (files.unsafeProperty().get()) {
                return "editor.state.unsafe";
            }
            return trying ? "editor.state.unsaved-trial" : "editor.state.unsaved";
        });
    }

    /** What saving would do, where it would do something and that is known. */
    private Optional<SavingDoes> saving(Desk desk) {
        boolean unsaved =
                desk.isOpen() && !desk.isSaved() && !files.unsafeProperty().get();
        return files.savingProperty().get().filter(does -> unsaved && does.of() == desk.pattern());
    }

    private static void named(Button button, Words words, String key) {
        button.setAccessibleText(words.of(key));
        Hints.on(button, words.of(key + ".hint"));
    }
}
