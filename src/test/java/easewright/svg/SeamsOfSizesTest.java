package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A seam that is sewn in every size, by the names of its pieces, where a size has been changed on one side only. */
class SeamsOfSizesTest {
    private static Pattern onTheRight(Pattern nest, String size, double amount) throws Exception {
        Scope scope = new Scope(Optional.of(size), Side.RIGHT);
        return Within.of(scope, SeamChange.at("waist", amount)).apply(nest).pattern();
    }

    /** The waistband of that size is another seam then, of the same name; nothing is lost in the file. */
    @Test
    void theyAllComeBackFromTheFile() throws Exception {
        SvgFile file = SvgFile.read(Path.of("sample-pieces/skirt-sizes.svg"));
        Pattern changed = onTheRight(onTheRight(file.pattern(), "10", 12), "14", -8);
        SvgFile again = SvgFile.read(file.write(changed), "again.svg");
        assertThat(again.findings()).isEmpty();
        assertThat(again.pattern().mates()).isEqualTo(changed.mates());
        assertThat(Measures.of(again.pattern()).mates())
                .extracting(MateWalk::size, w -> w.mate().name())
                .isEqualTo(Measures.of(changed).mates().stream()
                        .map(w -> tuple(w.size(), w.mate().name()))
                        .toList());
    }

    /** Within a size a name that comes again is a fault, as where there are no sizes. */
    @Test
    void inOneSizeANameComesOnce() throws Exception {
        SvgFile file = SvgFile.read(Path.of("sample-pieces/skirt-sizes.svg"));
        String text = new String(file.bytes(), StandardCharsets.UTF_8);
        String twice = text.replace(
                "</marks>",
                "<mate name='side seam'><first piece='skirt-front-12' edge='side'/>"
                        + "<second piece='skirt-back-12' edge='waist'/></mate></marks>");
        SvgFile read = SvgFile.read(twice.getBytes(StandardCharsets.UTF_8), "twice.svg");
        assertThat(read.findings()).extracting(Finding::code).containsExactly("mark-twice");
        assertThat(read.pattern().mates()).isEqualTo(file.pattern().mates());
    }
}
