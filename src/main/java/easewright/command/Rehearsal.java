package easewright.command;

import easewright.ease.EaseTables;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.print.Reading;
import java.util.List;
import java.util.Optional;

/**
 * Gets ready, while a file is being read, what every command needs next: words, tables, and the code that measures.
 * Most of the time of a short run goes into loading code for the first time, and a second core can do that meanwhile;
 * so a small piece with one of everything is measured, and the result thrown away.
 */
final class Rehearsal {
    private Rehearsal() {}

    /** Begins, and returns at once. What comes of it changes nothing, and the program may end before it does. */
    static void begin() {
        Thread thread = new Thread(Rehearsal::run, "rehearsal");
        thread.setDaemon(true);
        thread.start();
    }

    private static void run() {
        Commands.english().length(0.1);
        Reading.of(pattern(), EaseTables.standard());
    }

    private static Pattern pattern() {
        Point a = new Point(0, 0);
        Point b = new Point(100, 0);
        Point c = new Point(100, 200);
        Point d = new Point(0, 200);
        Outline square = new Outline(List.of(new Line(a, b), new Line(b, c), new Line(c, d), new Line(d, a)));
        Piece piece = Piece.bare("rehearsal", square).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .cut(1, true)
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, a, b),
                        Edge.of("side", EdgeRole.SEAM, b, c),
                        Edge.of("fold", EdgeRole.FOLD, d, a)))
                .levels(List.of(LevelMark.along("waist", "waist"), LevelMark.through("hip", new Point(50, 100))))
                .darts(List.of(new Dart(
                        "dart",
                        new Point(40, 0),
                        new Point(60, 0),
                        new Point(50, 60),
                        Optional.empty(),
                        Optional.of("waist"))))
                .notches(List.of(new Notch("hip", new Point(100, 100))))
                .build();
        EdgeRef side = EdgeRef.of("rehearsal", "side");
        return Pattern.bare(List.of(piece), new Scale(1, 1, Scale.Proof.KNOWN_LINE))
                .withLevels(List.of(Level.of("waist", LevelKind.WAIST), Level.of("hip", LevelKind.HIP)))
                .withMates(List.of(new Mate("side seam", List.of(side), List.of(side), 0)))
                .withBody(new Body("", List.of(new BodyMeasure("Hip girth", "hip", 190, ""))));
    }
}
