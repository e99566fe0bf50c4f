package easewright.check;

import easewright.pattern.Dart;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A change must not take cloth away past the point of a dart (docs/sources.md 4.3, common practice). */
final class DartPointKept implements ChangeRule {
    @Override
    public List<Finding> look(Sight before, Sight after) {
        List<Finding> findings = new ArrayList<>();
        for (Piece now : after.pieces()) {
            Optional<Piece> then = before.before(now, after);
            if (then.isEmpty() || then.get() == now) {
                continue;
            }
            for (Dart dart : now.darts()) {
                boolean wasInside = then.get().darts().stream()
                        .anyMatch(d -> d.name().equals(dart.name())
                                && then.get().outline().contains(d.point()));
                if (wasInside && !now.outline().contains(dart.point())) {
                    findings.add(Finding.of("dart-point-outside", Severity.FAULT, now.name())
                            .with("dart", dart.name()));
                }
            }
        }
        return findings;
    }
}
