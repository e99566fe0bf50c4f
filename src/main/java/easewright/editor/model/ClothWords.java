package easewright.editor.model;

import easewright.pattern.Cloth;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is known of the cloth, in words, and how each of it is found out by hand.
 *
 * @param stretches whether anything is to be told or asked of its stretch: of a woven only where the garment leans on it
 * @param untested that the stretch is not known where it matters, else empty
 * @param known  all that is known of the cloth, else empty; broken only between its parts
 * @param judged as which garment the ease is judged; empty where there is no choice
 * @param across stretch across, {@code along} lengthwise, {@code recovery} how far it springs back, {@code wash} how far
 *               it shrinks
 */
public record ClothWords(
        boolean stretches,
        String untested,
        String known,
        String judged,
        Test across,
        Test along,
        Test recovery,
        Test wash) {
    /**
     * A test.
     *
     * @param result what is tested and what came of it
     * @param how    what to do, and what it is good for
     * @param marked the length to mark
     * @param length of the marked piece after it; empty while not tested
     * @param can    whether it can be done now
     * @param range  how long the marked piece can be, in words; for a length that cannot be
     */
    public record Test(String result, String how, String marked, String length, boolean can, String range) {
        /** While another one has to be done first. */
        private Test before(String first) {
            return new Test(first, how, marked, "", false, range);
        }
    }

    /**
     * @param garments as which the ease may be judged
     */
    public static ClothWords of(Desk desk, Garments garments) {
        Words words = desk.words();
        Cloth cloth = desk.pattern().cloth();
        double marked = StretchTest.marked(desk.unit());
        double unwashed = WashTest.marked(desk.unit());
        double across = cloth.across().orElse(0);
        double stretched = StretchTest.stretched(across, marked);
        double rested = RecoveryTest.rested(cloth.recovery().orElse(0), across, marked);
        String pulled = range(marked, StretchTest.stretched(StretchTest.MOST, marked), words);
        Test recovery = test("recovery", cloth.recovery(), marked, rested, range(marked, stretched, words), words);
        boolean matters = stretchMatters(desk);
        boolean tested = cloth.across().isPresent()
                || cloth.along().isPresent()
                || cloth.recovery().isPresent();
        return new ClothWords(
                matters || tested,
                cloth.across().isEmpty() && matters ? words.of("editor.cloth.now.untested") : "",
                known(cloth, words),
                garments.any() ? judged(garments, words) : "",
                test("across", cloth.across(), marked, stretched, pulled, words),
                test(
                        "along",
                        cloth.along(),
                        marked,
                        StretchTest.stretched(cloth.along().orElse(0), marked),
                        pulled,
                        words),
                across > 0 ? recovery : recovery.before(words.of("editor.cloth.recovery.first")),
                test(
                        "wash",
                        cloth.shrinkage(),
                        unwashed,
                        WashTest.washed(cloth.shrinkage().orElse(0), unwashed),
                        range(WashTest.washed(WashTest.MOST, unwashed), unwashed, words),
                        words));
    }

    private static String range(double low, double high, Words words) {
        return words.of("editor.cloth.range", Map.of("low", low, "high", high));
    }

    private static String known(Cloth cloth, Words words) {
        List<String> known = new ArrayList<>();
        cloth.across().ifPresent(p -> known.add(percent("editor.cloth.now.across", cloth.across(), words)));
        cloth.along().ifPresent(p -> known.add(percent("editor.cloth.now.along", cloth.along(), words)));
        cloth.recovery().ifPresent(p -> known.add(percent("editor.cloth.now.recovery", cloth.recovery(), words)));
        cloth.shrinkage().ifPresent(p -> known.add(percent("editor.cloth.now.wash", cloth.shrinkage(), words)));
        return String.join(words.of("editor.cloth.now.between"), known);
    }

    private static String judged(Garments garments, Words words) {
        boolean byMarks = garments.chosen().equals(Garments.BY_MARKS);
        if (garments.chosen().equals(Garments.NONE)
                || byMarks && garments.marks().words().isEmpty()) {
            return words.of(byMarks ? "editor.cloth.now.any" : "editor.cloth.now.none");
        }
        return byMarks
                ? words.of(
                        "editor.cloth.now.marks",
                        Map.of("garment", garments.marks().words()))
                : words.of("editor.cloth.now.judged", Map.of("garment", garments.chosen()));
    }

    /** A woven is asked for its stretch only where the garment leans on it. */
    static boolean stretchMatters(Desk desk) {
        return desk.pattern().cloth().knit()
                || desk.shownReading().sheet().lines().stream()
                        .anyMatch(line -> line.ease().orElse(0) < 0);
    }

    private static Test test(
            String what, OptionalDouble found, double marked, double length, String range, Words words) {
        return new Test(
                result(what, found, words),
                words.of("editor.cloth." + what + ".how", Map.of("marked", marked)),
                words.length(marked),
                found.isPresent() ? words.entered(length) : "",
                true,
                range);
    }

    private static String result(String what, OptionalDouble found, Words words) {
        String said =
                found.isPresent() ? percent("editor.cloth.found", found, words) : words.of("editor.cloth.not-tested");
        return words.of("editor.cloth." + what, Map.of("found", said));
    }

    private static String percent(String key, OptionalDouble found, Words words) {
        return words.of(key, Map.of("found.percent", found.orElseThrow()));
    }
}
