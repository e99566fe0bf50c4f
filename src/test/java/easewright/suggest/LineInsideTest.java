package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.topology.CutAround;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A stitching line inside a cutting line, with darts cut into it or drawn by themselves. */
class LineInsideTest {
    private static Suggestions suggestions(SvgFile file) {
        Pattern pattern = file.pattern();
        return Suggestions.of(
                new Sheet(pattern, file.loose(pattern), file.texts(), file.layerNames(pattern)), Set.of());
    }

    static Suggestions onSheet(String body) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='800mm' viewBox='0 0 900 800'>"
                + body + "</svg>";
        return suggestions(SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "sheet.svg"));
    }

    private static List<Suggestion> lines(Suggestions suggestions) {
        return suggestions.all().stream()
                .filter(s -> s.kind() == Suggestion.Kind.STITCHING_LINE)
                .toList();
    }

    /** A skirt drawn by hand whose cutting line runs across the mouth of the dart, and its like; only the front has one. */
    @ParameterizedTest
    @ValueSource(strings = {"dart-cut-in", "dart-cut-in-exact", "no-dart", "no-dart-exact", "dart-as-line"})
    void aSkirtWithAnAllowanceAroundItsFront(String name) throws SvgProblem {
        SvgFile file = SvgFile.read(Path.of("src/test/resources/lines", name + ".svg"));
        Suggestions suggestions = suggestions(file);
        assertThat(lines(suggestions)).hasSize(1);
        Pattern pattern = suggestions.outcome();
        Piece front = pattern.piece("Skirt front").orElseThrow();
        assertThat(front.outline().box().width()).as("the inner line").isCloseTo(260, within(0.01));
        assertThat(front.allowance()).isCloseTo(10, within(1.0));
        assertThat(front.onFold()).isTrue();
        assertThat(front.darts()).extracting(Dart::intake).hasSize(name.contains("no-dart") ? 0 : 1);
        assertThat(front.riders())
                .filteredOn(r -> r.kind() == Rider.Kind.PARALLEL)
                .hasSize(1);
        assertThat(pattern.piece("Skirt back").orElseThrow().allowance()).isZero();
        assertThat(pattern.mates()).extracting(Mate::name).contains("side seam", "waistband");
        assertThat(SvgFile.read(file.write(pattern), "saved.svg").pattern()).isEqualTo(pattern);
    }

    /** A half of a skirt as it is drawn, with what it was drawn from. */
    private record Half(
            String body, int darts, double waist, double side, double hem, double centre, double off, String told) {}

    static String path(String id, List<Point> points) {
        StringBuilder d = new StringBuilder("<path id='" + id + "' d='");
        for (int i = 0; i < points.size(); i++) {
            d.append(String.format(
                    Locale.ROOT,
                    "%s%.3f,%.3f ",
                    i == 0 ? "M" : "L",
                    points.get(i).x(),
                    points.get(i).y()));
        }
        return d + "Z' fill='none' stroke='black'/>";
    }

    static List<Half> halves() {
        return IntStream.range(0, 60).mapToObj(LineInsideTest::half).toList();
    }

    /**
     * The waist and the side curve; darts are cut into the waist; the cutting line runs across their mouths or, at every
     * third, round what is folded there, and shakes as a hand does.
     */
    private static Half half(int seed) {
        Random random = new Random(seed);
        double left = 60 + random.nextDouble() * 40;
        double top = 80 + random.nextDouble() * 20;
        double wide = 170 + random.nextDouble() * 90;
        double rise = 8 + random.nextDouble() * 14;
        double tall = 350 + random.nextDouble() * 280;
        double flare = 20 + random.nextDouble() * 50;
        int darts = random.nextInt(3);
        boolean fold = random.nextBoolean();
        double waist = 6 + random.nextDouble() * 9;
        double side = 10 + random.nextDouble() * 10;
        double hem = 20 + random.nextDouble() * 25;
        double centre = fold ? 0 : 12 + random.nextDouble() * 10;
        double shake = seed % 2 == 0 ? 0 : 0.6;
        boolean caps = seed % 3 == 0;
        List<Point> sewn = new ArrayList<>();
        List<Point> closed = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        List<Integer> mouths = new ArrayList<>();
        double mouth = 14 + random.nextDouble() * 14;
        double depth = 80 + random.nextDouble() * 50;
        int steps = 24;
        for (int i = 0; i < steps; i++) {
            double x = wide * i / steps;
            Point p = new Point(left + x, top - rise * x * x / wide / wide);
            closed.add(p);
            sewn.add(p);
            widths.add(waist);
            boolean tip = darts == 1 && i == 11 || darts == 2 && (i == 7 || i == 15);
            if (tip) {
                mouths.add(closed.size());
                sewn.add(p.plus(new Point(mouth / 2, depth)));
                Point end = new Point(p.x() + mouth, p.y() - 1);
                closed.add(end);
                sewn.add(end);
                widths.add(waist);
                i += (int) Math.ceil(mouth / (wide / steps));
            }
        }
        for (int i = 0; i < steps; i++) {
            double t = (double) i / steps;
            Point p = new Point(
                    left + wide + flare * Math.sin(Math.min(1, 2.2 * t) * Math.PI / 2), top - rise + (tall + rise) * t);
            closed.add(p);
            sewn.add(p);
            widths.add(side);
        }
        for (Point p : List.of(new Point(left + wide + flare, top + tall), new Point(left, top + tall))) {
            closed.add(p);
            sewn.add(p);
        }
        widths.add(hem);
        widths.add(centre);
        List<Point> cut = around(closed, widths);
        for (int i = 0; caps && i < mouths.size(); i++) {
            Point at = closed.get(mouths.get(i)).plus(new Point(-mouth / 2, -waist - mouth / 4));
            int after = 0;
            while (!(cut.get(after).x() > at.x() && cut.get(after).y() < top + 5)) {
                after++;
            }
            cut.add(after, at);
        }
        List<Point> shaken = cut.stream()
                .map(p -> p.plus(new Point(
                        fold && p.x() < left + 0.01 ? 0 : shake * random.nextGaussian(),
                        shake * random.nextGaussian())))
                .toList();
        boolean innerFirst = random.nextBoolean();
        String a = path("outer", shaken);
        String b = path("inner", sewn);
        String words = "<text x='%.1f' y='%.1f' font-size='14'>Skirt %s<tspan x='%.1f' dy='18'>cut %s</tspan></text>"
                .formatted(
                        left + wide / 2,
                        top + tall * 0.7,
                        fold ? "front" : "back",
                        left + wide / 2,
                        fold ? "1 on fold" : "2");
        return new Half(
                (innerFirst ? b + a : a + b) + words,
                darts,
                waist,
                side,
                hem,
                centre,
                shake == 0 ? 0.3 : 2,
                "seed " + seed + (caps ? ", folds of darts" : ""));
    }

    private static List<Point> around(List<Point> closed, List<Double> widths) {
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < closed.size(); i++) {
            segments.add(new Line(closed.get(i), closed.get((i + 1) % closed.size())));
        }
        boolean[] hems = new boolean[widths.size()];
        Outline outline = CutAround.of(
                        new Outline(segments),
                        widths.stream().mapToDouble(w -> w).toArray(),
                        hems)
                .map(CutAround::straight)
                .orElseThrow();
        return new ArrayList<>(outline.segments().stream().map(s -> s.start()).toList());
    }

    /** Each edge has its own allowance, and none on the fold, where both are one line. */
    @ParameterizedTest
    @MethodSource("halves")
    void theInnerLineIsSewnWhateverIsCutIntoIt(Half half) throws SvgProblem {
        Suggestions suggestions = onSheet(half.body());
        assertThat(lines(suggestions)).as(half.told()).hasSize(1);
        Piece piece = suggestions.outcome().pieces().get(0);
        assertThat(piece.id()).isEqualTo("inner");
        assertThat(piece.darts()).as(half.told()).hasSize(half.darts());
        assertThat(piece.edges()).as(half.told()).hasSize(4);
        allowancesAreAsDrawn(piece, half);
        assertThat(piece.edges()).extracting(Edge::role).contains(EdgeRole.WAIST, EdgeRole.HEM, EdgeRole.SEAM);
        saysBetweenWhat(half, (StitchingLine) lines(suggestions).get(0));
        if (half.off() < 1) {
            assertThat(edges(suggestions).reason().code()).as(half.told()).isEqualTo("corners");
        }
    }

    /** One figure is told only where it holds for every edge but a fold, which has none. */
    private static void saysBetweenWhat(Half half, StitchingLine line) {
        DoubleSummaryStatistics drawn = DoubleStream.of(half.waist(), half.side(), half.hem(), half.centre())
                .filter(mm -> mm > 0)
                .summaryStatistics();
        assertThat(line.isByEdge()).as(half.told()).isEqualTo(drawn.getMax() - drawn.getMin() > 2);
        assertThat(line.reason().code().endsWith("-by-edge"))
                .as("evenly all round or along each edge alone: " + half.told())
                .isEqualTo(line.isByEdge());
        if (line.isByEdge()) {
            assertThat((double) line.values().get("low")).as(half.told()).isCloseTo(drawn.getMin(), within(half.off()));
            assertThat((double) line.values().get("high"))
                    .as(half.told())
                    .isCloseTo(drawn.getMax(), within(half.off()));
        } else {
            assertThat(line.values()).containsOnlyKeys("allowance");
        }
    }

    private static void allowancesAreAsDrawn(Piece piece, Half half) {
        for (Edge edge : piece.edges()) {
            double drawn = switch (edge.role()) {
                case WAIST -> half.waist();
                case HEM -> half.hem();
                case SEAM -> half.side();
                default -> half.centre();
            };
            assertThat(edge.allowance().orElse(piece.allowance()))
                    .as(half.told() + " " + edge.name())
                    .isCloseTo(drawn, within(half.off()));
        }
    }

    /** What is suggested for one of the halves. */
    static Suggestions made(Object half) throws SvgProblem {
        return onSheet(((Half) half).body());
    }

    static List<Half> onTheFold() {
        return halves().stream().filter(h -> h.centre() == 0).toList();
    }

    /** As it is mostly drawn: there is no allowance on the fold, so the line that is sewn ends there. */
    @ParameterizedTest
    @MethodSource("onTheFold")
    void theInnerLineMayEndOnTheFold(Half half) throws SvgProblem {
        Suggestions suggestions = onSheet(half.body().replaceAll("(<path id='inner' d='[^']*?)\\s*Z'", "$1'"));
        assertThat(lines(suggestions)).as(half.told()).hasSize(1);
        assertThat(lines(suggestions).get(0).reason().code()).startsWith("line-inside-to-outline");
        Piece piece = suggestions.outcome().pieces().get(0);
        assertThat(piece.id()).isEqualTo("outer");
        assertThat(piece.drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(piece.onFold()).isTrue();
        assertThat(piece.darts()).as(half.told()).hasSize(half.darts());
        assertThat(piece.riders())
                .filteredOn(r -> r.kind() == Rider.Kind.PARALLEL)
                .extracting(Rider::id)
                .containsExactly("inner");
        allowancesAreAsDrawn(piece, half);
    }

    /** What lies inside at no even distance is no stitching line: a lining drawn askew, a facing that follows one edge. */
    @Test
    void aLineAtManyDistancesIsNone() throws SvgProblem {
        String outer = "<path id='outer' d='M100,100 L330,80 L380,300 L400,700 L100,700 Z'/>";
        assertThat(lines(onSheet(outer + "<path d='M105,130 L300,90 L352,310 L330,690 L108,650 Z'/>")))
                .isEmpty();
        assertThat(lines(onSheet(outer + "<path d='M100,100 L330,80 L380,300 L386,420 L100,420 Z'/>")))
                .isEmpty();
    }

    static Suggestion edges(Suggestions suggestions) {
        return suggestions.all().stream()
                .filter(s -> s.kind() == Suggestion.Kind.EDGES)
                .findFirst()
                .orElseThrow();
    }
}
