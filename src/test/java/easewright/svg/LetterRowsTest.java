package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Finding;
import easewright.pattern.Piece;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Words drawn as one shape to a letter, and small pieces laid in rows as letters stand. Our own inventions. */
class LetterRowsTest {
    /** Drawn on five squares by seven, the line they stand on at 7; the second ring of a letter is its hole. */
    private static final Map<Character, String> LETTERS = Map.ofEntries(
            Map.entry('A', "M0 7 L1.8 0 L3.2 0 L5 7 L3.9 7 L3.4 5 L1.6 5 L1.1 7 Z M1.9 4 L3.1 4 L2.5 1.4 Z"),
            Map.entry(
                    'B',
                    "M0 0 L4 0 L5 1 L5 3 L4.4 3.5 L5 4 L5 6 L4 7 L0 7 Z M1 1 L1 3 L4 3 L4 1 Z M1 4 L1 6 L4 6 L4 4 Z"),
            Map.entry(
                    'C',
                    "M5 1.5 L4 1.5 C4 .9 1 .7 1 3.5 C1 6.3 4 6.1 4 5.5 L5 5.5 C5 7.4 0 7.4 0 3.5 C0 -.4 5 -.4 5 1.5 Z"),
            Map.entry('E', "M0 0 L4.5 0 L4.5 1 L1 1 L1 3 L4 3 L4 4 L1 4 L1 6 L4.5 6 L4.5 7 L0 7 Z"),
            Map.entry('F', "M0 0 L4.5 0 L4.5 1 L1 1 L1 3 L4 3 L4 4 L1 4 L1 7 L0 7 Z"),
            Map.entry('I', "M0 0 L1 0 L1 7 L0 7 Z"),
            Map.entry('K', "M0 0 L1 0 L1 3 L3.6 0 L5 0 L2 3.4 L5 7 L3.6 7 L1 4 L1 7 L0 7 Z"),
            Map.entry('L', "M0 0 L1 0 L1 6 L4 6 L4 7 L0 7 Z"),
            Map.entry('N', "M0 0 L1 0 L4 5 L4 0 L5 0 L5 7 L4 7 L1 2 L1 7 L0 7 Z"),
            Map.entry('O', "M2.5 0 C6 0 6 7 2.5 7 C-1 7 -1 0 2.5 0 Z M2.5 1 C.4 1 .4 6 2.5 6 C4.6 6 4.6 1 2.5 1 Z"),
            Map.entry('R', "M0 0 L4 0 L5 1 L5 3 L4 4 L5 7 L4 7 L3 4 L1 4 L1 7 L0 7 Z M1 1 L1 3 L4 3 L4 1 Z"),
            Map.entry('S', "M5 0 L5 1 L1 1 L1 3 L5 3 L5 7 L0 7 L0 6 L4 6 L4 4 L0 4 L0 0 Z"),
            Map.entry('T', "M0 0 L5 0 L5 1 L3 1 L3 7 L2 7 L2 1 L0 1 Z"),
            Map.entry('a', "M1 2 L4 2 L4 7 L0 7 L0 4 L3 4 L3 3 L1 3 Z M1 5 L1 6 L3 6 L3 5 Z"),
            Map.entry('o', "M2 2 C5 2 5 7 2 7 C-1 7 -1 2 2 2 Z M2 3 C.5 3 .5 6 2 6 C3.5 6 3.5 3 2 3 Z"),
            Map.entry('p', "M0 2 L4 2 L4 7 L1 7 L1 9 L0 9 Z M1 3 L1 6 L3 6 L3 3 Z"),
            Map.entry('2', "M0 0 L5 0 L5 4 L1 4 L1 6 L5 6 L5 7 L0 7 L0 3 L4 3 L4 1 L0 1 Z"));

    private static final List<String> WORDS =
            List.of("SKIRT", "FRONT", "BACK", "COAT", "FRoaST", "CoaT", "LINER", "BOAT 2", "RoBE", "TABLE NEAT");

    private final Random random = new Random(20261127);

