package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Promises of design section 3 on random pieces; each case is named by its seed. */
class SeamChangePropertiesTest {
    private static final List<Level> LEVELS =
            List.of(Level.of("level", LevelKind.HIP), Level.of("top", LevelKind.WAIST));
    private static final int CASES = 3000;

    private static void forAll(long firstSeed, int asked, double cutting, Cases.Property<SeamChange> property)
            throws Refusal {
        Cases.all(firstSeed, asked, seed -> oneOf(seed, cutting), property);
    }

    private static Cases.Case<SeamChange> oneOf(long seed, double cutting) {
        RandomCloth random = new RandomCloth(seed);
        Piece piece = random.piece("cloth", cutting);
        SeamChange change = SeamChange.at(random.chance(0.7) ? "level" : "top", random.between(-60, 80))
                .withTaper(random.chance(0.5) ? Taper.SMOOTH : Taper.STRAIGHT);
        return new Cases.Case<>(pattern(LEVELS, piece), random.chance(0.3) ? change.carriedToHem() : change);
    }

    @Test
    void girthChangesByTheAmountAskedFor() throws Refusal {
        double[] worst = new double[1];
        forAll(1, CASES, 0, (seed, before, change, after) -> {
            double miss = girth(after.pattern(), change.level()) - girth(before, change.level()) - change.amount();
            worst[0] = Math.max(worst[0], Math.abs(miss));
            assertThat(miss).as("seed %d", seed).isCloseTo(0, within(0.01));
        });
        assertThat(worst[0]).isLessThan(1e-6);
    }

    @Test
    void stitchedGirthOfCuttingLinesToo() throws Refusal {
        forAll(50_001, 400, 1, (seed, before, change, after) -> {
            double miss = girth(after.pattern(), change.level()) - girth(before, change.level()) - change.amount();
            assertThat(miss).as("seed %d", seed).isCloseTo(0, within(0.01));
        });
    }

    @Test
    void whatLiesOutsideTheMovedRunsIsTheSame() throws Refusal {
        forAll(100_001, CASES, 0, (seed, before, change, after) -> {
            Piece was = before.pieces().get(0);
            Piece is = after.pattern().pieces().get(0);
            Set<Segment> old = Collections.newSetFromMap(new IdentityHashMap<>());
            old.addAll(was.outline().segments());
            for (Segment s : is.outline().segments()) {
                boolean moved = after.moved().stream()
                        .anyMatch(m -> m.after().segments().contains(s));
                // Cut at a fixed point a segment becomes two; what is left of it lies where it lay.
                assertThat(moved || old.contains(s) || liesOn(s, was.outline()))
                        .as("seed %d", seed)
                        .isTrue();
            }
            assertThat(old)
                    .as("seed %d", seed)
                    .contains(
                            is.outline().segments().get(is.outline().segments().size() - 1));
            assertThat(is.darts()).as("seed %d", seed).isEqualTo(was.darts());
            assertThat(is.levels()).isEqualTo(was.levels());
            assertThat(is.edge("fold")).isEqualTo(was.edge("fold"));
        });
    }

    private static boolean liesOn(Segment s, Outline outline) {
        for (int i = 0; i <= 8; i++) {
            if (outline.nearest(s.at(i / 8.0)).distance() > 1e-9) {
                return false;
            }
        }
        return true;
    }

    @Test
    void thereAndBackRestoresTheOutline() throws Refusal {
        double[] worst = new double[1];
        forAll(200_001, 1000, 0, (seed, before, change, after) -> {
            Pattern back =
                    change.withAmount(-change.amount()).apply(after.pattern()).pattern();
            Outline was = before.pieces().get(0).outline();
            worst[0] = Math.max(worst[0], Worst.apart(back.pieces().get(0).outline(), was));
            assertThat(worst[0]).as("seed %d", seed).isLessThan(1e-6);
            assertThat(change.withAmount(0).apply(before).pattern()).isSameAs(before);
        });
    }

    @Test
    void turningAndMirroringTheSheetChangesNothing() throws Refusal {
        forAll(300_001, 1000, 0, (seed, before, change, after) -> {
            Affine map = new RandomCloth(-seed).sheet(3);
            Piece piece = before.pieces().get(0);
            Pattern mapped = pattern(LEVELS, RandomCloth.mapped(piece, map));
            Outline there = change.apply(mapped).pattern().pieces().get(0).outline();
            Outline here = after.pattern().pieces().get(0).outline().transformed(map);
            assertThat(there.segments()).as("seed %d", seed).hasSameSizeAs(here.segments());
            assertThat(Worst.apart(there, here)).as("seed %d", seed).isLessThan(1e-6);
        });
    }

    @Test
    void everyResultEnclosesClothWithoutCrossingItself() throws Refusal {
        forAll(400_001, 1000, 0, (seed, before, change, after) -> {
            Outline outline = after.pattern().pieces().get(0).outline();
            List<Segment> all = outline.segments();
            for (int i = 0; i < all.size(); i++) {
                for (int j = i + 2; j < all.size(); j++) {
                    boolean neighbours = i == 0 && j == all.size() - 1;
                    assertThat(!neighbours && meet(all.get(i), all.get(j)))
                            .as("seed %d: %d and %d", seed, i, j)
                            .isFalse();
                }
            }
        });
    }

    /** Brute force: chords of 1/32 of each segment. */
    private static boolean meet(Segment one, Segment other) {
        int n = 32;
        for (int i = 0; i < n; i++) {
            Point a = one.at(i / (double) n);
            Point b = one.at((i + 1) / (double) n);
            for (int j = 0; j < n; j++) {
                Point c = other.at(j / (double) n);
                Point d = other.at((j + 1) / (double) n);
                double ab = b.minus(a).cross(c.minus(a)) * b.minus(a).cross(d.minus(a));
                double cd = d.minus(c).cross(a.minus(c)) * d.minus(c).cross(b.minus(c));
                if (ab < 0 && cd < 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
