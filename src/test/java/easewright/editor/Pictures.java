package easewright.editor;

import easewright.alter.StepRefused;
import easewright.alter.Ways;
import easewright.editor.model.Course;
import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.editor.model.Recasting;
import easewright.editor.model.Sample;
import easewright.editor.model.Wanted;
import easewright.editor.panel.CuttingTable;
import easewright.pattern.Level;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * Takes pictures of the editor for {@code docs/pictures} and for looking at: run with the folder to write to.
 */
public final class Pictures extends Director {
    /** Starts it; a class of its own, because a main class that is an application wants JavaFX as modules. */
    static final class Run {
        private Run() {}

        public static void main(String[] args) {
            direct(Pictures.class, args);
        }
    }

    @Override
    void play() throws Exception {
        size(1280, 800);
        picture("start");
        untrue();
        act(() -> app.files().openSample(Sample.all().get(Integer.getInteger("sample", 0))));
        rest();
        rest();
        measured();
        press("#ask-where");
        press("#feels-pulls");
        press("#sign-seat");
        picture("where");
        press("#ask-where");
        want(w -> w.withAmount(40));
        picture("trial");
        size(1920, 1080);
        act(() -> app.session().setDark(true));
        picture("large-dark");
        act(() -> app.session().setDark(false));
        size(1280, 800);
        if (Integer.getInteger("sample", 0) == 0) {
            cut();
        }
        changes();
        for (String page : new String[] {"rings", "size", "notes", "changes"}) {
            press("#page-" + page);
            picture(page);
        }
    }

    /** A place that is not yet true, on a drawing that has some. */
    private void untrue() throws InterruptedException {
        act(() -> app.files().open(Path.of("src/test/resources/command/untrue-bodice.svg")));
        rest();
        rest();
        press("#page-true");
        rest();
        press("#true-show-0");
        picture("true");
        press("#page-ease");
    }

    /** Body girths that leave 3 cm of ease, and a wish at the last level. */
    private void measured() throws InterruptedException {
        act(() -> {
            Desk desk = app.session().desk();
            for (Level level : desk.pattern().levels()) {
                double finished = desk.reading()
                        .measures()
                        .girth(level.name())
                        .orElseThrow()
                        .finished();
                app.session().setBody(level, OptionalDouble.of(Math.round(finished / 10 - 3) * 10), level.name());
            }
            Level last = desk.pattern().levels().get(desk.pattern().levels().size() - 1);
            app.session().setWish(last.name(), OptionalDouble.of(70));
            app.session().chooseLevel(last.name());
        });
    }

    private void want(UnaryOperator<Wanted> step) throws InterruptedException {
        act(() -> app.session().want(step.apply(app.session().desk().wanted().orElseThrow())));
    }

    /** Another way, its cut shown on the table. */
    private void cut() throws InterruptedException {
        want(w -> w.withOther(Ways.of("slash").map(OtherWay::of)));
        want(w -> w.withOther(w.other().map(o -> o.with("slash", List.of("Back/hem@50% > Back/waist@50%")))));
        picture("way");
        want(w -> w.withOther(Optional.empty()));
    }

    /** Two changes, the first of them switched off. */
    private void changes() throws InterruptedException {
        act(() -> app.session().keep());
        act(() -> app.session()
                .chooseLevel(app.session().desk().pattern().levels().get(0).name()));
        want(w -> w.withAmount(8));
        act(() -> {
            app.session().keep();
            try {
                Recasting.on(app.session(), Course.of(app.session().desk()).switched(0, false));
            } catch (StepRefused refused) {
                throw new IllegalStateException(refused);
            }
        });
    }

    @Override
    void size(double width, double height) throws InterruptedException {
        super.size(width, height);
        act(() -> {
            if (stage().getScene().lookup("#table") instanceof CuttingTable table) {
                table.fit();
            }
        });
    }
}
