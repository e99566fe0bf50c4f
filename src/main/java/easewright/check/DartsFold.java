package easewright.check;

import easewright.alter.DartFold;
import easewright.measure.Cutting;
import easewright.pattern.Dart;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** The legs of a dart are sewn to one another and must be equal (docs/sources.md 4.5). */
final class DartsFold implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (Piece piece : sight.pieces()) {
            for (Dart dart : piece.darts()) {
                if (dart.mouth1().equals(dart.point()) || dart.mouth2().equals(dart.point())) {
                    continue;
                }
                double difference = DartFold.of(dart).difference();
                if (!Cutting.same(difference)) {
                    findings.add(Finding.of("dart-legs-unequal", Severity.CAUTION, piece.name())
                            .with("dart", dart.name())
                            .with("difference", difference)
                            .with("x", dart.mouth1().towards(dart.mouth2(), 0.5).x())
                            .with("y", dart.mouth1().towards(dart.mouth2(), 0.5).y()));
                }
            }
        }
        return findings;
    }
}
