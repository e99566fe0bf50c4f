package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What no longer fits its seam is marked along that seam: a dart cut out of it is sewn to itself. */
class ZigzagBesideDartsTest {
    private static final double NEAR = 0.5;

    private final Session session = new Session(LengthUnit.CM, false);

    @Test
    void noLegOfACutOutDartIsMarked() throws Exception {
        String skirt = Files.readString(Path.of("sample-pieces/skirt.svg"));
        String cut = skirt.replace("L133.3868,133.6188 L144.4064,133.4435", "L140.0126,272.3406 L144.4064,133.4435");
        assertThat(cut).as("the dart is drawn where it is looked for").isNotEqualTo(skirt);
        session.open(OpenedSample.drawn(cut, "skirt.svg"));
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));

        Piece back = session.desk().shown().pieces().stream()
                .filter(p -> p.id().equals("skirt-back"))
                .findFirst()
                .orElseThrow();
        Dart dart = back.darts().get(0);
        List<Segment> waist =
                back.edge("waist").orElseThrow().on(back.outline()).segments();
        assertThat(waist).as("legs are part of the edge").anyMatch(s -> touches(s, dart.point()));
        List<List<Segment>> marked = new TableScenes()
                .of(session.desk()).pieces().stream()
                        .flatMap(p -> p.trial().drifts().stream())
                        .toList();
        assertThat(marked.stream().flatMap(List::stream)).noneMatch(s -> touches(s, dart.point()));
        // All the rest of the waist is marked.
        assertThat(marked.stream().flatMap(List::stream))
                .containsAll(
                        waist.stream().filter(s -> !touches(s, dart.point())).toList());
    }

    private static boolean touches(Segment segment, Point point) {
        return segment.start().distance(point) < NEAR || segment.end().distance(point) < NEAR;
    }
}
