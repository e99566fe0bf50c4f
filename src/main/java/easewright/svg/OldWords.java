package easewright.svg;

import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.CutWords;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Severity;
import easewright.pattern.SidePair;
import java.util.ArrayList;
import java.util.List;

/**
 * Words drawn on a piece that has become a left and a right one. They are somebody's drawing and stay as they are, beside
 * the one that was drawn; that they say what no longer holds, such as "cut on the fold", is told. Only how a piece is cut is such.
 */
final class OldWords {
    /** More lines than these are not read. */
    private static final int MOST_LINES = 6;

    private OldWords() {}

    static List<Finding> in(Drawing drawing, Pattern pattern) {
        List<Finding> findings = new ArrayList<>();
        double across = drawing.scale().mmPerUnitX() / pattern.scale().mmPerUnitX();
        double down = drawing.scale().mmPerUnitY() / pattern.scale().mmPerUnitY();
        for (SidePair pair : SidePair.of(pattern)) {
            List<String> lines = drawing.captions().stream()
                    .filter(c -> pair.drawn()
                            .outline()
                            .contains(new Point(
                                    c.middle().x() / across, c.middle().y() / down)))
                    .map(Caption::lines)
                    .flatMap(List::stream)
                    .filter(CutWords::any)
                    .limit(MOST_LINES)
                    .toList();
            if (!lines.isEmpty()) {
                findings.add(Finding.of(
                                "words-of-one-piece",
                                Severity.NOTE,
                                pair.drawn().name())
                        .with("words", lines)
                        .with("other", pair.copy().name()));
            }
        }
        return findings;
    }
}
