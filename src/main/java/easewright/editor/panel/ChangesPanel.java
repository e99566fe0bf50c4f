package easewright.editor.panel;

import easewright.alter.Step;
import easewright.editor.file.Background;
import easewright.editor.model.Course;
import easewright.editor.model.Desk;
import easewright.editor.model.Leaning;
import easewright.editor.model.Recast;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What has been done to the pattern, oldest first, in plain words; each change can be altered where it stands. */
public final class ChangesPanel extends SheetPage {
    private final VBox list = new VBox();
    private final List<ChangeRowView> rows = new ArrayList<>();
    private final Label title = new Label();
    private final Background background;
    /** What was asked for and is not made yet; the first of it is being made. */
    private final Deque<ChangeWish> wishes = new ArrayDeque<>();

    private Course shown = new Course(List.of(), List.of());

    public ChangesPanel(Session session, Background background) {
        super(session, "changes");
        this.background = background;
        setHbarPolicy(ScrollBarPolicy.NEVER);
        title.getStyleClass().add("page-intro");
        title.setWrapText(true);
        begin(new VBox(12, title, list));
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

    /** Asks for something; it is made away from the window's thread, one after the other. */
    private void ask(ChangeWish wish) {
        hush();
        wishes.add(wish);
        if (wishes.size() == 1) {
            next();
        } else {
            mark(shown);
        }
    }

    /** What was refused before has nothing to do with a new wish. */
    private void hush() {
        rows.forEach(ChangeRowView::forgetRefused);
        rows.forEach(row -> row.complain(""));
    }

    private void next() {
        session.making(Optional.empty());
        Desk desk = session.desk();
        Course course = Course.of(desk);
        while (!wishes.isEmpty() && wishes.peek().line(course).isEmpty()) {
            wishes.remove();
        }
        if (!wishes.isEmpty()) {
            ChangeWish wish = wishes.peek();
            int line = wish.line(course).getAsInt();
            List<Step> wanted = wish.steps(course, line);
            mark(course);
            session.making(Optional.of(background.making(
                    () -> Recast.of(desk, course, wanted, line), made -> made(wish, line, made, desk), this::stopped)));
        }
    }

    /** Shows what is still to be made. */
    private void mark(Course course) {
        String working = session.desk().words().of("editor.changes.working");
        for (ChangeWish wish : wishes) {
            row(wish.line(course)).ifPresent(row -> row.working(wish.on(), working));
        }
    }

    private Optional<ChangeRowView> row(OptionalInt line) {
        return line.isPresent() && line.getAsInt() < rows.size()
                ? Optional.of(rows.get(line.getAsInt()))
                : Optional.empty();
    }

    private void made(ChangeWish wish, int line, Recast made, Desk asked) {
        if (session.desk().isOtherWork(asked)) {
            wishes.clear();
        } else if (made.from() == session.desk().pattern()) {
            wishes.remove();
            rows.forEach(row -> row.complain(""));
            made.made().ifPresent(session::edit);
            if (made.made().isPresent()) {
                wish.then().run();
            } else {
                refused(wish, line, made);
            }
        }
        // Of what was done to the pattern meanwhile nothing is lost: then it is made of that.
        next();
    }

    /** The line worked on says why, and all stays as it was. */
    private void refused(ChangeWish wish, int line, Recast made) {
        row(OptionalInt.of(line)).ifPresent(row -> {
            Course of = Course.of(session.desk());
            made.leaning().ifPresent(l -> row.offer(l.press(session.desk().words()), () -> letGo(wish, of, line, l)));
            if (wish.isAmount()) {
                row.refuseAmount(made.why());
            } else {
                row.complain(made.why());
            }
        });
    }

    /** Somebody gave it up: the list shows what is. */
    private void stopped() {
        session.making(Optional.empty());
        wishes.clear();
        rows(session.desk().words());
    }

    /** A change by nothing is none: what is most likely meant is to be without it, and its amount is not lost so. */
    private String nothing(int worked) {
        Words words = session.desk().words();
        hush();
        mark(shown);
        rows.get(worked).offer(words.of("editor.changes.nothing.off"), () -> {
            near(worked).requestFocus();
            ask(ChangeWish.of(shown, worked, false, (course, line) -> course.switched(line, false)));
        });
        return words.of("editor.changes.nothing");
    }

    /**
     * Makes the list as it was wanted, without the later changes that lean on the one worked on. Of a list that becomes
     * another until then, what was wanted is asked for again: other changes may lean on it there.
     */
    private void letGo(ChangeWish wish, Course of, int worked, Leaning leaning) {
        near(worked).requestFocus();
        boolean on = worked < shown.lines().size() && shown.lines().get(worked).on();
        ask(ChangeWish.of(
                        shown,
                        worked,
                        on,
                        (course, line) -> course.equals(of) ? leaning.steps() : wish.steps(course, line))
                .then(() -> near(worked).requestFocus()));
    }

    private Node near(int worked) {
        Node near = lookup("#change-on-" + Math.min(worked, rows.size() - 1));
        return near == null ? this : near;
    }

    private final class Hand implements ChangeRowView.Asked {
        @Override
        public void switched(int step, boolean on) {
            ask(ChangeWish.of(shown, step, on, (course, line) -> course.switched(line, on)));
        }

        @Override
        public String amount(int step, double mm) {
            if (session.desk().words().shown(mm) == 0) {
                return nothing(step);
            }
            boolean on = shown.lines().get(step).on();
            ask(ChangeWish.of(shown, step, on, (course, line) -> course.withAmount(line, mm))
                    .ofAmount());
            return "";
        }

        @Override
        public void rise(int step) {
            String place = place();
            boolean on = shown.lines().get(step).on();
            ask(ChangeWish.of(shown, step, on, Course::risen).then(() -> {
                // Unless the keys have gone elsewhere meanwhile.
                if (place().isEmpty() || place().startsWith("change-")) {
                    follow(place, step);
                }
            }));
        }

        @Override
        public void remove(int step) {
            ask(ChangeWish.of(shown, step, shown.lines().get(step).on(), Course::without));
        }
    }
}
