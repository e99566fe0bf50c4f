package easewright.editor.panel;

import easewright.pattern.Severity;
import easewright.text.Words;
import java.util.Locale;
import javafx.scene.control.Label;

/** The sign before what is noticed: wherever the same is told it is the same one. */
final class SeveritySign extends Label {
    SeveritySign() {
        setMinWidth(USE_PREF_SIZE);
    }

    SeveritySign(Severity severity, Words words) {
        this();
        show(severity, words);
    }

    void show(Severity severity, Words words) {
        String name = severity.name().toLowerCase(Locale.ROOT);
        setText(
                switch (severity) {
                    case NOTE -> "i";
                    case CAUTION -> "!";
                    case FAULT -> "\u00d7";
                });
        getStyleClass().setAll("label", "sign", name);
        setAccessibleText(words.of("editor.notes.severity." + name));
    }
}
