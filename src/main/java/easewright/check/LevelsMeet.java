package easewright.check;

import easewright.measure.Cutting;
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
        List<LevelSeams.Meeting> meetings = LevelSeams.of(garment, measures, wanted);
        for (LevelSeams.Meeting meeting : meetings) {
            if (meeting.isApart() && meetings.stream().anyMatch(m -> isBetween(meeting, m))) {
                add("levels-apart-straight", Severity.CAUTION, garment, meeting, size, findings);
            } else if (meeting.isApart()) {
                add("levels-apart", Severity.CAUTION, garment, meeting, size, findings);
            } else if (!meeting.meets()) {
                add("levels-apart-eased", Severity.NOTE, garment, meeting, size, findings);
            }
        }
    }

    /** Whether the level meets at another seam of the two pieces, so that straight lines cannot meet at both. */
    private static boolean isBetween(LevelSeams.Meeting apart, LevelSeams.Meeting other) {
        return other.level().equals(apart.level())
                && Set.of(other.first(), other.second()).equals(Set.of(apart.first(), apart.second()))
                && other.meets()
                && Math.abs(apart.off()) - Math.abs(other.off()) > Cutting.WORKS;
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
