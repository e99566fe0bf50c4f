package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Path data in all its forms, changed in one place. */
class PathWriteTest {
    private static final String[] TRANSFORMS = {
        "",
        "translate(13.7 -4.21)",
        "rotate(33)",
        "scale(.35 .4)",
        "matrix(1.2 .3 -.2 .9 17 3)",
        "scale(1,-1) translate(0,-300)",
        "rotate(-120 50 60) skewX(12) scale(3.7)"
    };

    private static SvgFile open(String d, String transform) throws SvgProblem {
        return SvgFile.read(
                ("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"11in\" height=\"17in\" viewBox=\"0 0 1056 1632\">"
                                + "<g transform=\"" + transform + "\"><path id=\"p\" d=\"" + d + "\"/></g></svg>")
                        .getBytes(StandardCharsets.UTF_8),
                "p.svg");
    }

    private static String data(byte[] written) {
        String text = new String(written, StandardCharsets.UTF_8);
        int from = text.indexOf(" d=\"") + 4;
        return text.substring(from, text.indexOf('"', from));
    }

    /** One corner moved by (1, 0) mm of a page where a unit is 1 mm; the corner's number and the new data. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M0 0 L100 0 L100 100 L0 100 Z | 2 | M0 0 L100 0 L101 100 L0 100 Z",
                "m0,0 100,0 0,100 -100,0z | 1 | m0,0 L101 0 L100 100 l-100,0z",
                "m0,0 100,0 0,100 -100,0z | 0 | M1 0 L100 0 l0,100 -100,0z",
                "M0 0H100V100H0Z | 1 | M0 0L101 0 L100 100H0Z",
                "M0 0h100v100h-100z | 2 | M0 0h100L101 100 L0 100z",
                "M0 0h100v100h-100v-100 | 3 | M0 0h100v100L1 100 L0 0",
                "M0,0 C0,0 100,0 100,0 S100,100 100,100 S 0,100 0,100 z"
                        + " | 1 | M0,0 C0 0 101 0 101 0 C101 0 100 100 100 100 C100 100 0 100 0 100 z",
                "M0 0Q50 0 100 0T100 100L0 100z"
                        + " | 1 | M0 0C33.33333333333333 0 67.666667 0 101 0"
                        + " C134.333333 0 133.33333333333331 33.33333333333334 100 100L0 100z",
            })
    void rewritesExactlyWhatMoved(String before, int corner, String after) throws SvgProblem {
        SvgFile file = SvgFile.read(
                ("<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='200mm' viewBox='0 0 200 200'>"
                                + "<path id=\"p\" d=\"" + before.strip() + "\"/></svg>")
                        .getBytes(StandardCharsets.UTF_8),
                "p.svg");
        byte[] written = file.write(SvgFileTest.moved(file.pattern(), corner, new Point(1, 0)));
        assertThat(data(written)).isEqualTo(after.strip());
    }

    @Test
    void holdsForRandomPathsTransformsAndChanges() throws SvgProblem {
        Random random = new Random(20261125);
        int changed = 0;
        for (int round = 0; round < 1500; round++) {
            String d = randomPath(random);
            SvgFile file = open(d, TRANSFORMS[random.nextInt(TRANSFORMS.length)]);
            if (file.pattern().pieces().isEmpty()) {
                continue;
            }
            Pattern wanted = change(file.pattern(), random);
            byte[] written;
            try {
                written = file.write(wanted);
            } catch (SvgProblem e) {
                throw new AssertionError("round " + round + ": " + d, e);
            }
            SvgFile again = SvgFile.read(written, "again");
            keptBitForBit(file.pattern(), wanted, again.pattern(), d + "\n" + data(written));
            assertThat(again.write(again.pattern())).isEqualTo(written);
            assertThat(data(written)).doesNotContainPattern("[0-9][eE][-+0-9]");
            changed++;
        }
        assertThat(changed).isGreaterThan(1000);
    }

    private static void keptBitForBit(Pattern before, Pattern wanted, Pattern now, String about) {
        Set<Segment> old = new HashSet<>(before.pieces().get(0).outline().segments());
        Set<Segment> read = new HashSet<>(now.pieces().get(0).outline().segments());
        for (Segment segment : wanted.pieces().get(0).outline().segments()) {
            if (old.contains(segment)) {
                assertThat(read).as(about).contains(segment);
            }
        }
        assertThat(now.pieces().get(0).riders())
                .isEqualTo(before.pieces().get(0).riders());
    }

    /** A corner moved, a segment split with its middle moved, or a run replaced by one line. */
    private static Pattern change(Pattern pattern, Random random) {
        Piece piece = pattern.pieces().get(0);
        Outline outline = piece.outline();
        int n = outline.segments().size();
        Point by = new Point(random.nextDouble() * 8 - 4, random.nextDouble() * 8 - 4);
        switch (random.nextInt(4)) {
            case 0 -> {
                int at = random.nextInt(n);
                Outline split = outline.splitAt(new Place(at, 0.2 + 0.6 * random.nextDouble()));
                return SvgFileTest.moved(pattern.withPiece(piece.withOutline(split)), at + 1, by);
            }
            case 1 -> {
                int corner = random.nextInt(n);
                Pattern once = SvgFileTest.moved(pattern, corner, by);
                return SvgFileTest.moved(once, (corner + 2) % n, by);
            }
            case 2 -> {
                List<Segment> segments = new ArrayList<>(outline.segments());
                if (n > 4) {
                    int at = random.nextInt(n - 2);
                    Segment joined = new easewright.geom.Line(
                            segments.get(at).start(), segments.get(at + 1).end());
                    segments.set(at, joined);
                    segments.remove(at + 1);
                    return pattern.withPiece(piece.withOutline(new Outline(segments)));
                }
                return SvgFileTest.moved(pattern, 0, by);
            }
            default -> {
                return SvgFileTest.moved(pattern, random.nextInt(n), by);
            }
        }
    }

