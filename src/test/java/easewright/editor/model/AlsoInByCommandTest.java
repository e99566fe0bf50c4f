package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Taper;
import easewright.command.Commands;
import easewright.pattern.EdgeRef;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One change in several sizes of a nest at once gives in the window what the command gives, to the last byte. */
class AlsoInByCommandTest extends NestAtWork {
    @TempDir
    Path folder;

    /** What the command makes of the file on the table. */
    private byte[] commanded(List<String> options) throws Exception {
        Path in = folder.resolve("nest.svg");
        Path out = folder.resolve("out.svg");
        Files.write(in, session.desk().file().orElseThrow().svg().bytes());
        Files.deleteIfExists(out);
        List<String> words = new ArrayList<>(List.of("change", in.toString(), "-o", out.toString()));
        words.addAll(options);
        StringWriter said = new StringWriter();
        int code = Commands.run(new PrintWriter(said), new PrintWriter(said), words.toArray(String[]::new));
        assertThat(code).as("%s%n%s", words, said).isLessThan(2);
        return Files.readAllBytes(out);
    }

    private record Case(String level, UnaryOperator<Wanted> wanted, String... options) {}

    /** Ways as they stand in the form while size 10 is at work, and as they are asked for by command. */
    private static List<Case> cases() {
        return List.of(
                new Case("hip", w -> w, "--carry"),
                new Case("hip", w -> w.withCarry(false).withTaper(Taper.STRAIGHT), "--taper", "straight"),
                new Case("hip", w -> w.withEven(true), "--carry", "--set", "even=yes"),
                new Case(
                        "hip",
                        w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))),
                        "--carry",
                        "--edge",
                        "back/side"),
                new Case(
                        "hip",
                        w -> w.withCarry(false)
                                .withBeyond(Map.of("keep", List.of("waist"), "fixed", List.of("Front 10/side@500mm"))),
                        "--keep",
                        "waist",
                        "--keep",
                        "front/side@500mm"),
                new Case(
                        "hip",
                        way("centre", Map.of("edge", List.of("skirt-back-10/centre back"))),
                        "--method",
                        "centre",
                        "--edge",
                        "back/centre back"),
                new Case(
                        "waist",
                        way("dart", Map.of("dart", List.of("skirt-back-10/back dart 2"))),
                        "--method",
                        "dart",
                        "--dart",
                        "back/back dart 2"),
                new Case(
                        "hip",
                        way("lengthen", Map.of("piece", List.of("skirt-back-10", "skirt-front-10"))),
                        "--method",
                        "lengthen",
                        "--piece",
                        "back",
                        "--piece",
                        "front"),
                new Case(
                        "hip",
                        way("slash", Map.of("slash", List.of("Front 10/hem@90mm > Front 10/waist@60mm"))),
                        "--method",
                        "slash",
                        "--slash",
                        "front/hem@90mm > front/waist@60mm"));
    }

    private byte[] inTheWindow(Case each, double amount, List<String> sizes) throws Exception {
        session.chooseLevel(each.level());
        session.chooseSize("10");
        want(each.wanted());
        also(sizes.subList(1, sizes.size()).toArray(String[]::new));
        want(w -> w.withAmount(amount));
        assertThat(session.desk().refusedTrial().map(r -> r.words(session.desk().words())))
                .as(each.toString())
                .isEmpty();
        assertThat(session.desk().shownTrial().orElseThrow().sizes()).isEqualTo(sizes);
        session.keep();
        return written();
    }

    private static List<String> options(Case each, double amount, List<String> sizes) {
        List<String> options = new ArrayList<>(List.of(each.options()));
        options.addAll(List.of("--at", each.level(), "--by", amount + "mm", "--sizes", String.join(",", sizes)));
        return options;
    }

    @Test
    void everyWayGivesWhatTheCommandGivesToTheLastByte() throws Exception {
        byte[] sample = session.desk().file().orElseThrow().svg().bytes();
        for (Case each : cases()) {
            open(sample);
            byte[] expected = commanded(options(each, 12, SIZES));
            assertThat(new String(inTheWindow(each, 12, SIZES), StandardCharsets.UTF_8))
                    .as(List.of(each.options()).toString())
                    .isEqualTo(new String(expected, StandardCharsets.UTF_8));
        }
    }

    /** On nests whose sizes were first made unlike each other. */
    @Test
    void soItIsOnOtherNestsByOtherAmountsAndInSomeSizes() throws Exception {
        Random random = new Random(20261126);
        byte[] sample = session.desk().file().orElseThrow().svg().bytes();
        for (int i = 0; i < 8; i++) {
            open(sample);
            for (String size : SIZES) {
                session.chooseSize(size);
                want(w -> w.withAmount(random.nextInt(-150, 300) / 10.0));
                session.keep();
            }
            open(written());
            Case each = cases().get(random.nextInt(cases().size()));
            List<String> sizes = random.nextBoolean() ? List.of("10", "14") : List.of("10", "12");
            double amount = random.nextInt(5, 160) / 10.0;
            byte[] expected = commanded(options(each, amount, sizes));
            assertThat(inTheWindow(each, amount, sizes))
                    .as("%s %s %s", List.of(each.options()), amount, sizes)
                    .isEqualTo(expected);
        }
    }
}
