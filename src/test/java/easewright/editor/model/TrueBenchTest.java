package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

class TrueBenchTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private static List<String> sizes(TrueBench bench) {
        return bench.work().stream()
                .flatMap(work -> work.offers().stream())
                .map(offer -> offer.size().orElseThrow())
                .toList();
    }

    @Test
    void offersAreForTheSizeAtWork() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        session.open(Opened.of(new OpenFile(SvgFile.read(nest), Optional.of(nest), "skirt-sizes.svg")));
        Pattern pattern = session.desk().pattern();
        session.edit(pattern.withMates(pattern.mates().stream()
                .map(m -> m.name().equals("waistband") ? new Mate(m.name(), m.first(), m.second(), 30) : m)
                .toList()));
        TrueBench bench = WaitForAsyncUtils.waitForAsyncFx(5000, () -> new TrueBench(session));
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> sizes(bench).contains("10"));
        assertThat(sizes(bench)).containsOnly("10");
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> session.chooseSize("14"));
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> sizes(bench).contains("14"));
        assertThat(sizes(bench)).containsOnly("14");
    }
}
