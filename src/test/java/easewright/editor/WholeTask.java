package easewright.editor;

import easewright.alter.StepRefused;
import easewright.alter.Ways;
import easewright.editor.file.Dialogs;
import easewright.editor.model.Course;
import easewright.editor.model.OtherWay;
import easewright.editor.model.Recasting;
import easewright.editor.model.Sample;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.control.ComboBox;
import javafx.scene.control.SplitMenuButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;

/**
 * Walks the whole task, from a drawing without marks to paper, and takes a picture of every page and state on the way,
 * for looking at: at any size, by day or by lamplight, and with {@code -Dglass.gtk.uiScale=2} at 200 %. What a picture
 * is to show and is not there any more stops the walk.
 */
public final class WholeTask extends Director {
    private static final Path FOUR_PIECES = Path.of("src/test/resources/marking/four-pieces.svg");
    private int taken;

    /** Starts it; a class of its own, because a main class that is an application wants JavaFX as modules. */
    static final class Run {
        private Run() {}

        public static void main(String[] args) {
            direct(WholeTask.class, args);
        }
    }

    @Override
    void play() throws Exception {
        size();
        rest();
        next("start");
        marks();
        ease();
        changes();
        fit();
        paper();
        said();
        others();
    }

    private void next(String name) throws InterruptedException {
        picture(String.format("%02d-%s", ++taken, name));
    }

    /** Where a person might keep them: lists of files tell the name of the folder. */
    private static Path patterns() throws IOException {
        return Files.createDirectory(Files.createTempDirectory("task").resolve("Patterns"));
    }

    private void marks() throws Exception {
        Path bare = Files.copy(FOUR_PIECES, patterns().resolve("four-pieces.svg"));
        act(() -> app.files().open(bare));
        rest();
        rest();
        next("opened");
        press("#scale-offer-0");
        next("scale-proved");
        press("#step-suggested");
        until("#suggest-accept");
        next("suggested");
        press("#suggest-accept");
        until("marks", () -> !app.session().desk().pattern().levels().isEmpty());
        until("#tool-dart");
        next("pieces");
        scroll("#marks", 1);
        next("pieces-below");
        press("#tool-dart");
        clickOn(app.session()
                .desk()
                .pattern()
                .pieces()
                .get(0)
                .outline()
                .segments()
                .get(0)
                .start());
        next("dart-begun");
        press("#tool-dart");
        press("#step-seams");
        next("seams");
        press("#step-levels");
        until("#level-add");
        next("levels");
        type("#level-below-hip", "20 cm");
        next("hip");
        press("#mark-next");
        next("ease-empty");
    }

    private void ease() throws InterruptedException {
        type("#body-waist", "74.5 cm");
        type("#body-hip", "100 cm");
        type("#wish-hip", "8 cm");
        act(() -> app.session().chooseLevel("hip"));
        next("ease");
        scroll("#ease-sheet", 1);
        next("ease-told");
        scroll("#ease-sheet", 0);
        press("#cloth-test");
        next("cloth");
        press("#cloth-test");
        press("#cloth-garment");
        next("garment");
        press("#cloth-garment");
        type("#body-waist", "ninety");
        next("typed-wrong");
        type("#body-waist", "74.5 cm");
        type("#amount", "24");
        next("doubt");
        type("#amount", "3 cm");
        next("trial");
        for (String page : List.of("rings", "size", "notes")) {
            press("#page-" + page);
            next("trial-" + page);
        }
        press("#page-ease");
        press("#ask-where");
        next("where-asked");
        press("#feels-pulls");
        press("#sign-tight-all-round");
        next("where");
        press("#ask-where");
        act(() -> app.session()
                .want(app.session()
                        .desk()
                        .wanted()
                        .orElseThrow()
                        .withOther(Ways.of("slash").map(OtherWay::of))));
        next("slash");
        press("#pick-slash");
        next("slash-picking");
        act(() -> app.session().want(app.session().desk().wanted().orElseThrow().withOther(Optional.empty())));
        LengthUnit asBefore = app.session().desk().unit();
        act(() -> app.session().setUnit(LengthUnit.INCH));
        next("inches");
        act(() -> app.session().setUnit(asBefore));
        act(() -> find("#keep").requestFocus());
        next("focus");
    }

