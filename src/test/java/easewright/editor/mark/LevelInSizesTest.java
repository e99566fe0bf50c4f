package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.geom.Point;
import easewright.measure.LevelSeams;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A level that was put on the pieces of one size, in the others. */
class LevelInSizesTest {
    private static final List<String> SIZES = List.of("8", "10", "12", "14");

    private static Pattern sample() throws Exception {
        byte[] nest = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        return SvgFile.read(nest, "nest.svg").pattern();
    }

    private static Point at(Pattern pattern, String piece, String level) {
        return pattern.piece(piece)
                .flatMap(p -> p.level(level))
                .flatMap(LevelMark::through)
                .orElseThrow();
    }

    private static Pattern without(Pattern pattern, String level, List<Piece> pieces) {
        Pattern now = pattern;
        for (Piece piece : pieces) {
            now = LevelEdits.takeOff(now, piece.id(), level);
        }
        return now;
    }

    /** Drafted by the hip depth of each size (docs/sources.md), and given to its marks by the draft itself. */
    @Test
    void theHipOfOneSizeComesToLieWhereTheDraftHasItInTheOthers() throws Exception {
        Pattern drafted = sample();
        for (String from : PatternPart.sizes(drafted)) {
            List<Piece> others = drafted.pieces().stream()
                    .filter(p -> !p.size().equals(Optional.of(from)))
                    .toList();
            for (String level : List.of("hip", "waist")) {
                Pattern bare = without(drafted, level, others);
                assertThat(LevelInSizes.lacking(bare, level)).hasSize(2).doesNotContain(from);
                Pattern laid = LevelInSizes.everywhere(bare, level, Optional.of(from));
                assertThat(LevelInSizes.lacking(laid, level)).isEmpty();
                assertThat(LevelInSizes.unlike(laid, level, Optional.of(from))).isEmpty();
                assertThat(girths(laid)).isEqualTo(girths(drafted));
                for (Piece piece : drafted.pieces()) {
                    if (piece.size().equals(Optional.of(from))) {
                        assertThat(laid.piece(piece.id()).orElseThrow())
                                .isSameAs(bare.piece(piece.id()).orElseThrow());
                    }
                    assertThat(laid.piece(piece.id()).orElseThrow().levels()).hasSameSizeAs(piece.levels());
                }
                assertThat(LevelInSizes.everywhere(laid, level, Optional.of(from)))
                        .isSameAs(laid);
            }
        }
    }

    private static List<String> girths(Pattern pattern) {
        Words words = Words.english(LengthUnit.CM);
        return Measures.of(pattern).girths().stream()
                .map(g -> g.title() + " " + words.length(g.finished()))
                .toList();
    }

    /** Fronts and backs of four sizes, each longer, wider and deeper in the armhole than the one before. */
    private static Pattern bodices(Random random) throws Exception {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='2000mm' height='4000mm'" + " viewBox='0 0 2000 4000'>");
        List<String> ids = new ArrayList<>();
        double armhole = 180 + 20 * random.nextDouble();
        for (int i = 0; i < SIZES.size(); i++) {
            double top = 100 + 900 * i;
            double deep = top + armhole + i * (3 + 4 * random.nextDouble());
            double wide = 240 + 12 * i;
            double hem = deep + 350 + 10 * i;
            for (String name : List.of("Front", "Back")) {
                double left = name.equals("Front") ? 100 : 700;
                String id = name + " " + SIZES.get(i);
                ids.add(id);
                svg.append("<path id='" + id + "' d='M" + left + "," + top + " H" + (left + 120) + " L" + (left + wide)
                        + "," + deep + " V" + hem + " H" + left + " Z'/>");
            }
        }
        Bare bare = Bare.of(svg.append("</svg>").toString());
        Pattern pattern = bare.session.desk().pattern();
        for (String id : ids) {
            for (int corner = 0; corner < 5; corner++) {
                pattern = EdgeEdits.split(
                        pattern,
                        id,
                        bare.piece(id).outline().segments().get(corner).start());
            }
            pattern = PieceEdits.size(pattern, id, id.split(" ")[1]);
        }
        return LevelEdits.add(pattern, "bust", LevelKind.BUST);
    }

    @Test
    void aLevelThroughTheUnderarmCornerGoesThroughThatOfEverySize() throws Exception {
        Pattern bare = bodices(new Random(20261126));
        Point underarm =
                bare.piece("Front 10").orElseThrow().outline().segments().get(2).start();
        Pattern placed = LevelEdits.place(bare, "Front 10", "bust", underarm);
        assertThat(LevelInSizes.lacking(placed, "bust")).containsExactly("8", "12", "14");
        Pattern laid = LevelInSizes.everywhere(placed, "bust", Optional.of("8"));
        for (String size : SIZES) {
            Piece front = laid.piece("Front " + size).orElseThrow();
            assertThat(at(laid, front.id(), "bust").y())
                    .isCloseTo(front.outline().segments().get(2).start().y(), within(1e-9));
            assertThat(laid.piece("Back " + size).orElseThrow().levels()).isEmpty();
        }
    }