    private double about(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** A word from x = 0 on, its letters so high, standing on y = 0. */
    private String word(String word, double high) {
        StringBuilder drawn = new StringBuilder();
        double unit = high / 7;
        double x = 0;
        for (char letter : word.toCharArray()) {
            if (letter == ' ') {
                x += 3 * unit;
                continue;
            }
            drawn.append(String.format(
                    Locale.ROOT,
                    "<path transform='translate(%.2f %.2f) scale(%.4f)' d='%s'/>",
                    x,
                    -high,
                    unit,
                    LETTERS.get(letter)));
            x += (letter == 'I' ? 1 : letter == 'L' ? 4 : letter == 'o' || letter == 'a' || letter == 'p' ? 4 : 5)
                            * unit
                    + about(0.6, 1.4) * unit;
        }
        return drawn.toString();
    }

    private static String at(double x, double y, double turn, String inside) {
        return String.format(
                Locale.ROOT, "<g transform='translate(%.2f %.2f) rotate(%.0f)'>%s</g>", x, y, turn, inside);
    }

    private static final String FRONT =
            "<path id='front' d='M900 60 C1000 60 1080 40 1120 40 C1140 120 1180 170 1180 260 L1200 700 L900 700 Z'/>";

    private static final String BACK =
            "<path id='back' d='M1700 60 C1600 60 1520 40 1480 40 C1460 120 1420 170 1420 260 L1400 700 L1700 700 Z'/>";

    /** Tabs, pockets, collar stands and belt loops, each beside the next and all standing on one line. */
    private String small(List<String> ids) {
        StringBuilder row = new StringBuilder();
        double x = 0;
        for (int i = 0; i < 5; i++) {
            double high = about(55, 75);
            String id = "small" + i;
            ids.add(id);
            String form = switch (random.nextInt(4)) {
                case 0 -> String.format(Locale.ROOT, "l0 -%.1f l35 0 l0 %.1f l-17 14 z", high, high);
                case 1 -> String.format(Locale.ROOT, "l0 -%.1f h%.1f v%.1f z", high, about(60, 90), high);
                case 2 -> "l0 -30 q60 -25 140 -30 q12 10 12 30 q-80 5 -152 30 z";
                default -> String.format(Locale.ROOT, "v-%.1f h11 v%.1f z", high, high);
            };
            row.append(String.format(Locale.ROOT, "<path id='%s' d='M%.1f 0 %s'/>", id, x, form));
            x += (form.startsWith("l0 -30") ? 152 : form.startsWith("v") ? 11 : 95) + about(8, 25);
        }
        return at(60, 950, 0, row.toString());
    }

    private static BarePattern of(String body) {
        return BarePattern.of(Drawn.read(Drawn.svg("width='2000mm' height='1200mm' viewBox='0 0 2000 1200'", body)));
    }

    @Test
    void lettersAreNoPiecesAndSmallPiecesAreNoLetters() {
        List<String> wrong = new ArrayList<>();
        int letters = 0;
        for (int i = 0; i < 80; i++) {
            List<String> wanted = new ArrayList<>(List.of("front", "back"));
            String word = WORDS.get(random.nextInt(WORDS.size()));
            double turn = random.nextInt(3) == 0 ? 90 * (random.nextInt(2) * 2 - 1) : 0;
            String body = FRONT
                    + BACK
                    + small(wanted)
                    + at(turn == 0 ? 80 : 300, turn < 0 ? 700 : 150, turn, word(word, about(46, 58)));
            BarePattern bare = of(body);
            letters += (int) word.chars().filter(c -> c != ' ').count();
            List<String> found =
                    bare.pattern().pieces().stream().map(Piece::id).sorted().toList();
            if (!found.equals(wanted.stream().sorted().toList())) {
                wrong.add(i + " " + word + " " + turn + found);
            }
            assertThat(bare.findings())
                    .as("told %s %s", i, word)
                    .extracting(Finding::code)
                    .contains("letters-left-out", "words-as-shapes");
        }
        assertThat(wrong).as("of 80 sheets with %d letters", letters).isEmpty();
    }

    /** Facings are as hollow as letters are, and broader. */
    @Test
    void facingsInARowArePieces() {
        for (int i = 0; i < 60; i++) {
            StringBuilder row = new StringBuilder();
            double x = 0;
            List<String> wanted = new ArrayList<>(List.of("front", "back"));
            for (int k = 0; k < 4; k++) {
                double wide = about(150, 210);
                double high = about(70, 180);
                double broad = Math.min(about(42, 60), 0.8 * high);
                row.append(String.format(
                        Locale.ROOT,
                        "<path id='facing%d' d='M%.1f -%.1f h%.1f v%.1f h%.1f v-%.1f h%.1f v%.1f h-%.1f z'/>",
                        k,
                        x,
                        high,
                        broad,
                        high - broad,
                        wide - 2 * broad,
                        high - broad,
                        broad,
                        high,
                        wide));
                wanted.add("facing" + k);
                x += wide + about(8, 30);
            }
            assertThat(of(FRONT + BACK + at(60, 1100, 0, row.toString()))
                            .pattern()
                            .pieces())
                    .as("%s", row)
                    .extracting(Piece::id)
                    .containsExactlyElementsOf(wanted);
        }
    }

    /** What is left out lies loose, as it has to for being taken by hand. */
    @Test
    void aLetterLeftOutCanBeTaken() throws SvgProblem {
        String svg = Drawn.svg(
                "width='2000mm' height='1200mm' viewBox='0 0 2000 1200'",
                FRONT + BACK + at(80, 150, 0, word("SKIRT", 50)));
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "words.svg");
        assertThat(file.pattern().pieces()).extracting(Piece::id).containsExactly("front", "back");
        assertThat(file.loose(file.pattern()))
                .hasSize(6)
                .anyMatch(rider -> rider.segments().size() > 8);
    }

    @Test
    void wordsOnAPieceRideAlong() {
        BarePattern bare = of(FRONT + BACK + at(930, 300, 0, word("FRONT", 40)));
        assertThat(bare.pattern().piece("front").orElseThrow().riders()).hasSizeGreaterThan(5);
        assertThat(bare.findings()).extracting(Finding::code).doesNotContain("letters-left-out");
    }

    /** Beside nothing large, a shape of that size may be all there is. */
    @Test
    void aSheetOfSmallPiecesKeepsThem() {
        List<String> wanted = new ArrayList<>();
        String row = small(wanted);
        assertThat(of(row).pattern().pieces()).extracting(Piece::id).containsExactlyElementsOf(wanted);
    }
}
