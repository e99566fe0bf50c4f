package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.print.Reading;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Legs of a dart that were drawn are printed once, from its mark; what else is drawn between its corners is printed too. */
class PrintedDartLegsTest {
    private static final Point LEFT = new Point(88, 200);
    private static final Point RIGHT = new Point(112, 200);
    private static final Point TOP = new Point(100, 100);
    private static final Point FOOT = new Point(100, 320);
    private static final Dart INSIDE = new Dart("dart", LEFT, RIGHT, TOP, Optional.of(FOOT), Optional.empty());

    private static Segment line(Point from, Point to) {
        return new Line(from.plus(new Point(0.4, 0)), to.plus(new Point(0.4, 0)));
    }

    /** The drawn lines of a piece with a dart that are on its print. */
    private static List<List<Segment>> printed(Dart dart, Segment... drawn) throws Exception {
        Piece front = Prints.sample("skirt").pieces().get(0);
        Piece piece = front.toBuilder()
                .outline(Outline.polygon(
                        List.of(new Point(0, 0), new Point(200, 0), new Point(200, 400), new Point(0, 400))))
                .edges(List.of())
                .levels(List.of())
                .notches(List.of())
                .darts(List.of(dart))
                .riders(Stream.of(drawn)
                        .map(s -> new Rider("drawn", Rider.Kind.INNER, List.of(s)))
                        .toList())
                .build();
        Pattern pattern = Prints.sample("skirt").withMates(List.of()).withPieces(List.of(piece));
        Words words = Words.english(LengthUnit.CM);
        Job job = Job.of(Prints.on(Paper.ROLL), Optional.empty(), Reading.of(pattern, Prints.TABLES), List.of(), words);
        return job.picture(job.pieces().get(0), Affine.IDENTITY, 1).marks().stream()
                .flatMap(m -> m instanceof Mark.Stroke s && s.pen() == Pen.INNER ? Stream.of(s.run()) : Stream.empty())
                .toList();
    }

    @Test
    void legsAreNotPrintedTwice() throws Exception {
        assertThat(printed(INSIDE, line(LEFT, TOP), line(TOP, RIGHT), line(FOOT, LEFT), line(RIGHT, FOOT)))
                .isEmpty();
    }

    @Test
    void theMiddleOfADartAndTheLineAcrossItArePrinted() throws Exception {
        assertThat(printed(INSIDE, line(TOP, FOOT), line(LEFT, RIGHT), line(LEFT, TOP)))
                .hasSize(2);
    }

    /** Drawn as a closed triangle, a dart at an edge has a line along that edge. */
    @Test
    void theMouthOnTheOutlineShowsNothingOfItsOwn() throws Exception {
        Point one = new Point(88, 0);
        Point two = new Point(112, 0);
        Dart atEdge = new Dart("dart", one, two, TOP, Optional.empty(), Optional.empty());
        assertThat(printed(atEdge, line(one, TOP), line(TOP, two), line(two, one)))
                .isEmpty();
    }
}
