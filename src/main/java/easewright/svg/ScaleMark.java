package easewright.svg;

import easewright.geom.Affine;
import easewright.pattern.Finding;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import java.util.Map;
import java.util.Optional;

/** The scale at which the marks were written: they hold only where the drawing is still read by the same one. */
final class ScaleMark {
    /** Both are written in full: what is farther off, as a part, is another scale. */
    private static final double SAME = 1e-6;

    /** What it was set from, and what stands beside that. */
    private static final String SET_BY = "set-by";

    private static final String WORDS = "words";

    private ScaleMark() {}

    /** The scale that a block states, if it states one that can be read. */
    static Optional<Scale> in(MarkNode block) {
        for (MarkNode child : block.children()) {
            if (child.namespace().equals(MarkNode.NAMESPACE) && child.name().equals("scale")) {
                try {
                    return Optional.of(read(new MarkValues(child)));
                } catch (MarkValues.Damage damage) {
                    return Optional.empty();
                }
            }
        }
        return Optional.empty();
    }

    private static Scale read(MarkValues v) throws MarkValues.Damage {
        double across = v.neededNumber("across");
        double down = v.neededNumber("down");
        if (!(across > 0 && down > 0)) {
            throw new MarkValues.Damage(
                    "mark-value-bad",
                    Map.of(
                            "attribute",
                            across > 0 ? "down" : "across",
                            "text",
                            Decimals.exact(Math.min(across, down))));
        }
        return new Scale(across, down, v.neededWord("proof", Scale.Proof.class));
    }

    /** The scale by which the drawing is read, with what it was set from where the block says so and it is still that one. */
    static Scale known(MarkValues v, MarksReader.Geometry drawn) throws MarkValues.Damage {
        Optional<String> set = v.text(SET_BY);
        String words = v.text(WORDS).orElse("");
        if (set.isEmpty()) {
            return drawn.scale();
        }
        Scale.From from = new Scale.From(v.neededWord(SET_BY, Scale.From.What.class), words);
        boolean same = drawn.scale().proof() == Scale.Proof.KNOWN_LINE
                && drawn.rescaled().equals(Affine.IDENTITY);
        return same ? drawn.scale().set(from) : drawn.scale();
    }

    static void write(Scale.From from, MarkupBuilder out) throws SvgProblem {
        out.text(SET_BY, MarkWords.word(from.what()));
        if (!from.words().isEmpty()) {
            out.text(WORDS, from.words());
        }
    }

    /** That the drawing is read by another scale than the marks were written at, where nobody asked for that. */
    static Optional<Finding> differing(MarkValues v, MarksReader.Geometry drawn) throws MarkValues.Damage {
        Scale stated = read(v);
        Scale used = drawn.scale();
        double across = stated.mmPerUnitX() / used.mmPerUnitX();
        double down = stated.mmPerUnitY() / used.mmPerUnitY();
        double acrossOff = Math.abs(across - 1);
        double downOff = Math.abs(down - 1);
        if (!drawn.rescaled().equals(Affine.IDENTITY) || acrossOff <= SAME && downOff <= SAME) {
            return Optional.empty();
        }
        // Mostly both are off alike; else the one that is off by more is told.
        double now = acrossOff >= downOff ? 1 / across : 1 / down;
        return Optional.of(Finding.of("scale-differs", Severity.FAULT, "").with("of.percent", 100 * now));
    }
}
