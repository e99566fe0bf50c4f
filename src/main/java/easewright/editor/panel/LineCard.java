package easewright.editor.panel;

import easewright.editor.mark.MarkRefused;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.OtherLines;
import easewright.editor.mark.SaidLater;
import easewright.editor.model.Session;
import easewright.geom.Box;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What a closed line is that is no outline of a piece: sewn, cut, or a piece of its own. There while one is asked about. */
final class LineCard extends VBox {
    private final Session session;
    private final Marker marker;
    private Optional<Asked> shown = Optional.empty();

    /** The line, with what else its words depend on. */
    private record Asked(OtherLines.Other line, String piece, LengthUnit unit) {}

    LineCard(Session session, Marker marker) {
        super(8);
        this.session = session;
        this.marker = marker;
        setId("line-card");
        getStyleClass().add("advice");
        Parts.present(this, false);
    }

    /** Asks about a line that was chosen with keys, which go on here. */
    void ask(OtherLines.Other other) {
        marker.askOutline(Optional.of(other.id()));
        Platform.runLater(this::takeKeys);
    }

    void show(List<OtherLines.Other> others, MarkState state, Words words) {
        Optional<OtherLines.Other> asked = state.outline()
                .flatMap(id -> others.stream().filter(o -> o.id().equals(id)).findFirst());
        Parts.present(this, asked.isPresent());
        Optional<Asked> now = asked.map(other -> new Asked(other, name(other), words.unit()));
        if (!now.equals(shown)) {
            boolean keys = isFocusWithin();
            shown = now;
            getChildren().clear();
            now.ifPresent(a -> fill(a.line(), a.piece(), words));
            if (keys) {
                takeKeys();
            }
        }
    }

    private void takeKeys() {
        lookupAll(".button").stream().findFirst().ifPresent(Node::requestFocus);
    }

    /** Of the piece that the line belongs to; empty where it belongs to none. */
    private String name(OtherLines.Other other) {
        return other.piece()
                .flatMap(session.desk().pattern()::piece)
                .map(Piece::name)
                .orElse("");
    }

    private void fill(OtherLines.Other other, String name, Words words) {
        Optional<Piece> piece = other.piece().flatMap(session.desk().pattern()::piece);
        Box box = other.bare().outline().box();
        String where = piece.isEmpty() ? "alone" : other.around() ? "around" : "inside";
        Label line = new Label(words.of(
                "editor.line." + where + (other.known() ? ".known" : ""),
                Map.of("piece", name, "wide", box.width(), "tall", box.height())));
        line.setWrapText(true);
        line.setMinHeight(USE_PREF_SIZE);
        FlowPane offers = new FlowPane(8, 6);
        OneStop.in(offers);
        if (other.known()) {
            offers.getChildren()
                    .add(button(
                            "swap",
                            words,
                            name,
                            () -> said(SaidLater.line(session.desk(), marker.sheet(), other, true))));
        } else if (piece.isPresent()) {
            offers.getChildren()
                    .add(button(
                            other.around() ? "cutting" : "sewn",
                            words,
                            name,
                            () -> said(SaidLater.line(session.desk(), marker.sheet(), other, false))));
        }
        offers.getChildren()
                .add(button("own", words, name, () -> said(SaidLater.ownPiece(session.desk(), marker.sheet(), other))));
        offers.getChildren().add(button("leave", words, name, () -> marker.askOutline(Optional.empty())));
        getChildren().setAll(line, offers);
    }

    /** What was taken for a piece is none. */
    void noPiece(String piece) {
        attempt(() -> said(SaidLater.noPiece(session.desk(), marker.sheet(), piece)));
    }

    private void said(SaidLater said) {
        said.edit(session);
        said.piece().ifPresent(marker::choosePiece);
    }

    /** What may be refused. */
    @FunctionalInterface
    private interface Act {
        void run() throws MarkRefused;
    }

    private Button button(String offer, Words words, String piece, Act act) {
        Button button = new Button(words.of("editor.line." + offer, Map.of("piece", piece)));
        button.setId("line-" + offer);
        button.getStyleClass().add("small");
        button.setMinWidth(USE_PREF_SIZE);
        Hints.on(button, words.of("editor.line." + offer + ".hint"));
        button.setOnAction(e -> attempt(act));
        return button;
    }

    private void attempt(Act act) {
        try {
            act.run();
        } catch (MarkRefused refused) {
            session.say(true, "problem." + refused.code(), refused.values());
        }
    }
}
