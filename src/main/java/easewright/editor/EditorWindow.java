package easewright.editor;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import easewright.editor.file.FileWork;
import easewright.editor.mark.Marker;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.panel.BusyBar;
import easewright.editor.panel.CuttingTable;
import easewright.editor.panel.HintBar;
import easewright.editor.panel.LeftBehindBar;
import easewright.editor.panel.MarkHand;
import easewright.editor.panel.NoticeBar;
import easewright.editor.panel.SheetPanel;
import easewright.editor.panel.StartPanel;
import easewright.editor.panel.TopBar;
import easewright.editor.panel.ViewButtons;
import java.io.File;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** Puts the parts of the window together and gives them their keys. */
final class EditorWindow {
    private final Session session;
    private final FileWork files;
    private final Scene scene;
    private final CuttingTable table;
    private final SheetPanel sheet;

    EditorWindow(Stage stage, Session session, FileWork files) {
        this.session = session;
        this.files = files;
        table = new CuttingTable(session);
        Marker marker = new Marker(session);
        table.give(new MarkHand(session, marker));
        sheet = new SheetPanel(session, table, marker);
        ViewButtons view = new ViewButtons(session, table, marker);
        HintBar hint = new HintBar(session, marker);
        StartPanel start = new StartPanel(session, files);
        NoticeBar notice = new NoticeBar(session);
        BusyBar busy = new BusyBar(session, files.background());
        LeftBehindBar left = new LeftBehindBar(files);
        StackPane middle = new StackPane(table, start, view, hint, notice, busy, left);
        middle.getStyleClass().add("middle");
        middle.setMinSize(0, 0);
        StackPane.setAlignment(view, Pos.BOTTOM_LEFT);
        StackPane.setAlignment(hint, Pos.TOP_CENTER);
        StackPane.setAlignment(notice, Pos.BOTTOM_CENTER);
        StackPane.setAlignment(busy, Pos.BOTTOM_CENTER);
        StackPane.setAlignment(left, Pos.TOP_CENTER);
        BorderPane root = new BorderPane(middle);
        root.getStyleClass().add("editor");
        root.setTop(new TopBar(session, files));
        root.setRight(sheet);
        scene = new Scene(root, 1280, 800);
        scene.getStylesheets()
                .add(Objects.requireNonNull(EditorWindow.class.getResource("editor.css"))
                        .toExternalForm());
        keys();
        root.setOnDragOver(this::over);
        root.setOnDragDropped(this::dropped);
        session.deskProperty().addListener((o, before, now) -> show(stage, now));
        show(stage, session.desk());
        stage.setScene(scene);
        stage.setMinWidth(940);
        stage.setMinHeight(620);
        stage.setOnHidden(e -> files.close());
        stage.focusedProperty().addListener((o, was, is) -> {
            if (is) {
                files.lookAgain();
            }
        });
        stage.setOnCloseRequest(e -> {
            if (!session.desk().isSaved()) {
                e.consume();
                files.leaving(stage::hide);
            }
        });
    }

    private void show(Stage stage, Desk desk) {
        light(desk.dark());
        String name = desk.words().of("editor.title");
        stage.setTitle(desk.file()
                .map(f -> (desk.isSaved() ? "" : "\u2022 ") + f.name() + " \u2013 " + name)
                .orElse(name));
    }

    /** The look by day or by lamplight, for the whole application, so that lists, menus and hints go with it. */
    private void light(boolean dark) {
        String now = dark ? "by-lamp" : "by-day";
        List<String> classes = scene.getRoot().getStyleClass();
        if (!classes.contains(now)) {
            Application.setUserAgentStylesheet((dark ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet());
            classes.removeAll(List.of("by-day", "by-lamp"));
            classes.add(now);
        }
    }

    private void keys() {
        key(KeyCode.O, files::choose);
        key(KeyCode.S, files::save);
        key(KeyCode.Z, session::undo);
        key(KeyCode.Y, session::redo);
        List<String> pages = List.of("marks", "ease", "rings", "size", "changes", "notes");
        for (int i = 0; i < pages.size(); i++) {
            String page = pages.get(i);
            KeyCode digit = KeyCode.getKeyCode(String.valueOf(i + 1));
            scene.getAccelerators()
                    .put(new KeyCodeCombination(digit, KeyCombination.ALT_DOWN), () -> sheet.turnTo(page));
        }
        scene.getAccelerators().put(new KeyCodeCombination(KeyCode.F6), this::otherSide);
        scene.getAccelerators()
                .put(
                        new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                        files::saveAs);
        scene.getAccelerators()
                .put(
                        new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                        session::redo);
    }

    private void key(KeyCode code, Runnable act) {
        scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), act);
    }

    /** From the table to the amount and back. */
    private void otherSide() {
        if (table.isFocused()) {
            scene.lookup("#amount").requestFocus();
        } else {
            table.requestFocus();
        }
    }

    private void over(DragEvent e) {
        if (e.getDragboard().hasFiles()) {
            e.acceptTransferModes(TransferMode.COPY);
        }
        e.consume();
    }

    private void dropped(DragEvent e) {
        List<File> dropped = e.getDragboard().getFiles();
        if (!dropped.isEmpty()) {
            files.open(dropped.get(0).toPath());
        }
        e.setDropCompleted(!dropped.isEmpty());
        e.consume();
    }
}
