package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TableTest {
    private static List<String> lines(Table table) {
        StringWriter text = new StringWriter();
        table.print(new PrintWriter(text));
        return text.toString().lines().toList();
    }

    @Test
    void figuresStandByTheirDecimalPoints() {
        assertThat(lines(new Table()
                        .head("", "before", "by")
                        .row("waist", "77", "+2.4")
                        .row("hip", "105.25", "\u22120.12")
                        .row("own", "", "0")))
                .containsExactly(
                        "         before     by",
                        "  waist   77.00  +2.40",
                        "  hip    105.25  \u22120.12",
                        "  own             0.00");
    }

    @Test
    void fractionsStandBelowEachOther() {
        assertThat(lines(new Table().row("a", "24 1/4").row("b", "105").row("c", "\u22125/16")))
                .containsExactly("  a   24 1/4", "  b  105", "  c     \u22125/16");
    }

    @Test
    void wordsThatDoNotFitGoOnBelow() {
        Random random = new Random(17);
        for (int i = 0; i < 200; i++) {
            StringBuilder words = new StringBuilder("word");
            for (int n = random.nextInt(60); n > 0; n--) {
                words.append(' ').append("abcdefghijkl", 0, 1 + random.nextInt(12));
            }
            String left = "--option".repeat(1 + random.nextInt(4));
            List<String> lines = lines(new Table().row(left, words.toString()));
            assertThat(lines).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(Page.WIDTH));
            assertThat(String.join(" ", lines.stream().map(String::strip).toList()))
                    .isEqualTo(left + "  " + words);
        }
    }

    @Test
    void everyLineOfEverySampleFitsTheTerminal() {
        for (String sample : List.of("skirt", "bodice", "trousers", "knit-top")) {
            String file = "sample-pieces/" + sample + ".svg";
            String level = sample.equals("bodice") ? "bust" : "hip";
            for (String unit : List.of("cm", "mm", "inch")) {
                for (List<String> line : List.of(
                        List.of("measure", file, "--unit", unit),
                        List.of("ease", file, "--unit", unit),
                        List.of("check", file, "--unit", unit),
                        List.of("change", file, "--at", level, "--by", "24mm", "--try", "--unit", unit))) {
                    Run run = Run.of(line.toArray());
                    assertThat(run.out().lines())
                            .as(String.join(" ", line))
                            .isNotEmpty()
                            .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(Page.WIDTH))
                            .noneSatisfy(l ->
                                    assertThat(l).containsPattern("(sheet|ease|command|severity|unit)\\.[a-z]|\\{"));
                }
            }
        }
        assertThat(Run.of("methods").out().lines())
                .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(Page.WIDTH));
    }
}
