package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.EaseRow;
import easewright.editor.model.EaseScale;
import easewright.editor.model.Session;
import easewright.editor.model.Trial;
import easewright.text.Words;
import java.util.Map;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;

/** What is away from the wish is brought to it, or the wish to what it has become on purpose. */
final class WishOffer extends HBox {
    /** What changes by less is as it was, mm: no tape shows it. */
    private static final double SAME = 0.05;

    private final Session session;
    private final Runnable given;
    private final Runnable adopted;
    private final Button give = new Button();
    private final Button adopt = new Button();
    /** Nothing that is disabled shows a hint of its own. */
    private final Tooltip held = new Tooltip();

    private EaseRow row;

    /**
     * @param given   where the keys go from here once it is given: what was pressed is there no more
     * @param adopted the same once the wish is another
     */
    WishOffer(String level, Session session, Runnable given, Runnable adopted) {
        super(6);
        this.given = given;
        this.adopted = adopted;
        this.session = session;
        adopt.setId("adopt-" + level);
        for (Button each : new Button[] {give, adopt}) {
            each.setMinWidth(USE_PREF_SIZE);
            each.getStyleClass().add("small");
            getChildren().add(each);
        }
        give.setId("give-" + level);
        give.setOnAction(e -> give());
        adopt.setOnAction(e -> adopt());
        setAlignment(Pos.CENTER_LEFT);
        setMinWidth(USE_PREF_SIZE);
    }

    /** Whether it differs from the wish because something is tried, or is more than was wished: nothing is missing. */
    static boolean isOnPurpose(EaseRow row, Desk desk) {
        return row.standing() == EaseRow.Standing.AWAY
                && (row.missing().orElse(0) < 0 || isWanted(desk) && isChanged(row.scale()));
    }

    /** Whether an amount is tried, and not what is offered to make seams fit. */
    private static boolean isWanted(Desk desk) {
        return desk.shownTrial().filter(t -> t.offer().isEmpty()).isPresent();
    }

    private static boolean isChanged(EaseScale scale) {
        return scale.now().isPresent() != scale.standing().isPresent()
                || Math.abs(scale.now().orElse(0) - scale.standing().orElse(0)) > SAME;
    }

    void show(EaseRow is, Desk desk) {
        row = is;
        Words words = desk.words();
        double missing = row.missing().orElse(0);
        give.setText(words.of(
                missing < 0 ? "editor.ease.take-in" : "editor.ease.give", Map.of("amount", Math.abs(missing))));
        give.setAccessibleText(words.of(
                "editor.ease.give.name",
                Map.of("level", row.name(), "give", give.getText(), "verdict", row.verdict())));
        boolean tried = desk.trial().isPresent();
        Hints.on(give, words.of(tried ? "editor.ease.give.held" : "editor.ease.give.hint"));
        // While something else is tried it waits in its place, and says for what.
        Parts.present(give, row.standing() == EaseRow.Standing.AWAY && !(isWanted(desk) && isChanged(row.scale())));
        give.setDisable(tried);
        held.setText(words.of("editor.ease.give.held"));
        if (tried && give.isVisible()) {
            Tooltip.install(this, held);
        } else {
            Tooltip.uninstall(this, held);
        }
        adopt.setText(words.of("editor.ease.adopt", Map.of("ease", row.ease())));
        adopt.setAccessibleText(
                words.of("editor.ease.adopt.name", Map.of("level", row.name(), "adopt", adopt.getText())));
        Hints.on(adopt, words.of("editor.ease.adopt.hint"));
        boolean offered = desk.shownTrial().flatMap(Trial.Shown::offer).isPresent();
        Parts.present(adopt, isOnPurpose(row, desk) && !(offered && isChanged(row.scale())));
    }

    private void give() {
        session.chooseLevel(row.level().name());
        session.desk().reading().sheet().lines().stream()
                .filter(l -> l.name().equals(row.name()))
                .findFirst()
                .filter(l -> l.missing().isPresent())
                .ifPresent(l -> session.desk()
                        .wanted()
                        .ifPresent(w -> session.want(w.withAmount(l.missing().getAsDouble()))));
        given.run();
    }

    /** As it is shown, not with the hair's breadth beside it. */
    private void adopt() {
        row.scale()
                .now()
                .ifPresent(mm -> session.setWish(
                        row.level().name(),
                        OptionalDouble.of(session.desk().words().shown(mm))));
        adopted.run();
    }
}
