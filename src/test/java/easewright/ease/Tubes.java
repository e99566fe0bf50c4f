package easewright.ease;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Cloth;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;

/** The plainest garment: a tube with one level, L. */
public final class Tubes {
    private Tubes() {}

    /** A tube of the given girth: a front and a back, each on the fold. */
    public static Pattern tube(LevelKind kind, double girth, double body, Cloth cloth) {
        Outline half = Outline.polygon(
                List.of(new Point(0, 0), new Point(girth / 4, 0), new Point(girth / 4, 300), new Point(0, 300)));
        Piece front =
                Piece.bare("front", half).withLevels(List.of(LevelMark.through("L", new Point(10, 100)))).toBuilder()
                        .cut(1, true)
                        .build();
        Piece back = Piece.bare("back", half).withLevels(front.levels()).toBuilder()
                .cut(1, true)
                .build();
        return Pattern.bare(List.of(front, back), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(new Level("L", kind, false)))
                .withBody(new Body("test", List.of(new BodyMeasure("Girth", "L", body, ""))))
                .withCloth(cloth);
    }
}
