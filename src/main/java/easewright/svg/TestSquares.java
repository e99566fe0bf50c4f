package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.UprightSquare;
import easewright.pattern.Caption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Squares that are drawn on paper patterns so that the size of the print can be checked. */
final class TestSquares {
    /** Beyond this many squares or texts the drawing is some other kind of thing. */
    private static final int MOST = 1000;

    /** How much the sides may differ, as a part of the side. */
    private static final double EQUAL = 0.002;

    private static final Pattern SIZE = Pattern.compile(
            "(?<![\\d.,/])(\\d{1,4}(?:[.,]\\d{1,3})?)\\s*"
                    + "(?:(?:mm|cm|in|\")?\\s*[x\u00d7]\\s*\\d{1,4}(?:[.,]\\d{1,3})?\\s*)?(mm|cm|inch(?:es)?|in\\b|[\"\u2033])");

    /**
     * A square with its size written to it.
     *
     * @param side as drawn, in mm at the scale by which the drawing was read
     * @param mm   as written
     * @param seen the words that say so
     */
    record Marked(double side, double mm, String seen) {
        /** How large it is drawn, in percent of what is written. */
        double percent() {
            return 100 * side / mm;
        }
    }

    private TestSquares() {}

    /** Whether an outline is an upright square of straight lines. */
    static boolean isSquare(Outline outline) {
        return square(outline).isPresent();
    }

    private static Optional<UprightSquare> square(Outline outline) {
        return UprightSquare.of(outline.segments(), EQUAL);
    }

    /** The words in a square that say how large it is, the nearest to its middle. */
    static Optional<String> words(Outline outline, List<Caption> captions) {
        if (!isSquare(outline)) {
            return Optional.empty();
        }
        Box box = outline.box();
        return captions.stream()
                .filter(c -> box.contains(c.middle()) && mm(c.words()).isPresent())
                .min(Comparator.comparingDouble(c -> box.centre().distance(c.middle())))
                .map(Caption::words);
    }

    /** Squares with a size written inside or near them. */
    static List<Marked> find(List<DrawnShape> shapes, List<Writings.Writing> writings) {
        List<Writings.Writing> sizes = writings.stream()
                .filter(writing -> mm(writing.text()).isPresent())
                .limit(MOST)
                .toList();
        if (sizes.isEmpty()) {
            return List.of();
        }
        List<UprightSquare> squares = new ArrayList<>();
        for (DrawnShape shape : shapes) {
            for (SubPath line : shape.shown() ? shape.subPaths() : List.<SubPath>of()) {
                if (squares.size() < MOST) {
                    line.outline().flatMap(TestSquares::square).ifPresent(squares::add);
                }
            }
        }
        List<Marked> found = new ArrayList<>();
        for (Writings.Writing size : sizes) {
            squares.stream()
                    .filter(square -> square.box().distance(size.at()) <= square.side() / 2)
                    .min(Comparator.comparingDouble(square -> square.box().distance(size.at())))
                    .ifPresent(square ->
                            found.add(new Marked(square.side(), mm(size.text()).orElseThrow(), size.text())));
        }
        return found;
    }

    private static Optional<Double> mm(String text) {
        Matcher size = SIZE.matcher(text.toLowerCase(Locale.ROOT));
        if (!size.find()) {
            return Optional.empty();
        }
        double number = Double.parseDouble(size.group(1).replace(',', '.'));
        double mm = switch (size.group(2)) {
            case "mm" -> number;
            case "cm" -> number * 10;
            default -> number * Length.MM_PER_INCH;
        };
        return mm > 0 ? Optional.of(mm) : Optional.empty();
    }
}
