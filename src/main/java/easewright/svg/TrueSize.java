package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The page of a drawing with the size that its proved scale gives it, in a unit of paper, so that other programs open the
 * drawing at true size as well. No place moves: the user units stay what they are, and the viewBox says which of them fill
 * the page.
 */
final class TrueSize {
    /** A page whose scale is this near to the proved one, as a part of it, states its size already. */
    private static final double STATED = 1e-7;

    /** And this near is one that is written here. */
    private static final double WRITTEN = 1e-8;

    /** Free beside what is drawn where the drawing has no page, mm. */
    private static final double MARGIN = 20;

    private static final int MOST_PLACES = 9;

    private final RootPage before;
    private final RootScale read;
    private final RootScale wanted;
    private final double mmPerUnit;

    private TrueSize(RootPage before, double mmPerUnit) {
        this.before = before;
        this.mmPerUnit = mmPerUnit;
        read = before.read();
        wanted = read.calibrated(mmPerUnit);
    }

    /**
     * The page as it is if it states its size already.
     *
     * @param mmPerUnit what the scale is proved to be, mm per user unit of the root
     * @param drawn     the room that is drawn in, mm at that scale
     * @return empty if no size can be stated that leaves every place where it is
     */
    static Optional<RootPage> of(RootPage before, double mmPerUnit, Optional<Box> drawn) {
        return new TrueSize(before, mmPerUnit).page(drawn);
    }

    private Optional<RootPage> page(Optional<Box> drawn) {
        boolean unreadable = before.viewBox().isPresent() && before.box().isEmpty();
        if (unreadable) {
            return Optional.empty();
        }
        if (read.scale().proof() == Scale.Proof.PHYSICAL_SIZE && near(read, STATED)) {
            return Optional.of(before);
        }
        Optional<Box> page = page().or(() -> drawn.flatMap(this::around));
        return page.flatMap(this::sized);
    }

    private boolean near(RootScale page, double part) {
        return Math.abs(page.scale().mmPerUnitX() / mmPerUnit - 1) <= part;
    }

    /** The page there is, in mm of the proved scale; empty where the drawing has none. */
    private Optional<Box> page() {
        return before.box().isPresent() && wanted.page().isEmpty()
                ? Optional.of(new Box(
                        0,
                        0,
                        read.width() * wanted.scale().mmPerUnitX(),
                        read.height() * wanted.scale().mmPerUnitY()))
                : wanted.page();
    }

    /** A page, or what it lacks, as large as what is drawn needs, in whole user units. */
    private Optional<Box> around(Box drawn) {
        double right = read.statedWidth().isPresent() ? read.width() * mmPerUnit : whole(drawn.maxX());
        double below = read.statedHeight().isPresent() ? read.height() * mmPerUnit : whole(drawn.maxY());
        return right > 0 && below > 0 ? Optional.of(new Box(0, 0, right, below)) : Optional.empty();
    }

    private double whole(double end) {
        return end > 0 ? Math.ceil((end + MARGIN) / mmPerUnit) * mmPerUnit : 0;
    }

    private Optional<RootPage> sized(Box page) {
        List<String> boxes = new ArrayList<>();
        before.viewBox().ifPresent(boxes::add);
        // Also for a viewBox that does not fill its page: without a rest, nothing hangs on how the size is rounded.
        boxes.add(filling(page));
        double width = page.maxX() / unit(read.statedWidth()).mm();
        double height = page.maxY() / unit(read.statedHeight()).mm();
        for (String box : boxes) {
            for (int places = 0; places <= MOST_PLACES; places++) {
                RootPage tried = page(box, Decimals.rounded(width, places), Decimals.rounded(height, places));
                if (isTrue(tried)) {
                    return Optional.of(tried);
                }
            }
            // Axes of which each has a scale of its own.
            for (double across : beside(width)) {
                for (double down : beside(height)) {
                    RootPage tried = page(box, Decimals.exact(across), Decimals.exact(down));
                    if (isTrue(tried)) {
                        return Optional.of(tried);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** In the unit of paper that stood there, else in mm. */
    private static Length unit(Optional<Length> stated) {
        return new Length(1, stated.filter(Length::physical).map(Length::unit).orElse("mm"));
    }

    private RootPage page(String box, String width, String height) {
        return new RootPage(
                Optional.of(width + unit(read.statedWidth()).unit()),
                Optional.of(height + unit(read.statedHeight()).unit()),
                Optional.of(box),
                before.aspect());
    }

    private static double[] beside(double value) {
        double up = Math.nextUp(value);
        double down = Math.nextDown(value);
        return new double[] {value, up, down, Math.nextUp(up), Math.nextDown(down)};
    }

    private boolean isTrue(RootPage tried) {
        RootScale stated = tried.read();
        RootScale again = stated.calibrated(mmPerUnit);
        return near(stated, WRITTEN)
                && again.toMm().equals(wanted.toMm())
                && again.scale().equals(wanted.scale());
    }

    /** The user units on the page. */
    private String filling(Box page) {
        Affine map = read.toMm();
        return Decimals.exact(0 - map.e() / map.a()) + " "
                + Decimals.exact(0 - map.f() / map.d()) + " "
                + units(page.maxX() / wanted.toMm().a()) + " "
                + units(page.maxY() / wanted.toMm().d());
    }

    private static String units(double value) {
        String few = Decimals.rounded(value, MOST_PLACES);
        return Math.abs(Double.parseDouble(few) / value - 1) < WRITTEN ? few : Decimals.exact(value);
    }
}
