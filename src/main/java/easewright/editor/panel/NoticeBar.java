package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** One line at the foot of the table for what has just happened. Stays until put away or followed by work. */
public final class NoticeBar extends HBox {
    private static final PseudoClass BAD = PseudoClass.getPseudoClass("bad");

    private final Label text = new Label();
    private final Button away = new Button("\u00d7");

    public NoticeBar(Session session) {
        setId("notice");
        getStyleClass().add("notice");
        setAlignment(Pos.CENTER_LEFT);
        setMaxHeight(Region.USE_PREF_SIZE);
        text.setWrapText(true);
        text.setMaxWidth(560);
        HBox.setHgrow(text, Priority.ALWAYS);
        away.getStyleClass().addAll("flat", "small");
        away.setOnAction(e -> session.hush());
        getChildren().setAll(text, away);
        setMaxWidth(Region.USE_PREF_SIZE);
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    private void show(Desk desk) {
        setVisible(desk.notice().isPresent());
        setManaged(desk.notice().isPresent());
        desk.notice().ifPresent(n -> {
            text.setText(desk.words().of(n.key(), n.values()));
            pseudoClassStateChanged(BAD, n.bad());
            away.setAccessibleText(desk.words().of("editor.notice.away"));
            Hints.on(away, desk.words().of("editor.notice.away"));
        });
    }
}