    @Test
    void elsewhereItLiesAsFarBelowTheTopInEverySizeAndCanBeLaidAnew() throws Exception {
        Random random = new Random(20261127);
        for (int round = 0; round < 40; round++) {
            Pattern bare = bodices(random);
            String from = SIZES.get(random.nextInt(SIZES.size()));
            double down = 210 + 200 * random.nextDouble();
            Piece front = bare.piece("Front " + from).orElseThrow();
            Point click = new Point(150, front.outline().box().minY() + down);
            Pattern laid = LevelInSizes.everywhere(
                    LevelEdits.place(bare, front.id(), "bust", click), "bust", Optional.of(from));
            for (String size : SIZES) {
                assertThat(LevelEdits.distance(laid.piece("Front " + size).orElseThrow(), "bust")
                                .orElseThrow())
                        .as("from %s in %s", from, size)
                        .isCloseTo(down, within(1e-9));
            }
            Pattern moved = LevelEdits.distance(laid, front.id(), "bust", down + 7);
            assertThat(LevelInSizes.lacking(moved, "bust")).isEmpty();
            assertThat(LevelInSizes.unlike(moved, "bust", Optional.of(from)))
                    .hasSize(3)
                    .doesNotContain(from);
            Pattern anew = LevelInSizes.asIn(moved, "bust", from);
            assertThat(LevelInSizes.unlike(anew, "bust", Optional.of(from))).isEmpty();
            assertThat(at(anew, "Front 8", "bust").y())
                    .isCloseTo(at(laid, "Front 8", "bust").y() + 7, within(1e-9));
        }
    }

    /** The waist of the back of each size rises otherwise, so that the same distance would miss at the seam. */
    @Test
    void whatMeetsAtTheSeamInOneSizeMeetsInTheOthers() throws Exception {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='2000mm' viewBox='0 0 900 2000'>");
        List<String> sizes = List.of("38", "40", "42");
        for (int i = 0; i < sizes.size(); i++) {
            double top = 100 + 600 * i;
            double rise = 10 + 8 * i;
            double wide = 200 + 10 * i;
            svg.append("<path id='Front " + sizes.get(i) + "' d='M100," + top + " H" + (100 + wide) + " V" + (top + 400)
                    + " H100 Z'/><path id='Back " + sizes.get(i) + "' d='M500," + (top - rise) + " L" + (500 + wide)
                    + ","
                    + top + " V" + (top + 400) + " H500 Z'/>");
        }
        Bare bare = Bare.of(svg.append("</svg>").toString());
        Pattern pattern = bare.session.desk().pattern();
        for (String size : sizes) {
            for (String id : List.of("Front " + size, "Back " + size)) {
                for (int corner = 0; corner < 4; corner++) {
                    pattern = EdgeEdits.split(
                            pattern,
                            id,
                            bare.piece(id).outline().segments().get(corner).start());
                }
                pattern = PieceEdits.size(pattern, id, size);
            }
            double x = 200 + 10 * sizes.indexOf(size);
            double y = 300 + 600 * sizes.indexOf(size);
            pattern = MateEdits.sew(
                    pattern, edge(pattern, "Front " + size, 100 + x, y), edge(pattern, "Back " + size, 500 + x, y));
        }
        pattern = LevelEdits.add(pattern, "hip", LevelKind.HIP);
        pattern = LevelEdits.place(pattern, "Front 38", "hip", new Point(150, 300));
        pattern = LevelEdits.place(pattern, "Back 38", "hip", new Point(550, 300));
        Pattern laid = LevelInSizes.everywhere(pattern, "hip", Optional.of("38"));
        assertThat(LevelMeetings.meetings(laid, Measures.of(laid), "hip"))
                .hasSize(3)
                .noneMatch(LevelSeams.Meeting::isApart);
        // One that misses there is left for the user to judge.
        Pattern apart = LevelEdits.place(pattern, "Back 38", "hip", new Point(550, 330));
        Pattern laidApart = LevelInSizes.everywhere(apart, "hip", Optional.of("38"));
        assertThat(LevelMeetings.meetings(laidApart, Measures.of(laidApart), "hip"))
                .hasSize(3)
                .allMatch(LevelSeams.Meeting::isApart);
    }

    private static EdgeRef edge(Pattern pattern, String piece, double x, double y) {
        return EdgeRef.of(
                piece,
                EdgeEdits.at(pattern.piece(piece).orElseThrow(), new Point(x, y))
                        .orElseThrow()
                        .name());
    }

    @Test
    void oneClickIsFollowedByOnePressForAllSizes() throws Exception {
        Bare bare = Bare.of(Samples.files().get("skirt-sizes.svg"));
        bare.session.edit(LevelEdits.add(bare.session.desk().pattern(), "high hip", LevelKind.HIGH_HIP));
        bare.marker.go(MarkState.Step.LEVELS);
        bare.marker.takeLevel("high hip");
        assertThat(LevelElsewhere.ofPlaced(bare.session.desk(), "high hip").isOffered())
                .as("nothing yet to go by")
                .isFalse();
        bare.marker.click(new Point(550, 240), 0);
        LevelElsewhere sizes = LevelElsewhere.ofPlaced(bare.session.desk(), "high hip");
        assertThat(sizes.isOffered()).isTrue();
        assertThat(sizes.press(bare.session.desk().words())).isEqualTo("Put it in every size");
        bare.marker.tryTo(sizes::of);
        Pattern now = bare.session.desk().pattern();
        assertThat(now.pieces().stream().filter(p -> p.level("high hip").isPresent()))
                .extracting(Piece::name)
                .containsExactly("Front 10", "Front 12", "Front 14");
        assertThat(LevelElsewhere.ofPlaced(bare.session.desk(), "high hip").isOffered())
                .isFalse();
        bare.session.undo();
        assertThat(LevelInSizes.lacking(bare.session.desk().pattern(), "high hip"))
                .containsExactly("12", "14");
    }
}