    private void changes() throws InterruptedException {
        press("#keep");
        rest();
        next("kept");
        press("#page-changes");
        next("changes-one");
        press("#page-ease");
        act(() -> app.session().chooseLevel("waist"));
        type("#amount", "1 cm");
        press("#keep");
        rest();
        rest();
        next("kept-waist");
        act(() -> {
            try {
                Recasting.on(app.session(), Course.of(app.session().desk()).switched(0, false));
            } catch (StepRefused refused) {
                throw new IllegalStateException(refused);
            }
        });
        press("#page-changes");
        next("changes");
    }

    private void fit() throws Exception {
        press("#page-true");
        rest();
        rest();
        next("true");
        if (shows("#true-show-0")) {
            press("#true-show-0");
            next("true-shown");
        }
        press("#view-all");
        press("#page-notes");
        next("notes");
        press("#page-rings");
        next("rings");
        press("#page-size");
        next("size");
    }

    private void paper() throws InterruptedException {
        press("#print");
        rest();
        until(other(), "#print-save");
        next("print");
        press(other(), "#print-kind-report");
        until(other(), "#print-save-page");
        next("report");
        act(() -> other().close());
    }

    private void said() throws Exception {
        press("#page-ease");
        String name = "four-pieces-with-room.svg";
        Path missing = patterns().resolve("gone").resolve(name);
        act(() -> app.files().save(missing));
        rest();
        next("said-bad");
        act(() -> app.session().hush());
        asked(dialogs -> dialogs.leaving("four-pieces.svg"));
        next("leaving");
        act(() -> other().close());
        asked(dialogs -> dialogs.throwAway("four-pieces.svg"));
        next("throw-away");
        act(() -> other().close());
        Path saved = patterns().resolve(name);
        act(() -> app.files().save(saved));
        rest();
        next("saved");
        act(() -> app.session().hush());
        press("#here-how");
        next("how");
        act(() -> ((ComboBox<?>) find("#way")).show());
        next("list-open");
        act(() -> ((ComboBox<?>) find("#way")).hide());
        press("#here-how");
        act(() -> ((SplitMenuButton) find("#open")).show());
        next("recent");
        act(() -> ((SplitMenuButton) find("#open")).hide());
        act(() -> find("#open").requestFocus());
        for (int i = 0; i < 3; i++) {
            act(() -> new Robot().keyType(KeyCode.TAB));
        }
        next("keyboard");
        act(() -> find("#page-rings").requestFocus());
        act(() -> new Robot().keyType(KeyCode.TAB));
        next("keyboard-page");
    }

    /** Asks without waiting for the answer. */
    private void asked(Consumer<Dialogs> question) {
        Dialogs dialogs = new Dialogs(stage(), () -> app.session().desk().words());
        Platform.runLater(() -> question.accept(dialogs));
    }

    private void others() throws Exception {
        Path nest = patterns().resolve("nest.svg");
        StringBuilder drawing = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='600mm' viewBox='0 0 600 600'>");
        for (int size = 36; size <= 40; size += 2) {
            drawing.append("<g id='size-")
                    .append(size)
                    .append("'><path id='front-")
                    .append(size);
            drawing.append("' d='M100,100 h")
                    .append(150 + size)
                    .append(" v300 h-")
                    .append(150 + size);
            drawing.append("z'/></g>");
        }
        Files.writeString(nest, drawing.append("</svg>"));
        act(() -> app.files().open(nest));
        rest();
        rest();
        next("nest");
        for (Sample sample : Sample.all()) {
            act(() -> app.files().openSample(sample));
            rest();
            rest();
            press("#view-all");
            next("sample-" + sample.id());
        }
        act(() -> app.files().open(Path.of("sample-pieces/skirt-sizes.svg")));
        rest();
        rest();
        next("sizes");
        act(() -> {
            for (Level level : app.session().desk().pattern().levels()) {
                app.session().chooseLevel(level.name());
            }
        });
        type("#amount", "2 cm");
        next("sizes-trial");
        press("#also-14");
        next("sizes-also");
        act(() -> app.files().open(Path.of("src/test/resources/command/untrue-bodice.svg")));
        rest();
        rest();
        press("#page-true");
        rest();
        rest();
        press("#true-show-0");
        next("untrue");
        press("#page-notes");
        next("untrue-notes");
    }
}
