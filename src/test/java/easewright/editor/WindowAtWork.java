package easewright.editor;

import easewright.editor.model.Sample;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A window in a program of its own: changes a sample, tries more, says when that has been kept safe, and waits to be killed. */
final class WindowAtWork {
    private WindowAtWork() {}

    public static void main(String[] args) throws Exception {
        Path state = Path.of(args[0]);
        Stage stage = FxToolkit.registerPrimaryStage();
        EditorApp app = new EditorApp();
        WaitForAsyncUtils.asyncFx(() -> app.start(stage, state, new Answers())).get();
        WaitForAsyncUtils.asyncFx(() -> app.files().openSample(Sample.all().get(0)))
                .get();
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> app.session().desk().isOpen());
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> stage.getScene().lookup("#amount") != null);
        WaitForAsyncUtils.asyncFx(() -> {
                    var session = app.session();
                    session.chooseLevel("hip");
                    session.setBody(
                            session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(985), "Hip girth");
                    session.want(session.desk().wanted().orElseThrow().withAmount(24));
                    session.keep();
                    session.want(session.desk().wanted().orElseThrow().withAmount(-12));
                    stage.getScene().lookup("#table").requestFocus();
                    ((TextField) stage.getScene().lookup("#amount")).setText("1,");
                    app.files().begun();
                })
                .get();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> isKept(state));
        System.out.println("kept");
        Thread.currentThread().join();
    }

    private static boolean isKept(Path state) throws Exception {
        Path folder = Files.createDirectories(state.resolve("recovery"));
        try (DirectoryStream<Path> kept = Files.newDirectoryStream(folder, "*.kept")) {
            for (Path file : kept) {
                if (Files.readString(file, StandardCharsets.ISO_8859_1).contains("amount=-12.0")) {
                    return true;
                }
            }
            return false;
        }
    }
}
