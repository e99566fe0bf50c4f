package easewright.editor;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import easewright.ease.EaseTables;
import easewright.editor.file.FileWork;
import easewright.editor.mark.Marker;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.panel.BegunHere;
import easewright.editor.panel.BusyBar;
import easewright.editor.panel.ByKeys;
import easewright.editor.panel.CuttingTable;
import easewright.editor.panel.HintBar;
import easewright.editor.panel.KeysCard;
import easewright.editor.panel.LeftBehindBar;
import easewright.editor.panel.LegendBar;
import easewright.editor.panel.MarkHand;
import easewright.editor.panel.NoticeBar;
import easewright.editor.panel.SheetPanel;
import easewright.editor.panel.SheetPlace;
import easewright.editor.panel.StartPanel;
import easewright.editor.panel.TableFoot;
import easewright.editor.panel.TopBar;
import easewright.editor.panel.ViewButtons;
import java.io.File;
import java.net.URL;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.Duration;

/** Puts the parts of the window together and gives them their keys. */
final class EditorWindow {
    /** So long after the start page is seen, what is not to be seen yet is made ready. */
    private static final Duration SETTLED = Duration.millis(700);

    /** After so many pictures the start page is seen, however long the first ones take. */
    private static final int PICTURES = 4;

    /** A file is held over the window that may be dropped. */
    private static final PseudoClass DROPPING = PseudoClass.getPseudoClass("dropping");

    /** What the margins around the buttons of the view and the legend take, pixels. */
    private static final double MARGINS = 48;

    private final Session session;
    private final FileWork files;
    private final Scene scene;
    private final BorderPane root = new BorderPane();
    private final CuttingTable table;
    private final Marker marker;
    private Optional<SheetPanel> sheet = Optional.empty();
    private Optional<SheetPlace> place = Optional.empty();

    /** Fills the window that the stage shows. */
    EditorWindow(Stage stage, Session session, FileWork files) {
        this.session = session;
        this.files = files;
        light(session.desk().dark());
        table = new CuttingTable(session);
        marker = new Marker(session, files.background()::thinking);
        table.give(new MarkHand(session, marker));
        ViewButtons view = new ViewButtons(session, table, marker);
        ByKeys byKeys = new ByKeys();
        HintBar hint = new HintBar(session, marker, byKeys);
        BusyBar busy = new BusyBar(session, files.background());
        StackPane middle = new StackPane();
        NoticeBar notice = new NoticeBar(session, files, middle, table::requestFocus);
        TableFoot foot = new TableFoot(hint, notice, view, middle);
        LegendBar legend = new LegendBar(
                table.legendProperty(),
                table.seenProperty(),
                table.widthProperty(),
                table.widthProperty()
                        .subtract(view.widthProperty())
                        .subtract(foot.roomProperty())
                        .subtract(MARGINS),
                foot.asksProperty());
        foot.standBeside(legend);
        foot.boundsInParentProperty().addListener((o, before, now) -> table.makeRoom(now));
        StartPanel start = new StartPanel(session, files);
        middle.getChildren().addAll(table, start, view, legend, busy, foot);
        middle.getStyleClass().add("middle");
        middle.setMinSize(0, 0);
        StackPane.setAlignment(view, Pos.BOTTOM_LEFT);
        StackPane.setAlignment(busy, Pos.BOTTOM_CENTER);
        root.setCenter(middle);
        root.getStyleClass().add("editor");
        TopBar bar = new TopBar(session, files, table::requestFocus);
        VBox top = new VBox(bar);
        root.setTop(top);
        scene = stage.getScene();
        scene.getStylesheets()
                .add(Objects.requireNonNull(EditorWindow.class.getResource("editor.css"))
                        .toExternalForm());
        byKeys.follow(scene);
        KeysCard allKeys = new KeysCard(session);
        middle.getChildren().add(allKeys);
        view.onKeys(allKeys::turn);
        WindowKeys keys = new WindowKeys(scene);
        keys.key(KeyCode.F1, allKeys::turn);
        keys.key(KeyCode.F6, this::otherSide);
        keys.key(KeyCode.F8, notice::takeKeys);
        keys.key(KeyCode.F10, bar::takeKeys);
        keys.files(files, () -> bar.print(session));
        keys.leave(() -> files.leaving(stage::hide));
        keys.undo(session);
        keys.pages(this::sheet);
        keys.zoom(table);
        BegunHere hand = new BegunHere(scene, session, marker, this::sheet, bar.prints());
        files.follow(hand);
        hand.follow(files::begun);
        scene.addEventFilter(KeyEvent.ANY, e -> files.begun());
        root.setOnDragOver(this::over);
        root.setOnDragDropped(this::dropped);
        root.setOnDragExited(e -> root.pseudoClassStateChanged(DROPPING, false));
        session.deskProperty().addListener((o, before, now) -> {
            if (now.isOtherWork(before)) {
                byKeys.rest();
            }
            show(stage, now);
        });
        show(stage, session.desk());
        scene.setRoot(root);
        afterPictures(() -> {
            start.lift();
            // The keys begin at what can be done first: work that was left behind, or the start page.
            if (table.isFocused()) {
                begin(start);
            }
            files.leftBehind(found -> {
                LeftBehindBar left = new LeftBehindBar(files, found, () -> begin(start));
                top.getChildren().add(left);
                // A slow disk may take so long to look that somebody is typing by now.
                if (!(scene.getFocusOwner() instanceof TextInputControl)) {
                    left.takeKeys();
                }
            });
        });
        stage.setOnHidden(e -> files.close());
        // A stage that has been given another scene lets go of this window.
        scene.windowProperty().flatMap(Window::focusedProperty).addListener((o, was, is) -> {
            if (Boolean.TRUE.equals(is)) {
                files.lookAgain();
            }
        });
        stage.setOnCloseRequest(e -> {
            e.consume();
            files.leaving(stage::hide);
        });
    }

