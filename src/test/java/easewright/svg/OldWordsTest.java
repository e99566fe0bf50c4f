package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words drawn on a piece that became two stay as they are, and it is told that they do. */
class OldWordsTest {
    private static SvgFile skirt() throws Exception {
        String svg = Files.readString(Path.of("sample-pieces", "skirt.svg"));
        SvgFile plain = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "skirt.svg");
        var front = plain.pattern().piece("skirt-front").orElseThrow().outline().box();
        double unit = plain.drawing().scale().mmPerUnitX();
        String words = "<text x=\"%s\" y=\"%s\">cut 1 on fold</text>"
                .formatted(front.centre().x() / unit, front.centre().y() / unit);
        return SvgFile.read(svg.replace("</svg>", words + "</svg>").getBytes(StandardCharsets.UTF_8), "skirt.svg");
    }

    @Test
    void theyAreToldWhenSavingAndFromThenOn() throws Exception {
        SvgFile file = skirt();
        assertThat(file.oldWords(file.pattern())).isEmpty();
        Pattern changed = Within.of(new Scope(Optional.empty(), Side.RIGHT), SeamChange.at("hip", 10))
                .apply(file.pattern())
                .pattern();
        List<Finding> told = file.oldWords(changed);
        assertThat(told).extracting(Finding::piece).contains("Front right");
        assertThat(told)
                .filteredOn(f -> f.piece().equals("Front right"))
                .singleElement()
                .satisfies(
                        f -> assertThat(String.valueOf(f.values().get("words"))).contains("cut 1 on fold"));
        assertThat(told.toString()).as("levels still hold").doesNotContain("hip");
        SvgFile.Written written = file.writing(changed);
        assertThat(written.consequences()).containsAll(told);
        assertThat(new String(written.bytes(), StandardCharsets.UTF_8)).contains(">cut 1 on fold</text>");
        SvgFile again = SvgFile.read(written.bytes(), "again.svg");
        assertThat(again.oldWords(again.pattern())).isEqualTo(told);
    }
}
