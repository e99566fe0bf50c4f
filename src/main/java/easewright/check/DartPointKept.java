package easewright.check;

import easewright.pattern.Dart;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** A change must not take cloth away past the point of a dart (docs/sources.md 4.3, common practice). */
final class DartPointKept implements ChangeRule {
    @Override
    public List<Finding> look(Sight before, Sight after) {
        List<Finding> findings = new ArrayList<>();
        for (Sight.Remade remade : before.remade(after)) {
            Piece now = remade.now();
            for (Dart dart : now.darts()) {
                boolean wasInside = remade.then().darts().stream()
                        .anyMatch(d -> d.name().equals(dart.name())
                                && remade.then().outline().contains(d.point()));
                if (wasInside && !now.outline().contains(dart.point())) {
                    findings.add(Finding.of("dart-point-outside", Severity.FAULT, now.name())
                            .with("dart", dart.name()));
                }
            }
        }
        return findings;
    }
}