    /**
     * Leaves for later what the start page can do without.
     *
     * @param soon to be done as soon as the page is on the screen
     */
    private void afterPictures(Runnable soon) {
        PauseTransition settled = new PauseTransition(SETTLED);
        settled.setOnFinished(e -> {
            // The first drawing wants the ease tables; nobody waits for them here.
            Thread ahead = new Thread(EaseTables::standard, "ahead");
            ahead.setDaemon(true);
            ahead.start();
            sheet();
        });
        new AnimationTimer() {
            private int pictures;

            @Override
            public void handle(long now) {
                pictures++;
                if (pictures == PICTURES) {
                    stop();
                    soon.run();
                    settled.play();
                }
            }
        }.start();
    }

    private void show(Stage stage, Desk desk) {
        light(desk.dark());
        if (desk.isOpen()) {
            sheet();
        }
        String name = desk.words().of("editor.title");
        stage.setTitle(desk.file()
                .map(f -> (desk.isSaved() ? "" : "\u2022 ") + f.name() + " \u2013 " + name)
                .orElse(name));
    }

    /** The sheet beside the table. It has many parts and says nothing of an empty table: made once the window is there. */
    private SheetPanel sheet() {
        if (sheet.isEmpty()) {
            sheet = Optional.of(new SheetPanel(session, table, marker, files));
            sheet.get().share(root.getWidth());
            sheet.get().onTurned(files::begun);
            root.widthProperty().addListener(o -> sheet.get().share(root.getWidth()));
            root.setRight(sheet.get());
            place = Optional.of(new SheetPlace(scene, sheet.get()));
        }
        return sheet.get();
    }

    /** The look by day or by lamplight, for the whole application, so that lists, menus and hints go with it. */
    private void light(boolean dark) {
        String now = dark ? "by-lamp" : "by-day";
        List<String> classes = root.getStyleClass();
        if (!classes.contains(now)) {
            Application.setUserAgentStylesheet(theme(now, dark));
            classes.removeAll(List.of("by-day", "by-lamp"));
            classes.add(now);
        }
    }

    /** What the build has made of the theme for this window, or the whole of it where it has not. */
    static String theme(String light, boolean dark) {
        // Asked for by its text, the toolkit takes what lies mapped beside it if it can; not the other way round.
        URL made = EditorWindow.class.getResource(light + ".css");
        return made != null
                ? made.toExternalForm()
                : (dark ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet();
    }

    /** Gives the keys to the table, or to the start page while there is nothing on it. */
    private void begin(StartPanel start) {
        if (start.isVisible()) {
            start.takeKeys();
        } else {
            table.requestFocus();
        }
    }

    /**
     * From the table to where the keyboard last was in the sheet, and back. What is tried on the table goes on in the
     * amount; where nothing was gone to yet, marking begins at the part that is open.
     */
    private void otherSide() {
        if (table.isFocused()) {
            boolean marking = marker.state().on();
            boolean trying = session.desk()
                    .wanted()
                    .filter(w -> !marking && w.amount() != 0)
                    .isPresent();
            place.filter(p -> !trying)
                    .flatMap(SheetPlace::last)
                    .or(() -> Optional.ofNullable(scene.lookup(
                            marking ? "#step-" + marker.state().step().key() : "#amount")))
                    .ifPresent(Node::requestFocus);
        } else {
            table.requestFocus();
        }
    }

    private void over(DragEvent e) {
        if (e.getDragboard().hasFiles()) {
            e.acceptTransferModes(TransferMode.COPY);
            root.pseudoClassStateChanged(DROPPING, true);
        }
        e.consume();
    }

    private void dropped(DragEvent e) {
        List<File> dropped = e.getDragboard().getFiles();
        files.openOneOf(dropped.stream().map(File::toPath).toList());
        e.setDropCompleted(!dropped.isEmpty());
        e.consume();
    }
}
