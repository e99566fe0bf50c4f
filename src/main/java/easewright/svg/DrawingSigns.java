package easewright.svg;

import easewright.geom.Affine;
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

    private static final int GROUPS_DEEP = 3;

    /** Pixels per unit this near to those of a millimetre were meant to be, relatively. */
    private static final double EXACT = 0.0005;

    private DrawingSigns() {}

    /** A unit of the drawing seems to be so long, because of that sign; or, which is the same, so many make an inch. */
    record Seen(double mmPerUnit, int perInch, ScaleProposal.Sign sign) {
        private static final Seen ONE_MM = new Seen(1, 0, ScaleProposal.Sign.MILLIMETRE);
    }

    static Optional<Seen> of(RootScale read, Tree tree) {
        Optional<Length> width = read.statedWidth();
        Optional<Length> height = read.statedHeight();
        String boxText = tree.root().get("viewBox");
        Optional<ViewBox> box = Optional.ofNullable(boxText).flatMap(ViewBox::parse);
        // Without a size of its own the unit was taken for a pixel.
        double inch = read.scale().mmPerUnitX() * Length.PX_PER_INCH;
        if (box.isPresent() && (isMillimetre(box.get(), width) || isMillimetre(box.get(), height, width))) {
            return Optional.of(Seen.ONE_MM);
        }
        boolean onScreen = isOnScreen(width) && isOnScreen(height);
        OptionalInt bySheet = onScreen && width.isPresent() && height.isPresent()
                ? bySheet(width.get().units(0), height.get().units(0))
                : OptionalInt.empty();
        if (bySheet.isPresent()) {
            return Optional.of(new Seen(inch / bySheet.getAsInt(), bySheet.getAsInt(), ScaleProposal.Sign.SHEET));
        }
        if (box.isPresent() && onScreen) {
            if (isSheet(box.get().width(), box.get().height())) {
                return Optional.of(Seen.ONE_MM);
            }
            OptionalInt byBox = bySheet(box.get().width(), box.get().height());
            if (byBox.isPresent()) {
                return Optional.of(
                        new Seen(Length.MM_PER_INCH / byBox.getAsInt(), byBox.getAsInt(), ScaleProposal.Sign.SHEET));
            }
        }
        OptionalInt byProgram = byProgram(tree);
        if (byProgram.isEmpty()) {
            byProgram = byGroups(tree.root(), GROUPS_DEEP);
        }
        if (byProgram.isEmpty() && box.isEmpty() && !onScreen) {
            // A page in mm and nothing said of the units on it: by CSS they are its pixels.
            byProgram = OptionalInt.of((int) Length.PX_PER_INCH);
        }
        return byProgram.isPresent()
                ? Optional.of(new Seen(inch / byProgram.getAsInt(), byProgram.getAsInt(), ScaleProposal.Sign.PROGRAM))
                : Optional.empty();
    }

    private static boolean isOnScreen(Optional<Length> length) {
        return length.isEmpty() || !length.get().physical();
    }

    private static boolean isMillimetre(ViewBox box, Optional<Length> width) {
        return width.isPresent() && isPixelsPerMm(width.get(), box.width());
    }

    /** The height tells it where no width is stated. */
    private static boolean isMillimetre(ViewBox box, Optional<Length> height, Optional<Length> width) {
        return width.isEmpty() && height.isPresent() && isPixelsPerMm(height.get(), box.height());
    }

    private static boolean isPixelsPerMm(Length stated, double units) {
        for (int perInch : PER_INCH) {
            double perMm = perInch / Length.MM_PER_INCH;
            if (!stated.physical() && Math.abs(stated.units(0) / units / perMm - 1) < EXACT) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSheet(double width, double height) {
        for (double[] sheet : SHEETS) {
            // A2 in mm is within NEAR of A4 in points.
            if (isNear(width, height, sheet, 1, EXACT)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNear(double width, double height, double[] sheet, double units, double slack) {
        return Math.abs(Math.min(width, height) / units / sheet[0] - 1) < slack
                && Math.abs(Math.max(width, height) / units / sheet[1] - 1) < slack;
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

    /** Some programs draw in mm and say so by a group that turns them into so many pixels or points. */
    private static OptionalInt byGroups(Element element, int deep) {
        for (Element child : element.children) {
            if (!child.name.equals("g")) {
                continue;
            }
            String transform = child.get("transform");
            Optional<Affine> map = transform == null ? Optional.empty() : Transforms.parse(transform, Optional.empty());
            for (int perInch : PER_INCH) {
                double perMm = perInch / Length.MM_PER_INCH;
                if (map.isPresent()
                        && Math.abs(Math.abs(map.get().a()) / perMm - 1) < EXACT
                        && Math.abs(Math.abs(map.get().d()) / perMm - 1) < EXACT) {
                    return OptionalInt.of(perInch);
                }
            }
            OptionalInt inside = deep > 1 ? byGroups(child, deep - 1) : OptionalInt.empty();
            if (inside.isPresent()) {
                return inside;
            }
        }
        return OptionalInt.empty();
    }

    private static OptionalInt bySheet(double width, double height) {
        OptionalInt found = OptionalInt.empty();
        for (int perInch : PER_INCH) {
            for (double[] sheet : SHEETS) {
                boolean near = isNear(width, height, sheet, perInch / Length.MM_PER_INCH, NEAR);
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
