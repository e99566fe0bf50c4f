package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.pattern.LevelKind;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** What is offered of levels elsewhere is looked for beside the window's work. */
class LevelsElsewhereTest {
    private final Session session = new Session(LengthUnit.CM, false);
    private final AtomicInteger found = new AtomicInteger();
    private final LevelsElsewhere elsewhere = new LevelsElsewhere(found::incrementAndGet);

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private boolean look(String level) {
        return WaitForAsyncUtils.waitForAsyncFx(5000, () -> {
            elsewhere.look(session.desk());
            return elsewhere.of(level).isOffered();
        });
    }

    private boolean offered(String level) {
        return WaitForAsyncUtils.waitForAsyncFx(5000, () -> elsewhere.of(level).isOffered());
    }

    private void open(Path file) throws Exception {
        session.open(Opened.of(new OpenFile(
                SvgFile.read(file), Optional.of(file), file.getFileName().toString())));
    }

    @Test
    void ofANestItIsFoundAMomentLater() throws Exception {
        open(Path.of("sample-pieces/skirt-sizes.svg"));
        String piece = session.desk().pattern().pieces().get(0).id();
        assertThat(look("knee")).as("not known yet").isFalse();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> found.get() == 1);
        assertThat(offered("hip")).as("it lies alike in all sizes").isFalse();

        session.edit(LevelEdits.add(session.desk().pattern(), "knee", LevelKind.KNEE));
        session.edit(LevelEdits.place(
                session.desk().pattern(),
                piece,
                "knee",
                session.desk()
                        .pattern()
                        .piece(piece)
                        .orElseThrow()
                        .outline()
                        .box()
                        .centre()));
        look("knee");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> offered("knee"));
        assertThat(found.get()).isEqualTo(2);
        look("knee");
        assertThat(found.get()).as("the same desk").isEqualTo(2);

        open(Path.of("sample-pieces/skirt-sizes.svg"));
        assertThat(look("knee")).as("other work has none of it").isFalse();
    }

    @Test
    void ofOneSizeItIsKnownAtOnce() throws Exception {
        Sample skirt = Sample.all().get(0);
        session.open(Opened.of(new OpenFile(skirt.read(), Optional.empty(), skirt.fileName())));
        Piece back = session.desk().pattern().piece("skirt-back").orElseThrow();
        session.edit(session.desk().pattern().withPiece(back.withLevels(List.of())));
        look("hip");
        assertThat(elsewhere.of("hip").leftOut().pieces()).containsExactly("Back");
        assertThat(found.get()).isZero();
    }
}