    /** Round about a circle, in commands of all kinds, sometimes followed by smaller sub-paths. */
    private static String randomPath(Random random) {
        StringBuilder d = new StringBuilder();
        int subPaths = 1 + random.nextInt(3);
        double[] pen = {0, 0};
        double[] start = {0, 0};
        for (int s = 0; s < subPaths; s++) {
            double radius = s == 0 ? 220 : 20;
            double cx = s == 0 ? 260 : 180 + 120 * s;
            boolean continues = s > 0 && random.nextInt(4) == 0;
            int n = 3 + random.nextInt(6);
            if (!continues) {
                pen = point(d, random.nextBoolean() ? 'M' : 'm', pen, cx + radius, 260, random);
                start = pen.clone();
            }
            char last = 0;
            for (int i = 1; i < n; i++) {
                double angle = 2 * Math.PI * i / n;
                double x = cx + radius * Math.cos(angle);
                double y = 260 + radius * Math.sin(angle);
                char letter = "LlHhVvCcSsQqTtAa".charAt(random.nextInt(16));
                boolean implicit = letter == last && random.nextBoolean();
                last = letter;
                pen = command(d, letter, implicit, pen, x, y, random);
            }
            if (random.nextInt(5) > 0 || s == 0) {
                d.append(random.nextBoolean() ? "z" : " Z ");
                pen = start.clone();
            }
        }
        return d.toString();
    }

    private static double[] point(StringBuilder d, char letter, double[] pen, double x, double y, Random random) {
        boolean relative = Character.isLowerCase(letter);
        String a = number(x - (relative ? pen[0] : 0), random);
        String b = number(y - (relative ? pen[1] : 0), random);
        d.append(letter).append(a).append(separator(random)).append(b);
        return new double[] {
            Double.parseDouble(a) + (relative ? pen[0] : 0), Double.parseDouble(b) + (relative ? pen[1] : 0)
        };
    }

    private static double[] command(
            StringBuilder d, char letter, boolean implicit, double[] pen, double x, double y, Random random) {
        boolean relative = Character.isLowerCase(letter);
        d.append(
                implicit
                        ? separator(random)
                        : (random.nextBoolean() ? " " : "") + letter + (random.nextBoolean() ? " " : ""));
        double bx = relative ? pen[0] : 0;
        double by = relative ? pen[1] : 0;
        List<String> values = new ArrayList<>();
        switch (Character.toUpperCase(letter)) {
            case 'H' -> values.add(number(x - bx, random));
            case 'V' -> values.add(number(y - by, random));
            case 'A' -> {
                values.addAll(List.of(number(150, random), number(120, random), "30", "0", "1"));
            }
            default -> {
                int controls = "CSQ".indexOf(Character.toUpperCase(letter)) < 0
                        ? 0
                        : Character.toUpperCase(letter) == 'C' ? 2 : 1;
                for (int i = 0; i < controls; i++) {
                    double t = (i + 1.0) / (controls + 1);
                    values.add(number(pen[0] + t * (x - pen[0]) + random.nextDouble() * 40 - bx, random));
                    values.add(number(pen[1] + t * (y - pen[1]) + random.nextDouble() * 40 - by, random));
                }
            }
        }
        char upper = Character.toUpperCase(letter);
        if (upper != 'H' && upper != 'V') {
            values.add(number(x - bx, random));
            values.add(number(y - by, random));
        }
        d.append(values.get(0));
        for (String value : values.subList(1, values.size())) {
            d.append(separator(random)).append(value);
        }
        double endX = upper == 'V' ? pen[0] : Double.parseDouble(values.get(upper == 'H' ? 0 : values.size() - 2)) + bx;
        double endY = upper == 'H' ? pen[1] : Double.parseDouble(values.get(values.size() - 1)) + by;
        return new double[] {endX, endY};
    }

    private static String separator(Random random) {
        return new String[] {" ", ",", " , ", "\n"}[random.nextInt(4)];
    }

    private static String number(double value, Random random) {
        return String.format(Locale.ROOT, "%." + (1 + random.nextInt(5)) + "f", value);
    }
}
