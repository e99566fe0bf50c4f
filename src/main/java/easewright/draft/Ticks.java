package easewright.draft;

import easewright.geom.Line;
import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;

/** The drawn notches and levels of a piece, as lines that go along with its outline. */
final class Ticks {
    static final String NOTCH = "-notch-";
    static final String LEVEL = "-level-";

    /** Length of a notch's tick, mm. */
    private static final double LENGTH = 5;

    private Ticks() {}

    static List<Rider> of(Piece piece) {
        List<Rider> riders = new ArrayList<>();
        for (int i = 0; i < piece.notches().size(); i++) {
            String id = piece.id() + NOTCH + (i + 1);
            riders.add(new Rider(
                    id, Rider.Kind.ATTACHED, List.of(tick(piece, piece.notches().get(i)))));
        }
        for (int i = 0; i < piece.levels().size(); i++) {
            LevelMark level = piece.levels().get(i);
            String id = piece.id() + LEVEL + (i + 1);
            LevelLine.of(piece, level)
                    .ifPresent(l -> riders.add(new Rider(id, Rider.Kind.ATTACHED, List.of(line(l.from(), l.to())))));
        }
        return riders;
    }

    /** A short tick across the outline, most of it inwards. */
    private static Line tick(Piece piece, Notch notch) {
        Nearest near = piece.outline().nearest(notch.at());
        Point tangent = piece.outline()
                .segments()
                .get(near.place().segment())
                .tangent(near.place().t());
        double inwards = piece.outline().signedArea() > 0 ? 1 : -1;
        Point tick = tangent.quarterTurned().times(inwards * LENGTH);
        return line(notch.at().minus(tick.times(0.4)), notch.at().plus(tick.times(0.6)));
    }

    /** Rounded like all that is written. */
    private static Line line(Point from, Point to) {
        return new Line(Places.rounded(from), Places.rounded(to));
    }
}
