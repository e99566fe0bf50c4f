package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where truing moves the mouth of a dart, its legs drawn within the piece end at the new mouth, in the saved drawing too. */
class DrawnLegsTruedTest {
    private static double gap(Piece piece, Point mouth) {
        return piece.riders().stream()
                .flatMap(r -> r.segments().stream())
                .mapToDouble(s -> Math.min(s.start().distance(mouth), s.end().distance(mouth)))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private static List<Segment> lines(Piece piece) {
        return piece.riders().stream().flatMap(r -> r.segments().stream()).toList();
    }

    @Test
    void legsEndAtTheMouthThatTruingMoved() throws Exception {
        SvgFile file = SvgFile.read(Path.of("src/test/resources/changes/levels-after-truing.svg"));
        Pattern saved = file.pattern();
        Pattern untrue = new Replay(saved, List.of()).to(Step.course(saved).subList(0, 2));
        Pattern trued = untrue;
        for (TrueUp.Tried tried : TrueUp.all(untrue, false)) {
            trued = tried.done().orElseThrow().pattern();
        }
        Pattern written = SvgFile.read(file.write(trued), "trued.svg").pattern();
        for (Piece piece : written.pieces()) {
            for (Dart dart : piece.darts()) {
                Dart before = untrue.piece(piece.id()).orElseThrow().darts().get(0);
                assertThat(Math.max(
                                dart.mouth1().distance(before.mouth1()),
                                dart.mouth2().distance(before.mouth2())))
                        .isGreaterThan(1);
                assertThat(gap(piece, dart.mouth1())).isLessThan(0.01);
                assertThat(gap(piece, dart.mouth2())).isLessThan(0.01);
                assertThat(gap(piece, dart.point())).isLessThan(0.01);
            }
        }
        Pattern back = new Replay(written, List.of()).to(Step.course(written).subList(0, 2));
        for (Piece piece : untrue.pieces()) {
            List<Segment> was = lines(piece);
            List<Segment> is = lines(back.piece(piece.id()).orElseThrow());
            for (int i = 0; i < was.size(); i++) {
                assertThat(is.get(i).start().distance(was.get(i).start())).isLessThan(1e-3);
                assertThat(is.get(i).end().distance(was.get(i).end())).isLessThan(1e-3);
            }
        }
    }
}
