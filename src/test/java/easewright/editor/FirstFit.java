package easewright.editor;

import easewright.draft.SampleBodies;
import easewright.draft.Samples;
import easewright.draft.SkirtDraft;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;

/**
 * Plays the walk of {@code docs/first-fit.md} in a real window and takes its pictures; {@code docs/first-fit/pictures}
 * runs it. Writes the bare drawing to start from, and the changed one, into the same folder.
 */
public final class FirstFit extends Director {
    private static final double WAIST = 755;
    static final double HIP = 1015;
    static final double WISH = 60;

    /** Starts it; a class of its own, because a main class that is an application wants JavaFX as modules. */
    static final class Run {
        private Run() {}

        public static void main(String[] args) {
            direct(FirstFit.class, args);
        }
    }

    @Override
    void play() throws Exception {
        Path bare = folder().resolve("skirt.svg");
        Files.writeString(bare, bareSkirt());
        act(() -> {
            stage().setWidth(1180);
            stage().setHeight(740);
            app.files().open(bare);
        });
        rest();
        press("#step-scale");
        press("#view-all");
        picture("1-opened");
        press("#step-suggested");
        until("#suggest-accept");
        picture("2-suggested");
        press("#suggest-accept");
        press("#step-levels");
        picture("3-levels");
        press("#mark-next");
        act(() -> {
            var session = app.session();
            session.desk().pattern().levels().forEach(level -> {
                double body = level.name().equals("hip") ? HIP : WAIST;
                session.setBody(level, OptionalDouble.of(body), level.name());
            });
            session.setWish("hip", OptionalDouble.of(WISH));
            session.chooseLevel("hip");
        });
        act(() -> find("#amount").requestFocus());
        picture("4-ease");
        act(() -> {
            double missing = app.session().desk().shownReading().sheet().lines().stream()
                    .filter(l -> l.level().name().equals("hip"))
                    .findFirst()
                    .orElseThrow()
                    .missing()
                    .orElseThrow();
            app.session().want(app.session().desk().wanted().orElseThrow().withAmount(missing));
        });
        picture("5-trial");
        press("#page-size");
        picture("6-size-up");
        press("#page-ease");
        press("#keep");
        press("#page-changes");
        picture("7-changes");
        Path wider = folder().resolve("skirt-wider.svg");
        Files.deleteIfExists(wider);
        act(() -> app.files().save(wider));
        rest();
    }

    /** The sample skirt's pieces for its own wearer, without any marks. */
    static String bareSkirt() throws Exception {
        return Samples.svg(new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft())
                .replaceFirst("(?s)\\s*<metadata>.*</metadata>", "");
    }
}
