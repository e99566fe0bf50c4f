package easewright.svg;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Signs by which a drawing without a physical size shows how many of its units make an inch. They only ever support
 * a proposal. From memory: one family of editors writes points (72), an older generation of
 * another wrote 90, and the CSS reference pixel is 96.
 */
final class DrawingSigns {
    private static final int[] PER_INCH = {72, 90, 96};

    /** Sheets by ISO 216 and ANSI, mm. */
    private static final double[][] SHEETS = {
        {841, 1189},
        {594, 841},
        {420, 594},
        {297, 420},
        {210, 297},
        {148, 210},
        {215.9, 279.4},
        {215.9, 355.6},
        {279.4, 431.8}
    };

    /** A page this near a sheet's size, relatively, is taken for one. */
    private static final double NEAR = 0.003;

    private DrawingSigns() {}

    /** So many units seem to make an inch, because of that sign. */
    record Seen(int perInch, ScaleProposal.Sign sign) {}

    static Optional<Seen> of(Tree tree, Optional<Length> width, Optional<Length> height) {
        OptionalInt bySheet = bySheet(width, height);
        if (bySheet.isPresent()) {
            return Optional.of(new Seen(bySheet.getAsInt(), ScaleProposal.Sign.SHEET));
        }
        OptionalInt byProgram = byProgram(tree);
        return byProgram.isPresent()
                ? Optional.of(new Seen(byProgram.getAsInt(), ScaleProposal.Sign.PROGRAM))
                : Optional.empty();
    }

    private static OptionalInt byProgram(Tree tree) {
        Element root = tree.root();
        String version = root.get("inkscape:version");
        if (version != null && version.matches("0\\.(4\\d|91).*")) {
            return OptionalInt.of(90);
        }
        boolean corner = "0px".equals(root.get("x")) && "0px".equals(root.get("y"));
        boolean points = corner || tree.generator().contains("Adobe Illustrator");
        return points ? OptionalInt.of(72) : OptionalInt.empty();
    }

    private static OptionalInt bySheet(Optional<Length> width, Optional<Length> height) {
        if (width.isEmpty()
                || height.isEmpty()
                || width.get().physical()
                || height.get().physical()) {
            return OptionalInt.empty();
        }
        OptionalInt found = OptionalInt.empty();
        double narrow = Math.min(width.get().units(0), height.get().units(0)) * Length.MM_PER_INCH;
        double wide = Math.max(width.get().units(0), height.get().units(0)) * Length.MM_PER_INCH;
        for (int perInch : PER_INCH) {
            for (double[] sheet : SHEETS) {
                boolean near = Math.abs(narrow / perInch / sheet[0] - 1) < NEAR
                        && Math.abs(wide / perInch / sheet[1] - 1) < NEAR;
                if (near && found.isPresent()) {
                    // Two readings fit: that is no sign.
                    return OptionalInt.empty();
                }
                found = near ? OptionalInt.of(perInch) : found;
            }
        }
        return found;
    }
}
