package easewright.svg;

import java.util.Locale;
import java.util.Random;

/** Writes what several readers read, mostly well-formed: numbers, paths, transforms. */
class FuzzPen {
    private static final String[] NUMBERS = {
        "0",
        "-0",
        "1",
        "10",
        "-5",
        ".5",
        "-.5",
        "1.5",
        "100",
        "1e2",
        "1E-3",
        "+7",
        "1e308",
        "-1e308",
        "1e309",
        "1e-400",
        "0.0000001",
        "99999999",
        "1e9",
        "00012",
        "3.14159265358979323846",
        "NaN",
        "Infinity",
        "5.",
        ".",
        "-",
        "1e",
        "1e+",
        "\u0661",
        "0x10",
        "1_0",
        "1,5"
    };

    final Random random;

    final StringBuilder out;

    FuzzPen(Random random) {
        this.random = random;
        this.out = new StringBuilder();
    }

    /** Writes on where another writes. */
    FuzzPen(FuzzPen other) {
        this.random = other.random;
        this.out = other.out;
    }

    boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    String pick(String... words) {
        return words[random.nextInt(words.length)];
    }

    void number() {
        if (chance(12)) {
            out.append(pick(NUMBERS));
        } else {
            double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(4));
            out.append(String.format(Locale.ROOT, "%." + random.nextInt(5) + "f", value));
        }
    }

    void separator() {
        out.append(pick(" ", ",", " , ", "", "\n", " ", ","));
    }

    void path() {
        if (!chance(15)) {
            out.append(pick("M", "m", " M ")).append("10 10");
        }
        int commands = 1 + random.nextInt(chance(20) ? 400 : 12);
        for (int i = 0; i < commands; i++) {
            char letter = "MmLlHhVvCcSsQqTtAaZzzZ".charAt(random.nextInt(22));
            out.append(letter);
            int sets = chance(4) ? 2 : 1;
            int numbers = switch (Character.toUpperCase(letter)) {
                case 'M', 'L', 'T' -> 2;
                case 'H', 'V' -> 1;
                case 'C' -> 6;
                case 'S', 'Q' -> 4;
                case 'A' -> 7;
                default -> 0;
            };
            for (int n = 0; n < numbers * sets; n++) {
                boolean flag = numbers == 7 && (n % 7 == 3 || n % 7 == 4);
                if (flag) {
                    out.append(random.nextInt(2));
                } else {
                    number();
                }
                separator();
            }
        }
    }

    void transform() {
        int functions = 1 + random.nextInt(4);
        for (int i = 0; i < functions; i++) {
            out.append(pick(
                    "matrix",
                    "translate",
                    "scale",
                    "rotate",
                    "skewX",
                    "skewY",
                    "skew",
                    "translateX",
                    "scaleY",
                    "Rotate",
                    "none",
                    "rotate3d",
                    "perspective",
                    "calc"));
            out.append(pick("(", "(", "(", " (", "( "));
            int arguments = random.nextInt(7);
            for (int n = 0; n < arguments; n++) {
                number();
                out.append(pick("", "", "", "deg", "px", "mm", "%", "rad", "turn", "em"));
                separator();
            }
            out.append(")").append(pick("", " ", ",", ", "));
        }
    }
}
