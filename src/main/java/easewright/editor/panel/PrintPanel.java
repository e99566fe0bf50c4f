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
import javafx.scene.Node;
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
    /** What is seen at the sides of the window that it stands over, and between it and what is above it; pixels. */
    private static final double FRAME = 24;

    private static final double BELOW = 10;

    private static final double LEAST_WIDE = 760;
    private static final double LEAST_HIGH = 520;
    /** A page is seen as large as the height allows; more at its sides shows nothing, pixels. */
    private static final double MOST_WIDE = 1400;

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
    /** How the file is then printed: printers and the programs that send them a file change its scale unless told not to. */
    private final Label full = new Label();

    private final Button pdf = new Button();
    private final Button page = new Button();
    private boolean reportShown;
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
        full.setId("print-full-size");
        full.setText(words.of("editor.print.full-size"));
        full.setWrapText(true);
        full.getStyleClass().add("quiet");
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
        VBox foot = new VBox(8, said, full, progress, buttons);
        foot.getStyleClass().add("print-foot");
        BorderPane side = new BorderPane(options.scrolled());
        side.setBottom(foot);
        side.getStyleClass().add("print-side");
        preview.nearerProperty().addListener((o, was, is) -> Parts.present(side, !is));
        // First what is chosen, then what comes of it: so goes the Tab key.
        BorderPane root = new BorderPane();
        root.setLeft(side);
        root.setCenter(preview);
        root.getStyleClass().addAll("editor", "print-window", desk.dark() ? "by-lamp" : "by-day");
        Rectangle2D place = place(over);
        Scene scene = new Scene(root, place.getWidth(), place.getHeight());
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
        stage.setMinWidth(LEAST_WIDE);
        stage.setMinHeight(LEAST_HIGH);
        stage.setX(place.getMinX());
        stage.setY(place.getMinY());
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

    /**
     * Below the bar at the head of the window it stands over, which it leaves whole, and nearly as large as the rest; on
     * the screen in any case. What it holds is so large, without a frame of its own, which is taken to be as high as that
     * of the other window.
     */
    private static Rectangle2D place(Window over) {
        Scene below = over.getScene();
        Node bar = below.lookup(".top-bar");
        double head = bar == null ? 0 : bar.localToScene(bar.getLayoutBounds()).getMaxY();
        double frame = below.getY();
        Rectangle2D screen = Screen.getScreensForRectangle(
                        over.getX(), over.getY(), Math.max(1, over.getWidth()), Math.max(1, over.getHeight()))
                .stream()
                .findFirst()
                .orElseGet(Screen::getPrimary)
                .getVisualBounds();
        double wide = Math.max(LEAST_WIDE, Math.min(MOST_WIDE, below.getWidth() - 2 * FRAME));
        double high = Math.max(LEAST_HIGH, below.getHeight() - head - frame - 2 * BELOW);
        wide = Math.min(wide, screen.getWidth());
        high = Math.min(high, screen.getHeight() - frame);
        double x = over.getX() + (over.getWidth() - wide) / 2;
        double y = over.getY() + frame + head + BELOW;
        return new Rectangle2D(
                Math.max(screen.getMinX(), Math.min(x, screen.getMaxX() - wide)),
                Math.max(screen.getMinY(), Math.min(y, screen.getMaxY() - high - frame)),
                wide,
                high);
    }

    private void make(PaperChoice choice) {
        pages = Optional.empty();
        Parts.present(page, choice.report());
        boolean printed = !choice.report() && choice.onPaper();
        Parts.present(full, printed);
        pdf.setText(words.of(printed ? "editor.print.save.to-print" : "editor.print.save"));
        say(words.of("editor.print.making"), false);
        press.make(desk, choice, this::made, this::failed);
        busy();
    }

    private void made(PaperPages made) {
        pages = Optional.of(made);
        boolean report = options.choice().report();
        preview.give(made.leaves(), report != reportShown);
        reportShown = report;
        say(made.said(), false);
        busy();
    }

    private void failed(Throwable problem) {
        if (problem instanceof PrintProblem print) {
            preview.give(List.of(), true);
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
