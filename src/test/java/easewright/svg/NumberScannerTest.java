package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Numbers are read as exactly as Java itself reads them. */
class NumberScannerTest {
    @Test
    void everyNumberIsTheNearestDouble() {
        Random random = new Random(99);
        for (int i = 0; i < 200_000; i++) {
            StringBuilder number = new StringBuilder(random.nextInt(3) == 0 ? "-" : "");
            digits(number, random, random.nextInt(20));
            int begin = number.length();
            if (random.nextBoolean() || begin == 0 || number.toString().equals("-")) {
                digits(number.append('.'), random, 1 + random.nextInt(25));
            }
            if (random.nextInt(8) == 0) {
                digits(number.append(random.nextBoolean() ? "e-" : "E"), random, 1 + random.nextInt(2));
            }
            NumberScanner in = new NumberScanner(number + ",");
            assertThat(in.number()).as(number.toString()).isEqualTo(Double.parseDouble(number.toString()));
            assertThat(in.at()).isEqualTo(number.length());
        }
    }

    private static void digits(StringBuilder into, Random random, int count) {
        for (int i = 0; i < count; i++) {
            into.append(random.nextInt(4) == 0 ? 9 : random.nextInt(10));
        }
    }

    @Test
    void numbersEndWhereTheGrammarSays() {
        String text = "1-2.5.5+3e1em5. 1e400";
        NumberScanner in = new NumberScanner(text);
        assertThat(in.number()).isEqualTo(1);
        assertThat(in.number()).isEqualTo(-2.5);
        assertThat(in.number()).isEqualTo(0.5);
        assertThat(in.number()).isEqualTo(30);
        assertThat(in.number()).isNaN();
        assertThat(in.peek()).isEqualTo('e');
        in.back(text.indexOf("5. "));
        assertThat(in.number()).isEqualTo(5);
        assertThat(in.peek()).isEqualTo('.');
        in.back(text.indexOf("1e400"));
        assertThat(in.number()).isNaN();
        assertThat(in.at()).isEqualTo(text.indexOf("1e400"));
    }
}
