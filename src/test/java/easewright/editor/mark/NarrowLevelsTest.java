package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** An overlap is taken for every level that comes to the same opening, and for no other, whatever part of a piece it crosses. */
class NarrowLevelsTest {
    private static final double OPENING = 100;

    /**
     * A front that opens at its left edge from the neck down; it hooks under the arm in some, so that a level crosses it in
     * two stretches, and runs out to a narrow hem in others.
     */
    private record Front(List<Point> corners) {
        static Front any(Random random) {
            double neck = 150 + 100 * random.nextDouble();
            double across = 40 + 30 * random.nextDouble();
            double shoulder = across + 60 + 40 * random.nextDouble();
            double armhole = across + 20 + 30 * random.nextDouble();
            double deep = 260 + 60 * random.nextDouble();
            double arm = deep - 60 + 120 * random.nextDouble();
            double hem = 3 + (random.nextBoolean() ? 30 : 250) * random.nextDouble();
            return new Front(List.of(
                    new Point(OPENING, neck),
                    new Point(OPENING + across, 100),
                    new Point(OPENING + shoulder, 120),
                    new Point(OPENING + armhole, deep),
                    new Point(300, arm),
                    new Point(OPENING + hem, 500),
                    new Point(OPENING, 500)));
        }

        /** From and to of the stretches at a height, left to right: straight lines are all there is. */
        List<double[]> stretches(double y) {
            List<Double> xs = new ArrayList<>();
            for (int i = 0; i < corners.size(); i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % corners.size());
                if (a.y() < y != b.y() < y) {
                    xs.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
                }
            }
            xs.sort(Double::compare);
            List<double[]> all = new ArrayList<>();
            for (int i = 0; i + 1 < xs.size(); i += 2) {
                all.add(new double[] {xs.get(i), xs.get(i + 1)});
            }
            return all;
        }

        boolean isNearCorner(double y) {
            return corners.stream().anyMatch(c -> Math.abs(c.y() - y) < 2);
        }

        Piece piece(List<LevelMark> levels) {
            return Piece.bare("front", Outline.polygon(corners)).toBuilder()
                    .cut(2, false)
                    .edges(List.of(
                            Edge.of("neck", EdgeRole.NECK, corners.get(0), corners.get(1)),
                            Edge.of("hem", EdgeRole.HEM, corners.get(5), corners.get(6)),
                            Edge.of("front edge", EdgeRole.OPENING, corners.get(6), corners.get(0))))
                    .levels(levels)
                    .build();
        }
    }

    /** A level, and what of the front it crosses. */
    private record Laid(LevelMark mark, double[] stretch) {
        boolean opens() {
            return stretch[0] == OPENING;
        }

        double wide() {
            return stretch[1] - stretch[0];
        }
    }

    private static Laid laid(Front front, String name, Random random) {
        double y;
        do {
            y = 125 + 370 * random.nextDouble();
        } while (front.isNearCorner(y));
        List<double[]> all = front.stretches(y);
        double[] stretch = all.get(random.nextInt(all.size()));
        double x = stretch[0] + (stretch[1] - stretch[0]) * (0.1 + 0.8 * random.nextDouble());
        LevelMark mark = LevelMark.through(name, new Point(x, y));
        return new Laid(random.nextInt(3) == 0 ? mark.withOverlap(1 + random.nextInt(3)) : mark, stretch);
    }

    private static Pattern pattern(Front front, List<Laid> laid) {
        Piece piece = front.piece(laid.stream().map(Laid::mark).toList());
        return Pattern.bare(List.of(piece), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(laid.stream()
                        .map(l -> Level.of(l.mark().level(), LevelKind.OTHER))
                        .toList());
    }

    @Test
    void anOverlapIsTakenWhereTheLevelComesToTheOpeningAndThePieceIsWideEnough() {
        Random random = new Random(31);
        int taken = 0;
        int narrow = 0;
        int elsewhere = 0;
        for (int run = 0; run < 300; run++) {
            Front front = Front.any(random);
            List<Laid> laid = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                laid.add(laid(front, "level " + i, random));
            }
            double overlap = 8 + 40 * random.nextDouble();
            Laid at = laid.stream()
                    .filter(l -> l.opens() && l.wide() > overlap)
                    .findFirst()
                    .orElse(null);
            if (at == null) {
                continue;
            }
            String level = at.mark().level();
            Pattern said = Overlaps.say(pattern(front, laid), "front", level, overlap);
            Pattern every = Overlaps.atEveryLevel(said, "front", level);
            Piece piece = every.piece("front").orElseThrow();
            for (Laid each : laid) {
                LevelMark now = piece.level(each.mark().level()).orElseThrow();
                if (each.opens() && each.wide() > overlap) {
                    assertThat(now.overlap()).as("run %d, %s", run, now).isEqualTo(overlap);
                    taken++;
                } else {
                    assertThat(now).as("run %d", run).isEqualTo(each.mark());
                    narrow += each.opens() ? 1 : 0;
                    elsewhere += each.opens() ? 0 : 1;
                }
                assertThat(Measures.of(every)
                                .girth(each.mark().level())
                                .orElseThrow()
                                .finished())
                        .as("run %d, %s", run, now)
                        .isPositive();
            }
            assertThat(Overlaps.isUnlike(every, piece, piece.level(level).orElseThrow()))
                    .as("nothing more is offered, run %d", run)
                    .isFalse();
        }
        assertThat(taken).isGreaterThan(500);
        assertThat(narrow).isGreaterThan(20);
        assertThat(elsewhere).isGreaterThan(200);
    }

    /** Nor is it taken by the next level that is put on the piece. */
    @Test
    void theNextLevelTakesNoMoreThanThereIs() {
        Random random = new Random(32);
        int narrow = 0;
        for (int run = 0; run < 200; run++) {
            Front front = Front.any(random);
            Laid first = laid(front, "level 0", random);
            Laid next = laid(front, "level 1", random);
            double overlap = 0.9 * first.wide();
            Pattern p = pattern(front, List.of(first, next));
            Piece piece = front.piece(List.of(first.mark().withOverlap(overlap)));
            LevelMark fresh = LevelMark.through("level 1", next.mark().through().orElseThrow());
            LevelMark taken = Overlaps.taken(p.withPieces(List.of(piece)), piece, fresh);
            boolean same = first.opens() && next.opens();
            assertThat(taken.overlapSaid().isPresent()).as("run %d", run).isEqualTo(same && overlap < next.wide());
            narrow += same && overlap >= next.wide() ? 1 : 0;
        }
        assertThat(narrow).isGreaterThan(20);
    }
}
