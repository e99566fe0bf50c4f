package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.FollowUp;
import easewright.editor.model.NoLongerFits;
import easewright.editor.model.Session;
import easewright.editor.model.TrueBench;
import easewright.text.Words;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Says that the changes ask something of the pieces sewn to the changed ones, and leads to it. */
final class FollowUpView extends HBox {
    private final Session session;
    private final TrueBench bench;
    private final Label said = new Label();
    private final Button look = new Button();
    private final SeveritySign sign = new SeveritySign();
    private boolean aside;
    private boolean room = true;

    FollowUpView(Session session, TrueBench bench, Runnable leader) {
        super(8);
        this.session = session;
        this.bench = bench;
        setId("follow-up");
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("advice");
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        said.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(said, Priority.ALWAYS);
        look.setId("follow-look");
        // Nothing is tried beside it: this is the next step.
        look.getStyleClass().addAll("small", "accent");
        look.setMinWidth(USE_PREF_SIZE);
        look.setOnAction(e -> leader.run());
        getChildren().setAll(sign, said, look);
        bench.workProperty().addListener((o, before, now) -> show(session.desk()));
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    /** Where the page above says the same it is not said twice. */
    void stand(boolean off) {
        aside = off;
        show(session.desk());
    }

    /** Gives its room to something else for a while, or takes it again. */
    void makeRoom(boolean other) {
        if (room == other) {
            room = !other;
            show(session.desk());
        }
    }

    private void show(Desk desk) {
        List<FollowUp> offers = bench.work().stream()
                .flatMap(w -> w.offers().stream())
                .filter(FollowUp::changed)
                .toList();
        boolean is = !offers.isEmpty() && desk.trial().isEmpty() && !aside && room;
        Parts.present(this, is);
        Words words = session.desk().words();
        sign.show(NoLongerFits.severity(desk, offers), words);
        said.setText(offers.isEmpty() ? "" : NoLongerFits.words(desk, offers));
        look.setText(words.of("editor.follow.look"));
        Parts.about(look, said.getText());
        Hints.on(look, words.of("editor.follow.look.hint"));
    }
}
