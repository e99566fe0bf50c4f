package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.FollowUp;
import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import java.util.List;
import javafx.concurrent.Task;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Offers what the last change asks of the pieces sewn to those it changed. Looked up away from the window's thread. */
final class FollowUpView extends VBox {
    private final Session session;
    private Pattern asked;

    FollowUpView(Session session) {
        super(6);
        this.session = session;
        setId("follow-up");
        offer(List.of());
        session.deskProperty().addListener((o, before, now) -> follow(now));
    }

    private void follow(Desk desk) {
        if (desk.pattern() != asked) {
            asked = desk.pattern();
            offer(List.of());
            if (FollowUp.isAsked(desk)) {
                look(desk);
            }
        }
    }

    private void look(Desk desk) {
        Task<List<FollowUp>> task = new Task<>() {
            @Override
            protected List<FollowUp> call() {
                return FollowUp.of(desk);
            }
        };
        task.setOnSucceeded(e -> {
            if (session.desk().pattern() == desk.pattern()) {
                offer(task.getValue());
            }
        });
        Thread thread = new Thread(task, "follow-up");
        thread.setDaemon(true);
        thread.start();
    }

    private void offer(List<FollowUp> offers) {
        getChildren().clear();
        setVisible(!offers.isEmpty());
        setManaged(!offers.isEmpty());
        for (int i = 0; i < offers.size(); i++) {
            FollowUp each = offers.get(i);
            Label said = new Label(each.words());
            said.setWrapText(true);
            said.setMinHeight(USE_PREF_SIZE);
            Button take = new Button(session.desk().words().of("editor.follow.take"));
            take.setId("follow-take-" + i);
            take.getStyleClass().add("small");
            Hints.on(take, session.desk().words().of("editor.follow.take.hint"));
            take.setOnAction(e -> session.edit(each.result()));
            VBox box = new VBox(6, said, take);
            box.getStyleClass().add("advice");
            getChildren().add(box);
        }
    }
}
