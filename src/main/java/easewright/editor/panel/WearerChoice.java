package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.Map;
import javafx.scene.control.CheckBox;

/** Whether the size at work is made for somebody of its own; nothing to be seen where the pattern comes in one size. */
final class WearerChoice extends CheckBox {
    WearerChoice(Session session) {
        setId("own-wearer");
        setMnemonicParsing(false);
        setOnAction(e -> session.setOwnWearer(isSelected()));
    }

    void show(Desk desk) {
        Words words = desk.words();
        Parts.present(this, desk.size().isPresent());
        desk.size().ifPresent(size -> {
            setText(words.of("editor.wearer.own", Map.of("size", size)));
            Hints.on(this, words.of("editor.wearer.own.hint"));
            setSelected(desk.pattern().bodies().containsKey(size));
        });
    }
}
