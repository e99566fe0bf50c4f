package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.SeamsView;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Which edges are sewn together, and how much ease is meant between them. */
final class SeamsStep extends StepPage {
    private final Label intro = new Label();
    private final ToggleButton sew;
    private final VBox list = new VBox(10);
    private final List<SeamCard> cards = new ArrayList<>();

    SeamsStep(Session session, Marker marker) {
        super(session, marker, MarkState.Step.SEAMS);
        intro.setWrapText(true);
        sew = Parts.tool(Tool.SEW, marker);
        begin(intro, new HBox(sew), list);
    }

    @Override
    void words(Words words) {
        Parts.show(sew, Tool.SEW, marker, words);
    }

    @Override
    void show(Desk desk, MarkState state) {
        SeamsView view = SeamsView.of(desk);
        intro.setText(desk.words().of(view.seams().isEmpty() ? "editor.seams.none" : "editor.seams.intro"));
        boolean more = !cards.isEmpty() && view.seams().size() == cards.size() + 1;
        if (cards.size() != view.seams().size()) {
            cards.clear();
            view.seams().forEach(s -> cards.add(new SeamCard(session, marker)));
            list.getChildren().setAll(cards);
        }
        for (int i = 0; i < cards.size(); i++) {
            cards.get(i).show(view.seams().get(i), view.edges(), desk);
        }
        if (more && state.tool() == Tool.SEW) {
            // The new one is the last, and has no place yet.
            SeamCard made = cards.get(cards.size() - 1);
            Platform.runLater(() -> InView.show(made));
        }
    }
}
