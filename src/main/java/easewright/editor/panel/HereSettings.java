package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Hold;
import easewright.editor.model.HowWords;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * How the change is made: one line that tells it in words, and behind it the settings, folded away. They come by
 * themselves where one of them needs an answer, and go again when what needed it is done.
 */
final class HereSettings extends VBox {
    private final Session session;
    private final Runnable folder;
    private final FoldLine line = new FoldLine();
    private final Label wayTitle = new Label();
    private final WayChoice way;
    private final SeamSettings seams;
    private final SideChoice sides;
    private final WayFormView form;
    /** Short choices, on one line where they find room. */
    private final FlowPane choices;

    private final FoldedBox fold = new FoldedBox(8);
    /** Opened by hand, for as long as the window is open. */
    private boolean opened;
    /** Opened because something in it was needed. */
    private boolean led;
    /** What was needed last; empty for nothing. */
    private String needed = "";

    private Pattern pattern;
    private List<Object> told = List.of();

    /**
     * @param changer alters the wish
     * @param folder  called when the settings were folded away or come back
     */
    HereSettings(Session session, Consumer<UnaryOperator<Wanted>> changer, Runnable folder) {
        super(8);
        this.session = session;
        this.folder = folder;
        way = new WayChoice(changer);
        seams = new SeamSettings(changer);
        sides = new SideChoice(changer);
        form = new WayFormView(session, changer);
        choices = new FlowPane(12, 8, seams.taper(), sides);
        line.setId("here-how");
        line.setOnAction(e -> unfold(line.isSelected()));
        wayTitle.setMinWidth(SeamSettings.LEAD);
        HBox.setHgrow(way, Priority.ALWAYS);
        HBox which = new HBox(8, wayTitle, way);
        which.setAlignment(Pos.CENTER_LEFT);
        which.setMinHeight(USE_PREF_SIZE);
        fold.setId("here-settings");
        fold.hold(which, seams, form, choices);
        getChildren().setAll(line, fold);
    }

    private void unfold(boolean open) {
        opened = open;
        led = false;
        folder.run();
    }

    /** Puts all its fields into the window, so that a text can be put back into one that is folded away. */
    void fill() {
        fold.fill();
    }

    /** Whether the settings are there to be seen. */
    boolean isUnfolded() {
        return opened || led;
    }

    /** Whether something in it has to be answered before there is a change. */
    boolean isLed() {
        return led;
    }

    /**
     * Looks whether something in it is needed, which opens it. A form that was opened so stays open while more may be
     * chosen in it.
     */
    void follow(Desk desk, Wanted wanted) {
        String now = need(desk, wanted);
        if (!now.equals(needed)) {
            needed = now;
            led = !now.isEmpty() || led && !wanted.atSeams() && wanted.isBegun();
        }
    }

    private String need(Desk desk, Wanted wanted) {
        if (session.picking().isAsking()) {
            return "picking";
        }
        String missing = wanted.other()
                .filter(o -> !o.missing().isEmpty())
                .map(o -> o.method() + " " + o.missing().get(0).key())
                .orElse("");
        if (!missing.isEmpty()) {
            return missing;
        }
        if (wanted.atSeams() && desk.holds().isEmpty()) {
            return "seam";
        }
        // Where no smaller amount would do, it is the settings that have to be others.
        return desk.refusedTrial()
                .filter(r -> r.largest(desk.words()).isEmpty())
                .map(r -> "refused " + r.refusal().code())
                .orElse("");
    }

    void show(Desk desk, Wanted wanted) {
        boolean open = isUnfolded();
        if (open) {
            fold.fill();
        }
        Parts.present(fold, open);
        tell(desk, wanted, open);
        way.show(desk, wanted);
        Parts.present(seams, wanted.atSeams());
        Parts.present(seams.taper(), wanted.atSeams());
        if (wanted.atSeams()) {
            seams.show(desk, wanted);
        }
        form.show(desk);
        sides.show(wanted);
        // In a form the words before its rows are longer, and all stand in one column.
        double lead = wanted.atSeams() ? SeamSettings.LEAD : FieldView.LEAD;
        wayTitle.setMinWidth(lead);
        sides.lead(wanted.atSeams() ? USE_PREF_SIZE : lead);
        Parts.present(sides, wanted.maySided());
        Parts.present(choices, wanted.atSeams() || wanted.maySided());
    }

    /** While a seam is pulled nothing of this changes. */
    private void tell(Desk desk, Wanted wanted, boolean open) {
        List<EdgeRef> edges = desk.holds().stream().map(Hold::edge).distinct().toList();
        List<Object> now = List.of(
                wanted.withAmount(0), edges, open, desk.unit(), desk.trial().isPresent());
        if (desk.pattern() == pattern && now.equals(told)) {
            return;
        }
        pattern = desk.pattern();
        told = now;
        // Beside what can be seen it is not told as well.
        line.setText(open ? desk.words().of("editor.here.how.open") : HowWords.line(desk, wanted));
        line.unfolded(open);
        String press = desk.words().of(open ? "editor.here.how.hide" : "editor.here.how.show");
        Hints.on(line, HowWords.whole(desk, wanted) + "\n" + press);
    }

    void words(Words words) {
        sides.words(words);
        wayTitle.setText(words.of("editor.way.title"));
    }
}
