package easewright.editor.panel;

import easewright.editor.mark.LoosePieces;
import easewright.editor.mark.Marker;
import easewright.editor.mark.OtherLines;
import easewright.editor.model.Session;
import easewright.geom.Box;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;

/** The drawn lines that are no pieces yet; one that is chosen becomes a piece, or is asked about. */
final class LooseMenu extends MenuButton {
    private final Session session;
    private final Marker marker;
    private final LineCard line;

    /**
     * @param line where is asked about a line that may belong to a piece
     */
    LooseMenu(Session session, Marker marker, LineCard line) {
        this.session = session;
        this.marker = marker;
        this.line = line;
        setId("more-pieces");
        getStyleClass().add("small");
        setMinWidth(USE_PREF_SIZE);
    }

    /** Where there is no other line, the list says so: what cannot be pressed shows no hint. */
    void offer(List<OtherLines.Other> others, Words words) {
        String name = words.of(others.isEmpty() ? "editor.piece.more.none" : "editor.piece.more");
        setText(words.of("editor.piece.more.short"));
        Parts.name(this, name);
        setOpacity(others.isEmpty() ? 0.5 : 1);
        if (others.isEmpty()) {
            MenuItem none = new MenuItem(name);
            none.setDisable(true);
            getItems().setAll(none);
        } else {
            getItems().setAll(others.stream().map(o -> item(o, words)).toList());
        }
    }

    private MenuItem item(OtherLines.Other other, Words words) {
        Box box = other.bare().outline().box();
        MenuItem item = new MenuItem(words.of(
                "editor.piece.loose", Map.of("name", other.bare().name(), "wide", box.width(), "tall", box.height())));
        item.setMnemonicParsing(false);
        item.setOnAction(e -> {
            if (other.piece().isPresent()) {
                line.ask(other);
            } else {
                session.edit(LoosePieces.with(marker.sheet(), other.bare()));
                marker.choosePiece(other.id());
            }
        });
        return item;
    }
}
