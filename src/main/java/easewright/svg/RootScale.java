package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How the outermost user units become millimetres.
 *
 * @param toMm   from user units of the root to mm of the page
 * @param corner the place, in user units, that lies in the upper left corner of a page that the viewBox fills
 * @param page   the page, mm, where the file states its size in any unit
 * @param width  width of the viewport in its own user units, for percentages
 * @param height the same, down
 * @param statedWidth  width of the page as the file states it
 * @param statedHeight the same, down
 */
record RootScale(
        Affine toMm,
        Point corner,
        Scale scale,
        Optional<Box> page,
        double width,
        double height,
        Optional<Length> statedWidth,
        Optional<Length> statedHeight) {
    private static final double MM_PER_PX = Length.MM_PER_INCH / Length.PX_PER_INCH;

    /** Two axes further apart than this are told of: the page and the viewBox have different proportions. */
    private static final double AXES_DIFFER = 0.005;

    /** Two axes nearer to each other than this are one scale, written in rounded numbers. */
    private static final double ROUNDED = 1e-8;

    /** A page that is no farther than this from being filled is, mm. */
    private static final double SHIFTED = 1e-6;

    /**
     * Reads it from the root element.
     *
     * @param mmPerUnit what the user measured on a line of known length: mm per user unit, if anything
     */
    static RootScale of(Tree tree, Map<String, String> style, OptionalDouble mmPerUnit, Notes notes) {
        Element root = tree.root();
        Optional<Length> width = size(style.getOrDefault("width", root.get("width")), notes);
        Optional<Length> height = size(style.getOrDefault("height", root.get("height")), notes);
        String boxText = root.get("viewBox");
        Optional<ViewBox> box = boxText == null ? Optional.empty() : ViewBox.parse(boxText);
        if (boxText != null && box.isEmpty()) {
            notes.add("view-box-invalid", Severity.CAUTION, "");
        }
        RootScale read = stated(width, height, box, root.get("preserveAspectRatio"), notes);
        if (mmPerUnit.isPresent()) {
            return read.calibrated(mmPerUnit.getAsDouble());
        }
        if (read.scale().proof() == Scale.Proof.UNPROVED) {
            read.tellUnproved(notes);
        }
        return read;
    }

    /**
     * What the root element states, without anything that the user knows better.
     *
     * @param aspect as preserveAspectRatio has it, or null
     */
    static RootScale stated(
            Optional<Length> width, Optional<Length> height, Optional<ViewBox> box, String aspect, Notes notes) {
        return box.isPresent() ? withBox(box.get(), width, height, aspect, notes) : withoutBox(width, height);
    }

    private static RootScale withBox(
            ViewBox box, Optional<Length> width, Optional<Length> height, String aspect, Notes notes) {
        double ratio = box.height() / box.width();
        double w = width.isPresent()
                ? width.get().mm()
                : height.isPresent() ? height.get().mm() / ratio : box.width() * MM_PER_PX;
        double h = height.isPresent() ? height.get().mm() : w * ratio;
        // What is not stated follows the viewBox, so that nothing is left over, not even by rounding.
        double unit = width.isPresent() ? w / box.width() : height.isPresent() ? h / box.height() : MM_PER_PX;
        Affine toMm = width.isPresent() && height.isPresent()
                ? box.into(w, h, aspect)
                : new Affine(unit, 0, 0, unit, -box.x() * unit, -box.y() * unit);
        boolean stated = width.isPresent() || height.isPresent();
        boolean physical = stated
                        && (width.isEmpty() || width.get().physical())
                        && (height.isEmpty() || height.get().physical())
                || agree(width, w / box.width(), height, h / box.height());
        double across = w / box.width();
        double down = h / box.height();
        double apart = Math.max(across, down) / Math.min(across, down) - 1;
        if (physical && aspect == null && apart > AXES_DIFFER) {
            notes.add(Finding.of("scale-axes-differ", Severity.CAUTION, "").with("apart.percent", 100 * apart));
        }
        return new RootScale(
                toMm,
                new Point(box.x(), box.y()),
                new Scale(toMm.a(), toMm.d(), physical ? Scale.Proof.PHYSICAL_SIZE : Scale.Proof.UNPROVED),
                stated ? Optional.of(new Box(0, 0, w, h)) : Optional.empty(),
                box.width(),
                box.height(),
                width,
                height);
    }

    /** Whether one side is stated in a unit of paper and the other in pixels that come to the same. */
    private static boolean agree(Optional<Length> width, double across, Optional<Length> height, double down) {
        return width.isPresent()
                && height.isPresent()
                && width.get().physical() != height.get().physical()
                && Math.abs(across / down - 1) <= AXES_DIFFER;
    }

    private static RootScale withoutBox(Optional<Length> width, Optional<Length> height) {
        double w = width.map(Length::mm).orElse(0.0);
        double h = height.map(Length::mm).orElse(0.0);
        return new RootScale(
                Affine.scaling(MM_PER_PX, MM_PER_PX),
                Point.ORIGIN,
                new Scale(MM_PER_PX, MM_PER_PX, Scale.Proof.UNPROVED),
                w > 0 && h > 0 ? Optional.of(new Box(0, 0, w, h)) : Optional.empty(),
                w / MM_PER_PX,
                h / MM_PER_PX,
                width,
                height);
    }

    /**
     * The length that an attribute states of the page; empty for a percentage.
     *
     * @param text or null
     */
    static Optional<Length> size(String text, Notes notes) {
        if (text == null || text.isBlank() || text.strip().equals("auto")) {
            return Optional.empty();
        }
        Optional<Length> length = Length.parse(text);
        if (length.isEmpty() || !(length.get().value() > 0) || length.get().value() > 1e9) {
            notes.add("page-size-invalid", Severity.CAUTION, "");
            return Optional.empty();
        }
        return length.get().percent() ? Optional.empty() : length;
    }

    /** The unit of paper in which the width is stated, or else the height, in small letters. */
    Optional<String> paperUnit() {
        return Stream.of(statedWidth, statedHeight)
                .flatMap(Optional::stream)
                .filter(Length::physical)
                .map(Length::unit)
                .findFirst();
    }

    /**
     * At the scale that a line of known length proves. What a page states of its size may be rounded: a difference of
     * that kind moves nothing, so that the same drawing is the same to the last bit whatever its page says.
     */
    RootScale calibrated(double mmPerUnit) {
        double ratio = toMm.d() / toMm.a();
        double even = Math.abs(ratio - 1) <= ROUNDED ? 1 : ratio;
        double down = mmPerUnit * even;
        double factor = mmPerUnit / scale.mmPerUnitX();
        return new RootScale(
                new Affine(
                        mmPerUnit,
                        0,
                        0,
                        down,
                        shift(toMm.e() / toMm.a(), corner.x(), mmPerUnit),
                        shift(toMm.f() / toMm.d(), corner.y(), down)),
                corner,
                new Scale(mmPerUnit, down, Scale.Proof.KNOWN_LINE),
                page.map(p -> new Box(0, 0, p.maxX() * factor, p.maxY() * factor)),
                width,
                height,
                statedWidth,
                statedHeight);
    }

    private static double shift(double units, double corner, double mmPerUnit) {
        boolean filled = Math.abs(units + corner) * mmPerUnit <= SHIFTED;
        return filled ? 0 - corner * mmPerUnit : units * mmPerUnit;
    }

    private void tellUnproved(Notes notes) {
        double asPx = scale.mmPerUnitX();
        notes.add(Finding.of("scale-unproved", Severity.FAULT, "")
                .with("unit.number", asPx)
                .with("at72.number", asPx * Length.PX_PER_INCH / 72)
                .with("at90.number", asPx * Length.PX_PER_INCH / 90)
                .with("at96.number", asPx));
    }
}
