package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;

/** The mouth of a dart sliding along the outline that runs on over it, so that the legs keep their difference. */
final class DartSlide {
    private static final double CLOSE = 1e-10;

    /** The legs may come to differ by this much more, or less, than before, mm. */
    private static final double ALLOWED = 1e-6;

    private final Dart dart;
    private final Curve onwards;
    private final Curve backwards;
    private final double inner;
    private final double difference;

    DartSlide(Outline outline, Dart dart, DartMouth at) {
        this.dart = dart;
        Curve between = new Curve(at.inner());
        inner = between.length();
        // The outline from the middle of the mouth both ways.
        Point middle = between.pointAtLength(inner / 2);
        Outline split = outline.splitAt(outline.nearest(middle).place());
        onwards = split.run(split.nearest(middle).place(), split.nearest(middle).place());
        backwards = onwards.reversed();
        difference = at.first().distance(dart.point()) - at.second().distance(dart.point());
    }

    Point first(double way) throws Refusal {
        return backwards.pointAtLength(inner / 2 - way - shift(way));
    }

    Point second(double way) throws Refusal {
        return onwards.pointAtLength(inner / 2 - way + shift(way));
    }

    /** By how much both places move on along the seam so that one leg stays longer than the other as it was. */
    private double shift(double way) throws Refusal {
        double unmoved = miss(way, 0);
        if (Math.abs(unmoved) <= CLOSE) {
            return 0;
        }
        Refusal lost = Refusal.of("dart-legs-lost").with("dart", dart.name());
        double shift = Root.of(s -> miss(way, s), unmoved, 1e-3, CLOSE, ALLOWED, lost);
        if (Math.abs(shift) > Math.abs(way)) {
            throw lost;
        }
        return shift;
    }

    private double miss(double way, double shift) {
        Point first = backwards.pointAtLength(inner / 2 - way - shift);
        Point second = onwards.pointAtLength(inner / 2 - way + shift);
        return first.distance(dart.point()) - second.distance(dart.point()) - difference;
    }
}
