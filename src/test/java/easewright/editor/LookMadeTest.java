package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** The look that the build makes is there also where the toolkit cannot read its binary form. */
@ExtendWith(Swift.class)
class LookMadeTest {
    @TempDir
    static Path folder;

    private Stage stage;
    private String before;

    @Start
    void start(Stage shown) {
        stage = shown;
        before = Application.getUserAgentStylesheet();
    }

    @AfterEach
    void back(FxRobot robot) {
        robot.interact(() -> Application.setUserAgentStylesheet(before));
    }

    /** Runs what Maven runs after compiling. */
    private static Path made(String name) throws Exception {
        Path classes = Files.createDirectories(folder.resolve(name + "-tool"));
        Path look = Files.createDirectories(folder.resolve(name));
        try (var css = EditorWindow.class.getResourceAsStream("editor.css")) {
            Files.copy(css, look.resolve("editor.css"));
        }
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-proc:none",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-d",
                        classes.toString(),
                        "src/look/MakeLook.java");
        assertThat(failed).isZero();
        try (URLClassLoader tool = new URLClassLoader(new URL[] {classes.toUri().toURL()})) {
            tool.loadClass("MakeLook").getMethod("main", String[].class).invoke(null, (Object)
                    new String[] {"src/look/left-out.txt", look.toString()});
        }
        return look;
    }

    /** How a button of the theme and a part of the program's own look there. */
    private String seen(FxRobot robot, Path look, String theme) {
        String[] seen = new String[1];
        robot.interact(() -> {
            Button button = new Button("Keep it");
            button.getStyleClass().add("accent");
            StackPane root = new StackPane(button);
            root.getStyleClass().addAll("editor", theme);
            Application.setUserAgentStylesheet(
                    look.resolve(theme + ".css").toUri().toString());
            Scene scene = new Scene(root, 100, 100);
            scene.getStylesheets().add(look.resolve("editor.css").toUri().toString());
            stage.setScene(scene);
            root.applyCss();
            seen[0] = button.getBackground().getFills().get(0).getFill() + " " + button.getPadding() + " "
                    + root.getBackground().getFills().get(0).getFill();
        });
        return seen[0];
    }

    @Test
    void aFormThatTheToolkitDoesNotKnowCostsTheThemeNothing(FxRobot robot) throws Exception {
        Path look = made("look");
        Path spoilt = made("spoilt");
        for (String name : List.of("by-day", "by-lamp", "editor")) {
            Path sheet = spoilt.resolve(name + ".bss");
            byte[] content = Files.readAllBytes(sheet);
            // The first two bytes are the version of the form.
            content[0] = 0x7F;
            Files.write(sheet, content);
            assertThat(Arrays.equals(content, Files.readAllBytes(look.resolve(name + ".bss"))))
                    .isFalse();
        }
        String day = seen(robot, look, "by-day");
        String lamp = seen(robot, look, "by-lamp");
        assertThat(day).isNotEqualTo(lamp);
        assertThat(seen(robot, spoilt, "by-day")).isEqualTo(day);
        assertThat(seen(robot, spoilt, "by-lamp")).isEqualTo(lamp);
    }

    /** Asked for by the text: a sheet asked for by its binary form has nothing to fall back to. */
    @Test
    void theWindowAsksForTheText() {
        assertThat(EditorWindow.theme("by-day", false)).endsWith(".css");
        assertThat(EditorWindow.theme("by-lamp", true)).endsWith(".css");
    }
}
