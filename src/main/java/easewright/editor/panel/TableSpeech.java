package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** Tells those who do not see the table where the keys are on it, and what is new. */
final class TableSpeech {
    private final Region table;
    private final Session session;
    private final PlaceHand places;
    private final TableHolds holds;
    private final TableVoice voice = new TableVoice();
    /** What was told last at the foot of the table, until a key is pressed. */
    private String news = "";

    TableSpeech(Region table, Session session, PlaceHand places, TableHolds holds) {
        this.table = table;
        this.session = session;
        this.places = places;
        this.holds = holds;
    }

    /** To be put on the table. */
    List<Region> items() {
        return voice.items();
    }

    /** Where the keys seem to be. */
    Node item() {
        return voice.item();
    }

    /** A key was pressed: what was told is heard. */
    void heard() {
        news = "";
    }

    /** Takes up what is told now and was not before. */
    void follow(Desk before, Desk now) {
        if (before != null && !now.notice().equals(before.notice())) {
            news = now.notice().map(n -> now.words().of(n.key(), n.values())).orElse("");
        }
        if (before != null && before.trial().isPresent()) {
            news = session.kept().map(k -> k.words(now)).orElse(news);
        }
    }

    void speak(Optional<MarkHand> hand) {
        String words = CuttingTableWords.spoken(
                session.desk(), news, places.asks(), places.place(), hand.flatMap(MarkHand::tool), holds.pointed());
        table.setAccessibleText(words);
        if (voice.say(words) && table.isFocused()) {
            table.notifyAccessibleAttributeChanged(AccessibleAttribute.FOCUS_ITEM);
        }
    }
}
