package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.topology.Validity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The promises of every alteration, held by darts on random pieces; each case is named by its seed. */
class DartPropertiesTest {
    private static final List<Level> LEVELS =
            List.of(Level.of("level", LevelKind.HIP), Level.of("top", LevelKind.WAIST));

    /** A random piece with a dart in its top edge: flat, capped or cut out. */
    private static Piece piece(RandomCloth random) {
        Piece bare = random.piece("cloth").toBuilder()
                .darts(List.of())
                .notches(List.of())
                .build();
        Segment top = bare.outline().segments().get(0);
        double at = random.between(0.3, 0.6);
        Point one = top.at(at);
        Point two = top.at(at + random.between(0.06, 0.18));
        Point aside = two.minus(one).unit().quarterTurned();
        Point point = one.towards(two, random.between(0.4, 0.6)).plus(aside.times(random.between(60, 130)));
        Dart dart = new Dart("dart", one, two, point, Optional.empty(), Optional.of("top"));
        double manner = random.between(0, 3);
        Outline outline = bare.outline();
        if (manner > 1) {
            outline = outline.splitAt(outline.nearest(one).place());
            outline = outline.splitAt(outline.nearest(two).place());
            Point middle = manner > 2 ? point : one.towards(two, 0.5).minus(aside.times(random.between(1.5, 4)));
            List<Segment> segments = new ArrayList<>(outline.segments());
            segments.remove(1);
            Point first = segments.get(0).end();
            Point second = segments.get(1).start();
            segments.add(1, new Line(middle, second));
            segments.add(1, new Line(first, middle));
            outline = new Outline(segments);
            dart = new Dart("dart", first, second, point, Optional.empty(), Optional.of("top"));
        }
        return bare.toBuilder().outline(outline).darts(List.of(dart)).build();
    }

    private static void forAll(long firstSeed, int asked, Cases.Property<Alteration> property) throws Refusal {
        Cases.all(firstSeed, asked, DartPropertiesTest::oneOf, property);
    }

    private static Cases.Case<Alteration> oneOf(long seed) {
        RandomCloth random = new RandomCloth(seed);
        Pattern before = pattern(LEVELS, piece(random));
        double amount = random.between(-25, 18);
        return new Cases.Case<>(
                before, random.chance(0.75) ? DartIntake.at("top", amount) : DartToSeam.at("top", amount / 2));
    }

    @Test
    void girthChangesByTheAmountAskedForAndLegsKeepTheirDifference() throws Refusal {
        Worst girth = new Worst("darts, girth, mm");
        Worst legs = new Worst("darts, difference of the legs, mm");
        forAll(1, 1500, (seed, before, change, after) -> {
            boolean inDarts = change instanceof DartIntake;
            double wanted = change instanceof DartIntake dart ? dart.amount() : 0;
            double miss = girth(after.pattern(), "top") - girth(before, "top") - wanted;
            girth.meet(seed, Math.abs(miss));
            if (inDarts) {
                legs.meet(seed, Math.abs(difference(after.pattern()) - difference(before)));
            }
            assertThat(Validity.isSimple(after.pattern().pieces().get(0).outline()))
                    .as("seed %d", seed)
                    .isTrue();
        });
        girth.within(1e-6);
        legs.within(1e-7);
    }

    private static double difference(Pattern pattern) {
        DartFold fold = DartFold.of(pattern.pieces().get(0).darts().get(0));
        return fold.leg1() - fold.leg2();
    }

    @Test
    void thereAndBackRestoresOutlineAndDart() throws Refusal {
        Worst worst = new Worst("darts there and back, mm");
        forAll(20_001, 1000, (seed, before, change, after) -> {
            Pattern back =
                    change.opposite().orElseThrow().apply(after.pattern()).pattern();
            Piece was = before.pieces().get(0);
            Piece is = back.pieces().get(0);
            for (Segment s : is.outline().segments()) {
                for (int i = 0; i < 6; i++) {
                    worst.meet(seed, was.outline().nearest(s.at(i / 6.0)).distance());
                }
            }
            worst.meet(
                    seed, is.darts().get(0).mouth1().distance(was.darts().get(0).mouth1()));
            worst.meet(
                    seed, is.darts().get(0).mouth2().distance(was.darts().get(0).mouth2()));
            assertThat(change.withAmount(0).apply(before).pattern()).isSameAs(before);
            assertThat(Ways.from(change.note())).isEqualTo(change);
        });
        worst.within(1e-6);
    }

    @Test
    void theRestOfTheOutlineIsTheSame() throws Refusal {
        forAll(40_001, 500, (seed, before, change, after) -> {
            List<Segment> was = before.pieces().get(0).outline().segments();
            List<Segment> is = after.pattern().pieces().get(0).outline().segments();
            assertThat(is.get(is.size() - 1)).as("seed %d", seed).isSameAs(was.get(was.size() - 1));
            if (change instanceof DartIntake) {
                int side = was.size() == is.size() ? 4 : 1;
                for (int k = 1; k <= was.size() - Math.max(side, 4); k++) {
                    assertThat(is.get(is.size() - k)).as("seed %d", seed).isSameAs(was.get(was.size() - k));
                }
            }
        });
    }

    @Test
    void turningAndMirroringTheSheetChangesNothing() throws Refusal {
        forAll(60_001, 400, (seed, before, change, after) -> {
            Affine map = new RandomCloth(-seed).sheet(3);
            Pattern mapped = pattern(LEVELS, RandomCloth.mapped(before.pieces().get(0), map));
            Outline is = change.apply(mapped).pattern().pieces().get(0).outline();
            Outline wanted = after.pattern().pieces().get(0).outline().transformed(map);
            assertThat(Worst.apart(is, wanted)).as("seed %d", seed).isLessThan(1e-6);
        });
    }

    @Test
    void smallAmountsAreNearlyLinear() throws Refusal {
        forAll(80_001, 200, (seed, before, change, after) -> {
            Point none = before.pieces().get(0).darts().get(0).mouth1();
            Point one = mouth(change.withAmount(0.02).apply(before));
            Point two = mouth(change.withAmount(0.04).apply(before));
            assertThat(two.minus(none).minus(one.minus(none).times(2)).norm())
                    .as("seed %d", seed)
                    .isCloseTo(0, within(1e-4));
        });
    }

    private static Point mouth(Altered altered) {
        return altered.pattern().pieces().get(0).darts().get(0).mouth1();
    }
}
