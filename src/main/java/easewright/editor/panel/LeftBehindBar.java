package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.file.LeftBehind;
import easewright.svg.disk.KeptWork;
import easewright.text.Words;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;

/**
 * Offers work back that a crash left behind: one line above the table, however much was left behind, so that it never
 * lies over the drawing. The latest is shown first; the others can be chosen.
 */
public final class LeftBehindBar extends HBox {
    private static final String WHEN = "d MMMM, HH:mm";

    /** Two windows may have left the same file behind in the same minute. */
    private static final String WHEN_ALIKE = "d MMMM, HH:mm:ss";

    private final FileWork files;
    private final Runnable onwards;
    private final List<KeptWork> works;
    private final Set<KeptWork> tried;
    private final List<Path> damaged;
    private final Label what = new Label();
    private final MenuButton others = new MenuButton();
    private final Button back = new Button();
    private final Button discard = new Button();
    private final Button later = new Button();
    private int shown;

    /**
     * @param onwards to where the work goes on once something was brought back, or nothing is offered any more
     */
    public LeftBehindBar(FileWork files, LeftBehind found, Runnable onwards) {
        this.onwards = onwards;
        this.files = files;
        this.works = new ArrayList<>(found.works());
        this.tried = found.tried();
        this.damaged = found.damaged();
        setId("left-behind");
        getStyleClass().add("left-behind");
        setAlignment(Pos.CENTER_LEFT);
        // Hardly ever is anything left behind: its parts are not to delay the window.
        if (!works.isEmpty() || !damaged.isEmpty()) {
            fill();
        }
        show();
    }

    private void fill() {
        Label sign = new Label("!");
        sign.getStyleClass().addAll("sign", "caution");
        sign.setMinWidth(USE_PREF_SIZE);
        what.setMinWidth(0);
        others.setId("left-others");
        back.setId("left-restore");
        back.getStyleClass().add("accent");
        back.setOnAction(e -> {
            KeptWork work = works.get(shown);
            files.restore(work, () -> {
                away(work);
                onwards.run();
            });
        });
        discard.setId("left-discard");
        discard.setOnAction(e -> {
            KeptWork work = works.get(shown);
            if (files.asking().throwAway(name(work))) {
                files.discard(work);
                away(work);
                if (!isVisible()) {
                    onwards.run();
                }
            }
        });
        later.setId("left-later");
        later.setOnAction(e -> {
            seen(false);
            onwards.run();
        });
        for (var control : List.of(others, back, discard, later)) {
            control.getStyleClass().add("small");
            control.setMinWidth(USE_PREF_SIZE);
        }
        getChildren().setAll(sign, what, Parts.gap(), others, back, discard, later);
    }

    /** Gives the keys to what is offered, if anything is. */
    public void takeKeys() {
        if (isVisible()) {
            (works.isEmpty() ? later : back).requestFocus();
        }
    }

    private void away(KeptWork work) {
        works.remove(work);
        shown = 0;
        show();
    }

    private void show() {
        Words words = files.words();
        seen(!works.isEmpty() || !damaged.isEmpty());
        if (works.isEmpty()) {
            damaged.stream().findFirst().ifPresent(file -> showDamaged(file, words));
            return;
        }
        String file = name(works.get(shown));
        what.setText(words.of(
                tried.contains(works.get(shown)) ? "editor.left.tried" : "editor.left.intro",
                Map.of("work", line(works.get(shown), words))));
        // A long name leaves no room for the rest.
        Hints.on(what, what.getText());
        others.setText(words.of("editor.left.others", Map.of("count", works.size())));
        Heard.name(others, others.getText());
        Hints.on(others, words.of("editor.left.others.hint"));
        Parts.present(others, works.size() > 1);
        others.getItems().clear();
        for (int i = 0; i < works.size(); i++) {
            int number = i;
            MenuItem item = new MenuItem(line(works.get(i), words));
            item.setMnemonicParsing(false);
            item.setOnAction(e -> {
                shown = number;
                show();
            });
            others.getItems().add(item);
        }
        Parts.say(back, words, "editor.left.restore");
        // The line itself cannot be gone to: it is heard with the first of its buttons.
        Parts.about(back, what.getText());
        say(discard, words, "editor.left.discard", file);
        say(later, words, "editor.left.later", file);
    }

    /** It can only be said, once all is dealt with that can be brought back. */
    private void showDamaged(Path file, Words words) {
        what.setText(words.of("editor.left.damaged"));
        Hints.on(what, words.of("editor.left.damaged.hint", Map.of("file", file.toString())));
        getChildren().removeAll(others, back, discard);
        Parts.say(later, words, "editor.left.noted");
        Parts.about(later, what.getText());
    }

    private static void say(Button button, Words words, String key, String file) {
        Parts.say(button, words, key);
        button.setAccessibleText(words.of(key) + ": " + file);
    }

    private static String name(KeptWork work) {
        return work.original().getFileName().toString();
    }

    private String line(KeptWork work, Words words) {
        String line = line(work, WHEN, words);
        boolean alike = works.stream()
                .anyMatch(other -> other != work && line(other, WHEN, words).equals(line));
        return alike ? line(work, WHEN_ALIKE, words) : line;
    }

    private static String line(KeptWork work, String pattern, Words words) {
        DateTimeFormatter when = DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
        Map<String, Object> values =
                Map.of("file", name(work), "when", when.format(work.at().atZone(ZoneId.systemDefault())));
        return words.of("editor.left.work", values);
    }

    private void seen(boolean is) {
        Parts.present(this, is);
    }
}
