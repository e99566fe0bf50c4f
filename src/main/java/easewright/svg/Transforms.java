package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists of transform functions, as an attribute or as a CSS value. */
final class Transforms {
    private Transforms() {}

    /**
     * The product of the list, left to right; empty if any part of it makes no sense.
     *
     * @param reference for a CSS value, the width and height that percentages are of; empty for an attribute
     */
    static Optional<Affine> parse(String text, Optional<Point> reference) {
        if (text.strip().equals("none")) {
            return Optional.of(Affine.IDENTITY);
        }
        NumberScanner in = new NumberScanner(text);
        Affine product = Affine.IDENTITY;
        in.skipSpace();
        while (!in.atEnd()) {
            String name = name(in, text);
            List<Length> arguments = arguments(in, text);
            Optional<Affine> one = arguments == null ? Optional.empty() : function(name, arguments, reference);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            product = product.after(one.get());
            in.skipCommaSpace();
        }
        return Optional.of(product);
    }

    private static String name(NumberScanner in, String text) {
        int begin = in.at();
        while (Character.isLetterOrDigit(in.peek())) {
            in.skip();
        }
        return text.substring(begin, in.at());
    }

    /** What stands in the brackets; the unit of an angle is kept as it is. Null if broken. */
    private static List<Length> arguments(NumberScanner in, String text) {
        in.skipSpace();
        if (in.peek() != '(') {
            return null;
        }
        in.skip();
        in.skipSpace();
        List<Length> arguments = new ArrayList<>();
        while (in.peek() != ')') {
            double value = in.number();
            int unitFrom = in.at();
            while (Character.isLetter(in.peek()) || in.peek() == '%') {
                in.skip();
            }
            if (Double.isNaN(value) || arguments.size() > 6) {
                return null;
            }
            arguments.add(new Length(value, text.substring(unitFrom, in.at()).toLowerCase(java.util.Locale.ROOT)));
            boolean comma = in.skipCommaSpace();
            if (in.atEnd() || (comma && in.peek() == ')')) {
                return null;
            }
        }
        in.skip();
        return arguments;
    }

    private static Optional<Affine> function(String name, List<Length> a, Optional<Point> reference) {
        int n = a.size();
        boolean css = reference.isPresent();
        Point whole = reference.orElse(Point.ORIGIN);
        boolean ok = switch (name) {
            case "matrix" -> n == 6 && plain(a);
            case "translate" -> (n == 1 || n == 2) && lengths(a, reference);
            case "translateX", "translateY" -> css && n == 1 && lengths(a, reference);
            case "scale" -> (n == 1 || n == 2) && plain(a);
            case "scaleX", "scaleY" -> css && n == 1 && plain(a);
            case "rotate" ->
                (n == 1 && angle(a.get(0), css)) || (n == 3 && angle(a.get(0), css) && plain(a.subList(1, 3)));
            case "skewX", "skewY" -> n == 1 && angle(a.get(0), css);
            case "skew" -> css && (n == 1 || n == 2) && a.stream().allMatch(one -> angle(one, true));
            default -> false;
        };
        if (!ok) {
            return Optional.empty();
        }
        double first = a.get(0).value();
        double second = n > 1 ? a.get(1).value() : 0;
        Affine map = switch (name) {
            case "matrix" ->
                new Affine(
                        first,
                        second,
                        a.get(2).value(),
                        a.get(3).value(),
                        a.get(4).value(),
                        a.get(5).value());
            case "translate" ->
                Affine.translation(a.get(0).units(whole.x()), n > 1 ? a.get(1).units(whole.y()) : 0);
            case "translateX" -> Affine.translation(a.get(0).units(whole.x()), 0);
            case "translateY" -> Affine.translation(0, a.get(0).units(whole.y()));
            case "scale" -> Affine.scaling(first, n > 1 ? second : first);
            case "scaleX" -> Affine.scaling(first, 1);
            case "scaleY" -> Affine.scaling(1, first);
            case "rotate" ->
                rotation(degrees(a.get(0)), n == 3 ? new Point(second, a.get(2).value()) : Point.ORIGIN);
            case "skewX" -> new Affine(1, 0, tangent(degrees(a.get(0))), 1, 0, 0);
            case "skewY" -> new Affine(1, tangent(degrees(a.get(0))), 0, 1, 0, 0);
            default -> new Affine(1, n > 1 ? tangent(degrees(a.get(1))) : 0, tangent(degrees(a.get(0))), 1, 0, 0);
        };
        return Optional.of(map);
    }

    private static boolean plain(List<Length> a) {
        return a.stream().allMatch(one -> one.unit().isEmpty());
    }

    private static boolean lengths(List<Length> a, Optional<Point> reference) {
        boolean known =
                reference.filter(whole -> whole.x() > 0 && whole.y() > 0).isPresent();
        boolean css = reference.isPresent();
        return a.stream()
                .allMatch(one -> one.unit().isEmpty()
                        || (css && (one.unit().equals("px") || one.physical()))
                        || (known && one.percent()));
    }

    private static boolean angle(Length a, boolean css) {
        return a.unit().isEmpty()
                || (css
                        && switch (a.unit()) {
                            case "deg", "rad", "grad", "turn" -> true;
                            default -> false;
                        });
    }

    private static double degrees(Length a) {
        return switch (a.unit()) {
            case "rad" -> Math.toDegrees(a.value() % (2 * Math.PI));
            case "grad" -> a.value() % 400 * 0.9;
            case "turn" -> a.value() % 1 * 360;
            default -> a.value();
        };
    }

    /** Quarter turns come out exact, so that an upright line stays upright. */
    private static Affine rotation(double degrees, Point about) {
        double quarters = degrees % 360 / 90;
        if (quarters != Math.rint(quarters)) {
            return Affine.rotation(Math.toRadians(degrees % 360), about);
        }
        int turns = Math.floorMod((int) quarters, 4);
        double cos = turns == 0 ? 1 : turns == 2 ? -1 : 0;
        double sin = turns == 1 ? 1 : turns == 3 ? -1 : 0;
        return Affine.translation(about)
                .after(new Affine(cos, sin, -sin, cos, 0, 0))
                .after(Affine.translation(-about.x(), -about.y()));
    }

    private static double tangent(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }
}
