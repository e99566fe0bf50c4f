package easewright.svg;

import easewright.geom.Box;
import easewright.pattern.Scale;
import java.util.Optional;

/**
 * What the page of a drawing was before it was made larger for copies, kept in the block of marks so that it can become
 * so again.
 *
 * @param width  the attribute of the root element as it stood, if it had one; {@code height} and {@code viewBox} likewise
 * @param across what it was made, in user units of the root: if it is no longer that, somebody has changed it since
 * @param down   the same, down
 */
record PageMark(Optional<String> width, Optional<String> height, Optional<String> viewBox, double across, double down) {
    /** In user units; programs that save a drawing again may round its page. */
    private static final double NEAR = 0.01;

    static PageMark of(RootPage was, RootPage now) {
        RootScale read = now.read();
        return new PageMark(was.width(), was.height(), was.viewBox(), read.width(), read.height());
    }

    static PageMark read(MarkValues v) throws MarkValues.Damage {
        return new PageMark(
                v.text("width"),
                v.text("height"),
                v.text("view-box"),
                v.neededNumber("across"),
                v.neededNumber("down"));
    }

    void write(MarkupBuilder out) throws SvgProblem {
        out.open("page");
        if (width.isPresent()) {
            out.text("width", width.get());
        }
        if (height.isPresent()) {
            out.text("height", height.get());
        }
        if (viewBox.isPresent()) {
            out.text("view-box", viewBox.get());
        }
        out.number("across", across).number("down", down).close();
    }

    /** How large the page was, mm at a scale; empty where no size was stated. */
    Optional<Box> page(Scale scale) {
        RootScale was = new RootPage(width, height, viewBox, Optional.empty()).read();
        double factor = scale.mmPerUnitX() / was.scale().mmPerUnitX();
        return was.page().map(p -> new Box(0, 0, p.maxX() * factor, p.maxY() * factor));
    }

    /** The page before, if the present one is still what it was made. */
    Optional<RootPage> before(RootPage now) {
        RootPage was = new RootPage(width, height, viewBox, now.aspect());
        RootScale read = now.read();
        boolean untouched = was.statesTheSameAs(now)
                && was.read().toMm().equals(read.toMm())
                && Math.abs(read.width() - across) <= NEAR
                && Math.abs(read.height() - down) <= NEAR;
        return untouched ? Optional.of(was) : Optional.empty();
    }
}
