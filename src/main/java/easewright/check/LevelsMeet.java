package easewright.check;

import easewright.measure.GarmentMeasures;
import easewright.measure.LevelSeams;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** A level is one line round the body: where its pieces are sewn together it has to meet. */
final class LevelsMeet implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        Set<String> wanted = sight.ids();
        PatternPart.bySize(sight.pattern()).forEach((size, part) -> {
            GarmentMeasures measures = size.map(sight.measures()::inSize).orElse(sight.measures());
            look(part.alone(), measures, size, wanted::contains, findings);
        });
        return findings;
    }

    private static void look(
            Pattern garment,
            GarmentMeasures measures,
            Optional<String> size,
            Predicate<String> wanted,
            List<Finding> findings) {
        for (LevelSeams.Meeting meeting : LevelSeams.of(garment, measures, wanted)) {
            if (meeting.isApart()) {
                add("levels-apart", Severity.CAUTION, garment, meeting, size, findings);
            } else if (!meeting.meets()) {
                add("levels-apart-eased", Severity.NOTE, garment, meeting, size, findings);
            }
        }
    }

    private static void add(
            String code,
            Severity severity,
            Pattern garment,
            LevelSeams.Meeting meeting,
            Optional<String> size,
            List<Finding> findings) {
        Finding finding = Finding.of(code, severity, name(garment, meeting.second()))
                .with("level", meeting.level())
                .with("seam", meeting.seam())
                .with("other", name(garment, meeting.first()))
                .with("off", Math.abs(meeting.off()));
        findings.add(size.map(s -> finding.with("size", s)).orElse(finding));
    }

    private static String name(Pattern garment, String id) {
        return garment.piece(id).map(Piece::name).orElse(id);
    }
}
