package easewright.svg;

import easewright.pattern.Finding;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Gathers what speaks for a scale that the file does not prove, and what speaks against one that it does. */
final class ScaleSigns {
    private static final int[] USUAL = {72, 90, 96};

    /** A test square that is off by more than this part of its size is told of. */
    private static final double OFF = 0.005;

    private static final Set<String> ABOUT_PROOF = Set.of(
            "scale-unproved",
            "scale-by-test-square",
            "scale-proposed-mm",
            "scale-proposed",
            "test-square-differs",
            "scale-page-differs");

    private ScaleSigns() {}

    /** Proposals, the likeliest first; none where the scale is proved. */
    static List<ScaleProposal> of(
            RootScale read, Tree tree, List<DrawnShape> shapes, List<Writings.Writing> writings, Notes notes) {
        double mmPerUnit = read.scale().mmPerUnitX();
        List<TestSquares.Marked> squares = TestSquares.find(shapes, writings);
        if (read.scale().proof() != Scale.Proof.UNPROVED) {
            for (TestSquares.Marked square : squares) {
                if (Math.abs(square.side() / square.mm() - 1) > OFF) {
                    notes.add(Finding.of("test-square-differs", Severity.CAUTION, "")
                            .with("text", square.seen())
                            .with("wanted", square.mm())
                            .with("drawn", square.side())
                            .with("of.percent", square.percent()));
                }
            }
            return List.of();
        }
        List<ScaleProposal> proposals = new ArrayList<>();
        for (TestSquares.Marked square : squares) {
            proposals.add(new ScaleProposal(
                    mmPerUnit * square.mm() / square.side(), ScaleProposal.Sign.TEST_SQUARE, square.seen()));
        }
        // Without a size of its own the unit was taken for a pixel.
        double inch = mmPerUnit * Length.PX_PER_INCH;
        DrawingSigns.of(read, tree)
                .ifPresent(sign -> proposals.add(
                        new ScaleProposal(sign.mmPerUnit(), sign.sign(), String.valueOf(sign.perInch()))));
        if (!proposals.isEmpty()) {
            ScaleProposal best = proposals.get(0);
            Finding told = squares.isEmpty()
                    ? bySign(best)
                    : Finding.of("scale-by-test-square", Severity.NOTE, "")
                            .with("text", best.seen())
                            .with("drawn", squares.get(0).side())
                            .with("of.percent", squares.get(0).percent());
            notes.add(told.with("unit.number", best.mmPerUnit()));
        }
        for (int perInch : USUAL) {
            proposals.add(new ScaleProposal(inch / perInch, ScaleProposal.Sign.USUAL, String.valueOf(perInch)));
        }
        return proposals;
    }

    /** Whether it speaks of what the scale may be, so that another scale, proved since, has settled it. */
    static boolean isAboutProof(Finding finding) {
        return ABOUT_PROOF.contains(finding.code());
    }

    private static Finding bySign(ScaleProposal best) {
        return best.sign() == ScaleProposal.Sign.MILLIMETRE
                ? Finding.of("scale-proposed-mm", Severity.NOTE, "")
                : Finding.of("scale-proposed", Severity.NOTE, "").with("perInch", Integer.valueOf(best.seen()));
    }
}
