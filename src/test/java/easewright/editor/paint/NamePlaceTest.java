package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Grain;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class NamePlaceTest {
    private static final Outline SHEET =
            Outline.polygon(List.of(new Point(0, 0), new Point(400, 0), new Point(400, 600), new Point(0, 600)));

    @Test
    void keepsAwayFromTheGrainAndTheLevels() {
        Piece piece = Piece.bare("sheet", SHEET).toBuilder()
                .grain(new Grain(new Point(200, 20), new Point(200, 580)))
                .build();
        NamePlace place = NamePlace.on(piece, List.of(new Line(new Point(0, 300), new Point(400, 300))));
        assertThat(Math.abs(place.at().x() - 200)).isEqualTo(100);
        assertThat(Math.abs(place.at().y() - 300)).isGreaterThan(50);
        assertThat(place.width()).isEqualTo(200);
    }

    @Test
    void liesInsideEveryPieceOfTheSamples() throws Exception {
        for (var draft : Samples.drafts()) {
            byte[] svg = Samples.svg(draft.draft()).getBytes(StandardCharsets.UTF_8);
            for (Piece piece : SvgFile.read(svg, "sample").pattern().pieces()) {
                NamePlace place = NamePlace.on(piece, List.of());
                assertThat(piece.outline().contains(place.at()))
                        .as(piece.name())
                        .isTrue();
                assertThat(place.width()).isPositive();
            }
        }
    }
}
