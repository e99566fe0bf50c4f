package easewright.editor.model;

import easewright.draft.Samples;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;

/** A nest of skirts of three sizes on the table, one of them at work at the hip. */
abstract class NestAtWork {
    static final List<String> SIZES = List.of("10", "12", "14");

    final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openTheNest() throws Exception {
        open(Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8));
    }

    void open(byte[] svg) throws Exception {
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "nest.svg"), Optional.empty(), "nest.svg")));
        session.chooseLevel("hip");
    }

    void want(UnaryOperator<Wanted> step) {
        session.want(step.apply(session.desk().wanted().orElseThrow()));
    }

    void also(String... sizes) {
        want(w -> w.withAlsoIn(Set.of(sizes)));
    }

    static double hip(Pattern pattern, String size) {
        return Measures.of(pattern).girths().stream()
                .filter(g -> g.level().name().equals("hip") && g.size().equals(Optional.of(size)))
                .mapToDouble(Girth::finished)
                .findFirst()
                .orElseThrow();
    }

    byte[] written() throws Exception {
        return session.desk().file().orElseThrow().svg().write(session.desk().pattern(), "out.svg");
    }

    static UnaryOperator<Wanted> way(String method, Map<String, List<String>> texts) {
        return w -> w.withOther(Optional.of(new OtherWay(method, texts)));
    }
}
