package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Nests without layers, each size inside the next larger one, of random measures. Our own inventions. */
class SizesInsideTest {
    private final Random random = new Random(20261128);

    private double about(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static String data(String form, Object... numbers) {
        return String.format(Locale.ROOT, form.replace("%s", "%.3f"), numbers);
    }

    /** By how much each size goes further out than the next smaller one, mm: at the centre, side, waist and hem. */
    private record Grade(double centre, double side, double waist, double hem) {}

    private static String skirt(String id, int size, Grade grade, double out) {
        double left = 100 - size * grade.centre() - out;
        double top = 100 - size * grade.waist() - out;
        double waist = 290 + size * grade.side() + out;
        double hip = 345 + size * grade.side() + out;
        double foot = 700 + size * grade.hem() + out;
        return data(
                "<path id='" + id + "' d='M%s %s L%s %s C%s %s %s %s %s 300 L%s %s L%s %s Z'/>",
                left,
                top,
                waist,
                top,
                waist + 15,
                top + 60,
                hip,
                top + 130,
                hip,
                hip + 20,
                foot,
                left,
                foot);
    }

    /** A dart of a size, drawn in one of some ways, by the ids of its lines. */
    private String dart(String id, int way, int size, Grade grade) {
        double top = 100 - size * grade.waist();
        double x = 190 + size * 0.5 * grade.side();
        return switch (way) {
            case 0 -> data("<path id='" + id + "' d='M%s %s L%s %s L%s %s'/>", x - 9, top, x, top + 110, x + 9, top);
            case 1 -> data("<path id='" + id + "' d='M%s %s L%s %s L%s %s Z'/>", x - 9, top, x, top + 110, x + 9, top);
            case 2 ->
                data("<path id='" + id + "-one' d='M%s %s L%s %s'/>", x - 9, top, x, top + 110)
                        + data("<path id='" + id + "-two' d='M%s %s L%s %s'/>", x, top + 110, x + 9, top);
            default ->
                data(
                        "<path id='" + id + "' d='M%s %s L%s %s L%s %s L%s %s Z'/>",
                        x,
                        top + 40,
                        x + 8,
                        top + 120,
                        x,
                        top + 200,
                        x - 8,
                        top + 120);
        };
    }

    private BarePattern of(List<String> drawn) {
        List<String> shuffled = new ArrayList<>(drawn);
        Collections.shuffle(shuffled, random);
        return BarePattern.of(Drawn.read(
                Drawn.svg("width='1000mm' height='1000mm' viewBox='0 0 1000 1000'", String.join("", shuffled))));
    }

    private Grade grade() {
        return new Grade(about(1, 4), about(6, 14), about(2, 5), about(4, 9));
    }

    @Test
    void everySizeIsAPieceWithItsOwnDart() {
        Map<Integer, Integer> right = new HashMap<>();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            int sizes = 3 + random.nextInt(4);
            int way = i % 4;
            Grade grade = grade();
            List<String> drawn = new ArrayList<>();
            for (int size = 0; size < sizes; size++) {
                drawn.add(skirt("size" + size, size, grade, 0));
                drawn.add(dart("dart" + size, way, size, grade));
            }
            BarePattern bare = of(drawn);
            assertThat(bare.pattern().pieces()).as("%s %s", way, grade).hasSize(sizes);
            for (Piece piece : bare.pattern().pieces()) {
                String own = piece.id().replace("size", "dart");
                boolean hit = piece.riders().size() == (way == 2 ? 2 : 1)
                        && piece.riders().stream().map(Rider::id).allMatch(id -> id.startsWith(own));
                if (hit) {
                    right.merge(way, 1, Integer::sum);
                } else {
                    wrong.add(way + " " + piece.id()
                            + piece.riders().stream().map(Rider::id).toList());
                }
            }
        }
        assertThat(wrong).as("right by way of drawing: %s", right).isEmpty();
    }

    /** Two outlines, one in the other, are both lines of one piece, unless words on them name two sizes. */
    @Test
    void aStitchingLineIsNoSize() {
        for (int i = 0; i < 20; i++) {
            double allowance = about(6, 20);
            Grade none = new Grade(0, 0, 0, about(0, 25));
            List<String> drawn = List.of(skirt("cut", 1, none, allowance), skirt("sewn", 0, none, 0));
            BarePattern bare = of(drawn);
            assertThat(bare.pattern().pieces()).extracting(Piece::id).containsExactly("cut");
            assertThat(bare.pattern().pieces().get(0).riders())
                    .extracting(Rider::id)
                    .containsExactly("sewn");
            List<String> two = new ArrayList<>(List.of(skirt("large", 1, grade(), 0), skirt("small", 0, none, 0)));
            assertThat(of(two).pattern().pieces()).hasSize(1);
            two.add("<text x='200' y='400' font-size='12'>Skirt 38-40</text>");
            assertThat(of(two).pattern().pieces()).hasSize(2);
        }
    }

