package easewright.check;

import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.topology.Meeting;
import easewright.topology.Validity;
import java.util.ArrayList;
import java.util.List;

/** An outline that crosses or touches itself cannot be cut out. A slit drawn as a notch touches itself and may. */
final class OutlineBoundsCloth implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (Piece piece : sight.pieces()) {
            List<Meeting> meetings = sight.measures()
                    .piece(piece.id())
                    .map(measured -> measured.stitch().meetings())
                    .orElseGet(() -> Validity.meetings(piece.outline()));
            if (!meetings.isEmpty()) {
                findings.add(Finding.of("outline-meets-itself", Severity.FAULT, piece.name())
                        .with("count", meetings.size())
                        .with("x", meetings.get(0).point().x())
                        .with("y", meetings.get(0).point().y()));
            }
        }
        return findings;
    }
}
