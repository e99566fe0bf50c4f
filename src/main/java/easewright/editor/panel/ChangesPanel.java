package easewright.editor.panel;

import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.editor.model.Course;
import easewright.editor.model.Desk;
import easewright.editor.model.Leaning;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.VBox;

/** What has been done to the pattern, oldest first, in plain words; each change can be altered where it stands. */
public final class ChangesPanel extends SheetPage {
    private final VBox list = new VBox();
    private final List<ChangeRowView> rows = new ArrayList<>();
    private final Label title = new Label();
    private final EventHandler<InputEvent> overtaking = this::overtake;
    private final OnceSeen switching = new OnceSeen();
    private Course shown = new Course(List.of(), List.of());

    public ChangesPanel(Session session) {
        super(session, "changes");
        setHbarPolicy(ScrollBarPolicy.NEVER);
        title.getStyleClass().add("page-intro");
        title.setWrapText(true);
        begin(new VBox(12, title, list));
        sceneProperty().addListener((o, was, is) -> {
            if (was != null) {
                was.removeEventFilter(InputEvent.ANY, overtaking);
            }
            if (is != null) {
                is.addEventFilter(InputEvent.ANY, overtaking);
            }
        });
    }

    /** What is pressed anywhere else, to undo or to save, comes after what was switched before it. */
    private void overtake(InputEvent press) {
        boolean key = press instanceof KeyEvent k && k.getEventType() == KeyEvent.KEY_PRESSED && k.isShortcutDown();
        boolean mouse = press.getEventType() == MouseEvent.MOUSE_PRESSED
                && !list.contains(
                        list.screenToLocal(((MouseEvent) press).getScreenX(), ((MouseEvent) press).getScreenY()));
        if (key || mouse) {
            switching.catchUp();
        }
    }

    @Override
    void show(Desk desk) {
        Words words = desk.words();
        Course course = Course.of(desk);
        title.setText(words.of(course.lines().isEmpty() ? "editor.changes.none" : "editor.changes.intro"));
        if (!course.equals(shown)) {
            shown = course;
            rows(words);
        }
    }

    /** Rows anew; whoever works by keyboard keeps the place. */
    private void rows(Words words) {
        String place = place();
        rows.clear();
        for (int i = 0; i < shown.lines().size(); i++) {
            rows.add(new ChangeRowView(i, shown.lines().get(i), words, new Hand()));
        }
        list.getChildren().setAll(rows);
        if (place.startsWith("change-")) {
            Node same = lookup("#" + place);
            Node next = same == null ? near(Integer.parseInt(place.substring(place.lastIndexOf('-') + 1))) : same;
            next.requestFocus();
        }
    }

    /** What has the keys. */
    private String place() {
        Node focused = getScene() == null ? null : getScene().getFocusOwner();
        return focused == null || focused.getId() == null ? "" : focused.getId();
    }

    /** The keys stay with the change that was moved up, or made room for that one. */
    private void follow(String place, int risen) {
        int number = place.lastIndexOf('-') + 1;
        if (place.startsWith("change-")
                && List.of(risen, risen - 1).contains(Integer.valueOf(place.substring(number)))) {
            int now = place.endsWith("-" + risen) ? risen - 1 : risen;
            Node same = lookup("#" + place.substring(0, number) + now);
            Node there = same == null || same.isDisabled() ? lookup("#change-on-" + now) : same;
            there.requestFocus();
        }
    }

    /** Asks for the list as wanted; where that cannot be, the line worked on says why and all stays as it was. */
    private void recast(int worked, List<Step> wanted) {
        rows.forEach(ChangeRowView::forgetRefused);
        String why = why(worked, wanted);
        if (!why.isEmpty()) {
            rows.get(worked).complain(why);
        }
    }

    /** Asks for the list as wanted, and gives the reason why it cannot be, or nothing. */
    private String why(int worked, List<Step> wanted) {
        rows.forEach(row -> row.complain(""));
        try {
            session.recast(wanted);
            return "";
        } catch (StepRefused refused) {
            Desk desk = session.desk();
            Optional<Leaning> leaning = shown.leaning(wanted, worked, desk);
            leaning.ifPresent(l -> rows.get(worked).offer(l.press(desk.words()), () -> letGo(worked, l)));
            return leaning.map(l -> l.words(desk)).orElseGet(() -> shown.refused(refused, wanted, worked, desk));
        }
    }

    /** A change by nothing is none: what is most likely meant is to be without it, and its amount is not lost so. */
    private String nothing(int worked) {
        Words words = session.desk().words();
        rows.forEach(row -> row.complain(""));
        rows.get(worked).offer(words.of("editor.changes.nothing.off"), () -> {
            recast(worked, shown.switched(worked, false));
            near(worked).requestFocus();
        });
        return words.of("editor.changes.nothing");
    }

    /** Makes the list as it was wanted, without the later changes that lean on the one worked on. */
    private void letGo(int worked, Leaning leaning) {
        recast(worked, leaning.steps());
        near(worked).requestFocus();
    }

    private Node near(int worked) {
        Node near = lookup("#change-on-" + Math.min(worked, rows.size() - 1));
        return near == null ? this : near;
    }

    private final class Hand implements ChangeRowView.Asked {
        @Override
        public void switched(int step, boolean on) {
            switching.catchUp();
            rows.get(step).working(on, session.desk().words().of("editor.changes.working"));
            Course asked = shown;
            switching.ask(() -> {
                // A number in another list is that of another change.
                if (shown.equals(asked)) {
                    recast(step, asked.switched(step, on));
                }
            });
        }

        @Override
        public String amount(int step, double mm) {
            switching.catchUp();
            ChangeRowView own = rows.get(step);
            rows.stream().filter(row -> row != own).forEach(ChangeRowView::forgetRefused);
            return session.desk().words().shown(mm) == 0 ? nothing(step) : why(step, shown.withAmount(step, mm));
        }

        @Override
        public void rise(int step) {
            switching.catchUp();
            List<Step> before = shown.steps();
            String place = place();
            recast(step, shown.risen(step));
            if (!shown.steps().equals(before)) {
                follow(place, step);
            }
        }

        @Override
        public void remove(int step) {
            switching.catchUp();
            recast(step, shown.without(step));
        }
    }
}
