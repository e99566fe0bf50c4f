package easewright.alter;

import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.BodiceDraft;
import easewright.draft.SampleBodies;
import easewright.draft.SkirtDraft;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a seam change shows as moved lay on the outline before and lies on it now; and what moved is shown. */
class MovedTest {
    private static final double CLOSE = 1e-6;
    private static final Pattern SKIRT =
            new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft().pattern();
    private static final Pattern BODICE =
            new BodiceDraft(SampleBodies.MAREN, 90, 40, 50).draft().pattern();

    @Test
    void runsThatMoveLieWhereTheySay() throws Refusal {
        for (double amount : new double[] {12, -12}) {
            for (SeamChange change : List.of(
                    SeamChange.at("hip", amount),
                    SeamChange.at("hip", amount).carriedToHem(),
                    SeamChange.at("waist", amount).keeping("hip"))) {
                assertShown(change, SKIRT);
            }
            assertShown(SeamChange.at("bust", amount), BODICE);
        }
    }

    private static void assertLies(Altered altered, Pattern before) {
        assertThat(altered.moved()).isNotEmpty();
        for (Moved moved : altered.moved()) {
            assertThat(farthest(moved.before(), outline(before, moved))).isLessThan(CLOSE);
            assertThat(farthest(moved.after(), outline(altered.pattern(), moved)))
                    .isLessThan(CLOSE);
            assertThat(moved.after()).isNotEqualTo(moved.before());
        }
    }

    private static void assertShown(Alteration change, Pattern before) throws Refusal {
        Altered altered = change.apply(before);
        assertLies(altered, before);
        for (Piece piece : altered.pattern().pieces()) {
            Outline was = before.piece(piece.id()).orElseThrow().outline();
            for (Segment segment : piece.outline().segments()) {
                Point p = segment.at(0.5);
                boolean shown = altered.moved().stream()
                        .filter(m -> m.pieceId().equals(piece.id()))
                        .anyMatch(m -> m.after().nearest(p).distance() < CLOSE);
                assertThat(shown || was.nearest(p).distance() < CLOSE)
                        .as("%s of %s", change, piece.id())
                        .isTrue();
            }
        }
    }

    private static Outline outline(Pattern pattern, Moved moved) {
        return pattern.piece(moved.pieceId()).orElseThrow().outline();
    }

    private static double farthest(Curve run, Outline outline) {
        double worst = 0;
        for (Segment segment : run.segments()) {
            for (double t = 0; t <= 1; t += 0.25) {
                worst = Math.max(worst, outline.nearest(segment.at(t)).distance());
            }
        }
        return worst;
    }
}
