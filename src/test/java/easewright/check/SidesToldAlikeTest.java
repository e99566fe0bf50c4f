package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Alteration;
import easewright.alter.LengthReader;
import easewright.alter.Scope;
import easewright.alter.SettingText;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.alter.Within;
import easewright.ease.EaseTables;
import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Scale;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Of a change on one side the same is told whichever side it is, though the one is the drawn piece and the other a copy
 * that lies elsewhere and the other way round.
 */
class SidesToldAlikeTest {
    private static final LengthReader<RuntimeException> MM = Double::parseDouble;

    private static Pattern sample(String name) throws Exception {
        return SvgFile.read(Path.of("sample-pieces", name + ".svg")).pattern();
    }

    private static List<String> told(Pattern before, Alteration change, Side side) throws Exception {
        Pattern after = Within.of(new Scope(Optional.empty(), side), change)
                .apply(before)
                .pattern();
        String word = side.name().toLowerCase(Locale.ROOT);
        String other = side.other().name().toLowerCase(Locale.ROOT);
        return Checks.compare(before, Measures.of(before), after, Measures.of(after), EaseTables.standard()).stream()
                // Where the copy is laid decides what it lies over, and which half was drawn which comes first of both.
                .filter(f -> !f.code().matches("piece-over-piece|mate-mismatch|sides-parted.*"))
                .map(f -> said(f).replaceAll("(?i)\\b" + word + "\\b", "this")
                        .replaceAll("(?i)\\b" + other + "\\b", "other"))
                .sorted()
                .toList();
    }

    /** To the thousandth of a millimetre, with the names in lists in no order. */
    private static String said(Finding finding) {
        Map<String, String> values = new TreeMap<>();
        finding.values().forEach((key, value) -> values.put(key, said(value)));
        // The place that is pointed at lies on the side that is meant.
        values.keySet().removeAll(Set.of("x", "y"));
        return finding.severity() + " " + finding.code() + " " + finding.piece() + " " + values;
    }

    private static String said(Object value) {
        if (value instanceof Double number) {
            return String.format(Locale.ROOT, "%.3f", number + 0.0).replace("-0.000", "0.000");
        }
        return value instanceof List<?> list
                ? new TreeSet<>(list.stream().map(SidesToldAlikeTest::said).toList()).toString()
                : String.valueOf(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "protected-edge-changed|bodice|edge-length|edge=front/armhole how=at-ends accept-protected=yes by=10",
                "edge-out-of-proportion|skirt|lengthen|level=hip below=60 by=1200",
                "girth-out-of-proportion|skirt|seam|level=hip by=600",
            })
    void whatIsToldOfTheDrawnSideIsToldOfTheOther(String code, String sample, String method, String settings)
            throws Exception {
        Pattern before = sample(sample);
        Way way = Ways.of(method).orElseThrow();
        Map<String, List<String>> texts = new HashMap<>();
        for (String each : settings.split(" ")) {
            String[] parts = each.split("=");
            texts.computeIfAbsent(parts[0].equals("by") ? way.amount() : parts[0], k -> new ArrayList<>())
                    .add(parts[1]);
        }
        Alteration change = way.from(SettingText.read(way, texts, before, MM));
        List<String> left = told(before, change, Side.LEFT);
        assertThat(left).isEqualTo(told(before, change, Side.RIGHT)).anyMatch(f -> f.contains(" " + code + " "));
    }

    /** A front on the fold that reaches so far from it, with a dart whose point is as far from it as said. */
    private static Piece front(double past, double dart) {
        Outline outline = Outline.polygon(List.of(
                new Point(0, 0), new Point(200, 0), new Point(200, 300), new Point(-past, 150), new Point(0, 300)));
        return Piece.bare("front", outline).toBuilder()
                .edges(List.of(new Edge(
                        "fold", EdgeRole.FOLD, new Point(0, 300), new Point(0, 0), false, OptionalDouble.empty())))
                .darts(List.of(new Dart(
                        "d",
                        new Point(90, 0),
                        new Point(110, 0),
                        new Point(dart, 80),
                        Optional.empty(),
                        Optional.empty())))
                .build();
    }

    @Test
    void aDartAndTheCentreOfTheCopyAreLookedAt() {
        Scale scale = new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE);
        PieceCopy mirror = new PieceCopy(
                p -> new Point(900 - p.x(), p.y()),
                s -> s.transformed(Affine.translation(900, 0).after(Affine.scaling(-1, 1))),
                true);
        Pattern before = Pattern.bare(List.of(front(-100, 100)), scale);
        Piece drawn = front(-100, 100).toBuilder().side(Side.RIGHT).build();
        for (boolean spoiled : List.of(false, true)) {
            Piece copy = mirror.of(spoiled ? front(20, 230) : drawn, PieceCopy.ending(Side.LEFT)).toBuilder()
                    .side(Side.LEFT)
                    .build();
            Pattern after = Pattern.bare(List.of(drawn, copy), scale);
            assertThat(
                            Checks.compare(
                                            before,
                                            Measures.of(before),
                                            after,
                                            Measures.of(after),
                                            EaseTables.standard())
                                    .stream()
                                    .map(Finding::code)
                                    .filter(Set.of("dart-point-outside", "piece-past-centre")::contains))
                    .hasSize(spoiled ? 2 : 0);
        }
    }
}