    @Test
    void whereEachSizeHasBothLinesTheInnerOneRidesAlong() {
        for (int i = 0; i < 20; i++) {
            int sizes = 3 + random.nextInt(2);
            Grade grade = new Grade(about(6, 7), about(11, 14), about(6, 7), about(9, 12));
            List<String> drawn = new ArrayList<>();
            for (int size = 0; size < sizes; size++) {
                drawn.add(skirt("cut" + size, size, grade, 5));
                drawn.add(skirt("sewn" + size, size, grade, 0));
            }
            BarePattern bare = of(drawn);
            assertThat(bare.pattern().pieces())
                    .hasSize(sizes)
                    .allSatisfy(piece -> assertThat(piece.riders())
                            .extracting(Rider::id)
                            .containsExactly(piece.id().replace("cut", "sewn")));
        }
    }

    /** The same line drawn once more, for its colour or its pen, is no size. */
    @Test
    void anOutlineDrawnThreeTimesIsOnePiece() {
        Grade grade = grade();
        List<String> drawn =
                List.of(skirt("fill", 0, grade, 0), skirt("pen", 0, grade, 0), skirt("again", 0, grade, 0.2));
        assertThat(of(drawn).pattern().pieces()).hasSize(1);
        assertThat(of(drawn).findings()).extracting(Finding::code).isEmpty();
    }

    private static String rectangle(String id, double inset) {
        return data(
                "<rect id='" + id + "' x='%s' y='%s' width='%s' height='%s'/>",
                100 + inset,
                100 + inset,
                200 - 2 * inset,
                300 - 2 * inset);
    }

    /** Cutting, stitching and topstitching lines of one piece, beside another piece. */
    @Test
    void linesEvenlyInsideEachOtherAreNoSizesUnlessNamedOrDeep() {
        String other = "<rect id='other' x='500' y='100' width='150' height='400'/>";
        List<String> lines = List.of(rectangle("cut", 0), rectangle("sewn", 10), rectangle("top", 17), other);
        assertThat(of(lines).pattern().pieces()).hasSize(2).anySatisfy(piece -> {
            assertThat(piece.id()).isEqualTo("cut");
            assertThat(piece.riders()).extracting(Rider::id).containsExactlyInAnyOrder("sewn", "top");
        });
        List<String> named = new ArrayList<>(lines);
        named.add("<text x='150' y='250' font-size='12'>Sizes 36-38-40</text>");
        assertThat(of(named).pattern().pieces()).hasSize(4);
        List<String> grouped = List.of(
                "<g id='size-40'>" + rectangle("cut", 0) + "</g>",
                "<g id='size-38'>" + rectangle("sewn", 10) + "</g>",
                "<g id='size-36'>" + rectangle("top", 17) + "</g>",
                other);
        assertThat(of(grouped).pattern().pieces())
                .as("each in a group called by a size")
                .hasSize(4);
        List<String> deep = List.of(rectangle("large", 0), rectangle("middle", 16), rectangle("small", 32), other);
        assertThat(of(deep).pattern().pieces()).hasSize(4);
    }

    /** Two outlines evenly in each other are two sizes where their groups say so, and else one piece. */
    @Test
    void twoAreSizesWhereTheirGroupsSaySo() {
        for (String[] names : new String[][] {{"size-40", "size-38"}, {"Size_M", "Size_S"}}) {
            List<String> said = List.of(
                    "<g id='" + names[0] + "'>" + rectangle("large", 0) + "</g>",
                    "<g id='" + names[1] + "'>" + rectangle("small", 10) + "</g>");
            assertThat(of(said).pattern().pieces()).as(names[0]).hasSize(2);
        }
        for (String[] names :
                new String[][] {{"layer-1", "layer-2"}, {"cut", "sewn"}, {"size-40", "sewn"}, {"15", "10"}}) {
            List<String> unsaid = List.of(
                    "<g id='" + names[0] + "'>" + rectangle("cut", 0) + "</g>",
                    "<g id='" + names[1] + "'>" + rectangle("sewn", 10) + "</g>");
            assertThat(of(unsaid).pattern().pieces()).as(names[0]).hasSize(1);
        }
    }
}
