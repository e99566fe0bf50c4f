package easewright.evidence;

import easewright.alter.SleeveWidth;
import easewright.draft.BodiceDraft;
import easewright.draft.SampleBodies;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/** A sleeve made wider under a cap seam that must keep its length. */
class SleeveTest extends Topic {
    private static final Source TWO_INCHES =
            Source.published("2 in around the arm, pattern-making.com, Drafting the One-Piece Dress Sleeve");
    private static final Source KEEP =
            Source.secondHand("keep the cap seam, else the armhole must follow: NMSU Guide C-228");
    private static final Source TAPE = Source.calculated("outline's points, Apache Commons Math 3.6.1");
    private static final Source ASKED = Source.calculated("what was asked for");

    private final List<Check> checks = new ArrayList<>();

    @Override
    String title() {
        return "A sleeve and its cap";
    }

    @Override
    String words() {
        return "The sleeve of the sample bodice, drafted with 2 in of ease, made wider and narrower. Lengths are taken"
                + " from the outline's points as for the skirt above.";
    }

    @Override
    List<Check> checks() throws Exception {
        checks.clear();
        Pattern before =
                new BodiceDraft(SampleBodies.MAREN, 90, 40, 50.8).draft().pattern();
        double arm = before.body().girth("upper arm").orElseThrow();
        add("upper arm + 2 in", TWO_INCHES, arm + 50.8, width(before), 0.005);
        add("upper arm", TAPE, width(before), girth(before), 1e-6);
        double cap = new PlainTape(sleeve(before)).edge("cap");
        add("cap seam", TAPE, cap, edge(before, "cap"), 1e-6);
        for (double amount : new double[] {24, 12, -10}) {
            Pattern after = SleeveWidth.at("upper arm", amount).apply(before).pattern();
            String subject = (amount > 0 ? "+" : "") + (int) amount + " mm at the upper arm: ";
            PlainTape tape = new PlainTape(sleeve(after));
            add(subject + "gained", ASKED, amount, width(after) - width(before), 0.01);
            add(subject + "girth", TAPE, width(after), girth(after), 1e-6);
            add(subject + "cap seam", KEEP, cap, tape.edge("cap"), 0.01);
            add(
                    subject + "underarm seams differ by",
                    ASKED,
                    0,
                    tape.edge("front underarm") - tape.edge("back underarm"),
                    0.01);
        }
        return List.copyOf(checks);
    }

    private static Piece sleeve(Pattern pattern) {
        return pattern.piece("bodice-sleeve").orElseThrow();
    }

    /** Of the drawn sleeve: one of the pair. */
    private static double width(Pattern pattern) {
        Piece sleeve = sleeve(pattern);
        return new PlainTape(sleeve)
                .width(sleeve.level("upper arm")
                        .orElseThrow()
                        .through()
                        .orElseThrow()
                        .y());
    }

    private static double girth(Pattern pattern) {
        return Measures.of(pattern).girth("upper arm").orElseThrow().finished();
    }

    private static double edge(Pattern pattern, String edge) {
        return Measures.of(pattern)
                .piece("bodice-sleeve")
                .orElseThrow()
                .edge(edge)
                .orElseThrow()
                .mm();
    }

    private void add(String subject, Source source, double expected, double got, double allowed) {
        checks.add(Check.number(subject, source, "mm", expected, got, allowed));
    }
}
