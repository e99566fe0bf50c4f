package easewright.editor.panel;

import easewright.editor.file.InHand;
import easewright.editor.mark.HalfMarked;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.model.Begun;
import easewright.editor.model.Picking;
import easewright.editor.model.Session;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.Scene;
import javafx.scene.control.Button;

/** What is begun in the window, and set up again there after a crash: typed, marked, cut. */
public final class BegunHere implements InHand {
    private static final String MARKS = "marks";

    private final Scene scene;
    private final Session session;
    private final Marker marker;
    private final Supplier<SheetPanel> sheet;
    private final HalfTyped fields;
    private final PrintHand print;

    /**
     * @param sheet beside the table, which is made when it is first asked for
     * @param print what is typed in the window for prints
     */
    public BegunHere(Scene scene, Session session, Marker marker, Supplier<SheetPanel> sheet, PrintHand print) {
        this.scene = scene;
        this.session = session;
        this.marker = marker;
        this.sheet = sheet;
        this.print = print;
        this.fields = new HalfTyped(scene);
    }

    /**
     * @param changed something was begun, gone on with or let go of otherwise than by keys
     */
    public void follow(Runnable changed) {
        marker.stateProperty().addListener((o, before, now) -> {
            if (!HalfMarked.in(before).equals(HalfMarked.in(now))) {
                changed.run();
            }
        });
        session.picking().askProperty().addListener(o -> changed.run());
        session.deskProperty().addListener((o, before, now) -> {
            // What was typed for one garment has nothing to do with another.
            if (now.isOtherWork(before)) {
                fields.forget();
                print.forget();
            }
        });
    }

    @Override
    public Begun begun() {
        SheetPanel beside = sheet.get();
        List<Begun.Typed> typed = new ArrayList<>(fields.in(beside::pageOf));
        typed.addAll(print.typed());
        boolean there = typed.stream().anyMatch(t -> t.page().equals(MARKS));
        Optional<Begun.Marking> marking = Optional.of(HalfMarked.in(marker.state()))
                .filter(m -> there || m.isHalfDone() || beside.page().equals(MARKS));
        Optional<Begun.Cut> cut = session.picking()
                .askProperty()
                .get()
                .flatMap(ask -> ask.from().map(from -> new Begun.Cut(ask.field(), from)));
        return new Begun(beside.page(), typed, marking, cut);
    }

    @Override
    public void take() {
        if (scene.getFocusOwner() instanceof CheckedField field && !field.isWaiting()) {
            field.commit();
        }
    }

    @Override
    public Begun again(Begun before) {
        if (before.equals(Begun.NOTHING)) {
            return before;
        }
        SheetPanel beside = sheet.get();
        print.again(before.forPrint());
        List<Begun.Typed> lost = typedAgain(before, beside);
        beside.turnTo(before.page());
        Optional<Begun.Marking> unmarked = before.marking().filter(m -> !marker.resume(m));
        Optional<Begun.Cut> uncut = before.cut().filter(cut -> !cutAgain(cut));
        fields.takeKeys(before.typed());
        return new Begun(before.page(), lost, unmarked, uncut);
    }

    /** A page has its fields once it is open, and so has each part of marking. */
    private List<Begun.Typed> typedAgain(Begun before, SheetPanel beside) {
        Set<String> pages = new LinkedHashSet<>();
        List<Begun.Typed> lost = new ArrayList<>(before.typed());
        lost.removeAll(before.forPrint());
        lost.forEach(typed -> pages.add(typed.page()));
        if (!lost.isEmpty()) {
            beside.fill();
        }
        for (String page : pages) {
            beside.turnTo(page);
            if (page.equals(MARKS)) {
                before.marking().ifPresent(marker::resume);
            }
            again(page, lost);
        }
        for (MarkState.Step step : MarkState.Step.values()) {
            if (pages.contains(MARKS) && lost.stream().anyMatch(t -> t.page().equals(MARKS))) {
                beside.turnTo(MARKS);
                marker.go(step);
                again(MARKS, lost);
            }
        }
        return lost;
    }

    private void again(String page, List<Begun.Typed> lost) {
        List<Begun.Typed> here =
                lost.stream().filter(t -> t.page().equals(page)).toList();
        lost.removeAll(here);
        lost.addAll(fields.again(here, session.desk().words().of("editor.field.waiting")));
    }

    /** By what asked for it, which then asks for the other end. */
    private boolean cutAgain(Begun.Cut cut) {
        if (scene.lookup("#pick-" + cut.field()) instanceof Button pick) {
            pick.fire();
            session.picking().give(cut.from());
        }
        return session.picking().askProperty().get().flatMap(Picking.Ask::from).equals(Optional.of(cut.from()));
    }
}
