package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class MarkWordsTest {
    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)";

    /** What docs/file-format.md says of a place and of a box, as patterns. */
    private static final Pattern PLACE = Pattern.compile("(" + NUMBER + ")\\s*[\\s,]\\s*(" + NUMBER + ")");

    private static final Pattern BOX =
            Pattern.compile("(NN)[\\s,]+(NN)[\\s,]+(NN)[\\s,]+(NN)[\\s,]*".replace("NN", NUMBER));

    @Test
    void numbersPlacesAndBoxesAreReadByTheirPatterns() {
        Random random = new Random(4711);
        String[] parts = {
            "1", "25", "0", ".", "-", "+", " ", ",", "\t", "e", "E3", "007", "1.5", "123456789012345678", "x"
        };
        int places = 0;
        int boxes = 0;
        for (int i = 0; i < 300_000; i++) {
            StringBuilder made = new StringBuilder();
            for (int k = random.nextInt(10); k >= 0; k--) {
                made.append(parts[random.nextInt(random.nextBoolean() ? parts.length : 9)]);
            }
            String text = made.toString();
            String plain = text.strip();
            assertThat(MarkWords.number(text))
                    .as(text)
                    .isEqualTo(
                            plain.matches(NUMBER) ? Optional.of(Double.parseDouble(plain)) : Optional.<Double>empty());
            Matcher place = PLACE.matcher(plain);
            Optional<Point> wanted = place.matches()
                    ? Optional.of(new Point(Double.parseDouble(place.group(1)), Double.parseDouble(place.group(2))))
                    : Optional.empty();
            places += wanted.isPresent() ? 1 : 0;
            assertThat(MarkWords.place(text)).as(text).isEqualTo(wanted);
            Matcher box = BOX.matcher(plain);
            Optional<double[]> sides = MarkWords.sides(text);
            assertThat(sides.isPresent()).as(text).isEqualTo(box.matches());
            for (int k = 0; sides.isPresent() && k < 4; k++) {
                assertThat(sides.get()[k]).as(text).isEqualTo(Double.parseDouble(box.group(k + 1)));
            }
            boxes += sides.isPresent() ? 1 : 0;
        }
        assertThat(places).isGreaterThan(1000);
        assertThat(boxes).isGreaterThan(30);
    }

    /** As in what is drawn: a segment of no length has no direction to go on in. */
    @Test
    void aKeptOutlineIsReadWithoutSegmentsOfNoLength() {
        assertThat(MarkWords.outline("M0 0 L10 0 L10 0 L10 10 C10 10 10 10 10 10 Z"))
                .contains(Outline.polygon(List.of(Point.ORIGIN, new Point(10, 0), new Point(10, 10))));
        assertThat(MarkWords.outline("M5 5 L5 5 Z")).isEmpty();
    }

    @Test
    void countsGoFromOneToFourDigits() {
        assertThat(MarkWords.count("1")).contains(1);
        assertThat(MarkWords.count("9999")).contains(9999);
        for (String bad : new String[] {"", "0", "01", "10000", "-1", "+1", "1.0", "2x", " 2"}) {
            assertThat(MarkWords.count(bad)).as(bad).isEmpty();
        }
    }

    @Test
    void wordsAreSpelledInSmallLettersWithHyphens() {
        for (Scale scale : Scale.values()) {
            assertThat(MarkWords.value(Scale.class, MarkWords.word(scale))).contains(scale);
        }
        assertThat(MarkWords.word(Scale.KNOWN_LINE)).isEqualTo("known-line");
        for (String bad : new String[] {"", "KNOWN_LINE", "known_line", "Known-line", "known-lines"}) {
            assertThat(MarkWords.value(Scale.class, bad)).as(bad).isEmpty();
        }
    }

    private enum Scale {
        KNOWN_LINE,
        UNPROVED
    }
}
