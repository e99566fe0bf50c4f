package easewright.editor.panel;

import easewright.editor.file.Behind;
import easewright.editor.file.FileWork;
import easewright.editor.model.Desk;
import easewright.editor.paper.PaperChoice;
import easewright.editor.paper.PaperPages;
import easewright.editor.paper.PaperPress;
import easewright.print.sheet.PrintProblem;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;

/** A window over the table in which prints and reports are chosen, looked at and saved. */
public final class PrintPanel {
    /** What the frame and title of a window may take of a small screen, pixels. */
    private static final double FRAME = 24;

    private static final PseudoClass BAD = PseudoClass.getPseudoClass("bad");

    private final Desk desk;
    private final Words words;
    private final FileWork files;
    private final PrintHand hand;
    private final Stage stage = new Stage();
    private final PaperPress press = new PaperPress();
    private final PagePreview preview;
    private final PrintOptions options;
    private final Label said = new Label();
    private final Button pdf = new Button();
    private final Button page = new Button();
    private final Button cancel = new Button();
    private final Button close = new Button();
    private final ProgressBar bar = new ProgressBar();
    private final HBox progress = new HBox(8);
    private Optional<PaperPages> pages = Optional.empty();

    /**
     * Opens the window for what lies on the table.
     *
     * @param files where to save
     * @param hand  keeps what is half typed there from a crash
     */
    static void open(Desk desk, FileWork files, PrintHand hand, Window over) {
        new PrintPanel(desk, files, hand).show(over);
    }

    private PrintPanel(Desk desk, FileWork files, PrintHand hand) {
        this.desk = desk;
        this.words = desk.words();
        this.files = files;
        this.hand = hand;
        preview = new PagePreview(words);
        options = new PrintOptions(desk, this::make);
        said.setId("print-said");
        said.setWrapText(true);
        said.getStyleClass().add("print-said");
        button(pdf, "print-save", "editor.print.save", () -> save(".pdf"));
        pdf.setDefaultButton(true);
        button(page, "print-save-page", "editor.print.save-page", () -> save(".html"));
        button(cancel, "print-cancel", "editor.print.cancel", this::giveUp);
        bar.setId("print-progress");
        bar.setMaxWidth(Double.MAX_VALUE);
        press.progressProperty().addListener(o -> busy());
    }

    private void button(Button button, String id, String key, Runnable act) {
        button.setId(id);
        button.setText(words.of(key));
        button.setMinWidth(Region.USE_PREF_SIZE);
        Hints.on(button, words.of(key + ".hint"));
        button.setOnAction(e -> act.run());
    }

    private void show(Window over) {
        close.setText(words.of("editor.print.close"));
        close.setId("print-close");
        close.setCancelButton(true);
        close.setMinWidth(Region.USE_PREF_SIZE);
        close.setOnAction(e -> stage.close());
        progress.getChildren().setAll(bar, cancel);
        progress.setAlignment(Pos.CENTER_LEFT);
        // A button is painted a hair beyond its bounds, and that hair would stay when the row is hidden.
        progress.setPadding(new Insets(2));
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox buttons = new HBox(8, pdf, page, Parts.gap(), close);
        VBox foot = new VBox(8, said, progress, buttons);
        foot.getStyleClass().add("print-foot");
        BorderPane side = new BorderPane(options.scrolled());
        side.setBottom(foot);
        side.getStyleClass().add("print-side");
        // First what is chosen, then what comes of it: so goes the Tab key.
        BorderPane root = new BorderPane();
        root.setLeft(side);
        root.setCenter(preview);
        root.getStyleClass().addAll("editor", "print-window", desk.dark() ? "by-lamp" : "by-day");
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        Scene scene = new Scene(
                root, Math.min(1060, screen.getWidth() - FRAME), Math.min(720, screen.getHeight() - 2 * FRAME));
        scene.getStylesheets()
                .add(Objects.requireNonNull(PrintPanel.class.getResource("/easewright/editor/editor.css"))
                        .toExternalForm());
        new ByKeys().followOn(scene, over.getScene());
        scene.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                stage.close();
            }
        });
        stage.initOwner(over);
        Behind.step(over, stage);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle(words.of("editor.print.title", Map.of("name", PaperPages.name(desk))));
        stage.setMinWidth(760);
        stage.setMinHeight(520);
        stage.setOnHidden(e -> {
            press.close();
            hand.closed();
        });
        scene.addEventFilter(KeyEvent.ANY, e -> hand.touched());
        stage.setScene(scene);
        stage.show();
        make(options.choice());
        hand.opened(scene, words.of("editor.field.waiting"));
    }

    private void make(PaperChoice choice) {
        pages = Optional.empty();
        Parts.present(page, choice.report());
        say(words.of("editor.print.making"), false);
        press.make(desk, choice, this::made, this::failed);
        busy();
    }

    private void made(PaperPages made) {
        pages = Optional.of(made);
        preview.give(made.leaves());
        say(made.said(), false);
        busy();
    }

    private void failed(Throwable problem) {
        if (problem instanceof PrintProblem print) {
            preview.give(List.of());
            say(words.problem(print.code(), print.values()), true);
        } else if (problem instanceof SvgProblem svg) {
            say(words.problem(svg.code(), svg.values()), true);
        } else {
            String what = problem.getClass().getSimpleName()
                    + (problem.getMessage() == null ? "" : ": " + problem.getMessage());
            say(words.problem("not-foreseen", Map.of("what", what)), true);
        }
        busy();
    }

    private void save(String ending) {
        if (pages.isEmpty()) {
            return;
        }
        String name = PaperPages.name(desk, options.choice())
                + (options.choice().report() ? words.of("editor.print.report-name") : "");
        Path beside = desk.file()
                .map(file -> file.known().resolveSibling(name + ending))
                .orElse(Path.of(name + ending));
        Optional<Path> where = files.asking().whereToSave(files.folder().resolve(beside));
        where.ifPresent(path -> {
            say(
                    words.of(
                            "editor.print.saving",
                            Map.of("file", path.getFileName().toString())),
                    false);
            press.save(pages.get(), path, this::saved, this::failed);
            busy();
        });
    }

    private void saved(Path path) {
        say(words.of("editor.print.saved", Map.of("file", path.toString())), false);
        busy();
    }

    private void giveUp() {
        press.cancel();
        say(words.of(pages.isPresent() ? "editor.print.not-saved" : "editor.print.not-made"), false);
        busy();
    }

    private void busy() {
        double share = press.progressProperty().get();
        boolean going = share < PaperPress.IDLE;
        bar.setProgress(going ? share : 0);
        progress.setVisible(going);
        pdf.setDisable(going || pages.isEmpty());
        page.setDisable(going || pages.isEmpty());
    }

    private void say(String text, boolean bad) {
        said.setText(text);
        // Lines of text cannot be gone to: what was said is heard with the button it is about, and with the one that
        // has the keys once that is done.
        Hints.help(pdf, text);
        Hints.help(close, text);
        said.pseudoClassStateChanged(BAD, bad);
    }
}
