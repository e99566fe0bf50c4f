package easewright.print.sheet;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes the names of the pieces on a map of the sheets, clear of what is written and drawn there. */
final class MapNames {
    /** A whole name so near to the middle of its piece, mm, with nothing in its way, is well placed. */
    private static final double GOOD = 10;

    /** Sizes of letters, mm. */
    private static final double LARGEST = 3;

    private static final double USUAL = 2.2;
    private static final double LOWEST = 1.8;

    private static final double ON_LETTERS = 1000;
    private static final double ON_BORDER = 10;
    private static final double OFF_PIECE = 10_000;

    private final Pencil pencil;
    private final List<Box> taken;
    private final List<Box> borders;

    /**
     * @param taken   what numbers and letters take of the map
     * @param borders the sides of the sheets on it
     */
    MapNames(Pencil pencil, List<Box> taken, List<Box> borders) {
        this.pencil = pencil;
        this.taken = taken;
        this.borders = borders;
    }

    /**
     * A piece to be named.
     *
     * @param number  written before the name, and alone where that has no room, if there are numbers
     * @param corners of the piece on the map
     */
    record Named(String name, Optional<String> number, List<Point> corners) {
        String all() {
            return number.map(n -> n + " " + name).orElse(name);
        }
    }

    /**
     * Writes the names, or else as much of them as there is room for: all in letters of one size, but for those that have
     * room for the lowest letters alone.
     *
     * @return whether every name stands there whole
     */
    boolean write(List<Named> pieces) {
        List<Optional<Name>> whole = new ArrayList<>();
        double common = LARGEST;
        for (Named piece : pieces) {
            Optional<Name> largest = Optional.empty();
            for (double size : List.of(LARGEST, USUAL, LOWEST)) {
                largest = largest.or(() -> whole(piece, size));
            }
            whole.add(largest);
            if (largest.isPresent() && largest.get().size > LOWEST) {
                common = Math.min(common, largest.get().size);
            }
        }
        boolean all = true;
        for (int i = 0; i < pieces.size(); i++) {
            Named piece = pieces.get(i);
            double size = common;
            Optional<Name> name = whole.get(i).flatMap(n -> n.size > size ? whole(piece, size) : Optional.of(n));
            all &= name.isPresent();
            write(name.orElseGet(() -> best(piece.number().orElse(piece.all()), piece.corners(), LOWEST)));
        }
        return all;
    }

    private Optional<Name> whole(Named piece, double size) {
        return Optional.of(best(piece.all(), piece.corners(), size))
                .filter(n -> n.text.equals(piece.all()) && n.cost < ON_LETTERS);
    }

    private void write(Name name) {
        // On paper of its own, so that the lines of the joins do not cross it out.
        pencil.fill(around(name.at, name.words.width() + 0.8, name.words.height() + 0.6), Tone.PALE);
        double drop = name.size * 0.35;
        Point base = name.at.plus(name.upright ? new Point(0, drop) : new Point(drop, 0));
        double turn = name.upright ? 0 : -Math.PI / 2;
        pencil.write(name.text, base, name.size, Anchor.MIDDLE, turn, false, Tone.BLACK);
    }

    /** The name of a piece on the map, in its middle {@code at}; less cost is better. */
    private record Name(String text, double size, boolean upright, Box words, Point at, double cost) {}

    private Name best(String name, List<Point> corners, double size) {
        boolean across = Box.around(corners).width() > Lettering.of(false).width(name, size) + 1;
        Name best = null;
        for (boolean upright : new boolean[] {across, !across}) {
            for (double share : new double[] {1, 0.6, 0.35}) {
                Name tried = name(name, corners, size, upright, share);
                best = best == null || tried.cost < best.cost - 1 ? tried : best;
                if (best.cost < GOOD && best.text.equals(name)) {
                    return best;
                }
            }
        }
        return best;
    }

    /** @param share of the piece's length that the name may take */
    private Name name(String name, List<Point> corners, double size, boolean upright, double share) {
        Box box = Box.around(corners);
        Lettering face = Lettering.of(false);
        String text = face.fitted(name, size, share * (upright ? box.width() : box.height()));
        double along = face.width(text, size);
        Box words = upright ? around(box.centre(), along, size) : around(box.centre(), size, along);
        Room room = room(corners, box, words);
        Point at = box.centre();
        double least = Double.POSITIVE_INFINITY;
        for (double down = 0.06; down < 0.95; down += 0.02) {
            for (double across = 0.1; across < 0.95; across += 0.05) {
                Point spot = new Point(box.minX() + across * box.width(), box.minY() + down * box.height());
                double cost = room.cost(spot, least);
                if (cost < least) {
                    least = cost;
                    at = spot;
                }
            }
        }
        return new Name(text, size, upright, words, at, least + 400 * (1 - (double) text.length() / name.length()));
    }

    private Room room(List<Point> corners, Box piece, Box words) {
        Box reached = around(piece.centre(), piece.width() + words.width() + 1, piece.height() + words.height() + 1);
        return new Room(
                Outline.polygon(corners),
                piece.centre(),
                words,
                taken.stream().filter(reached::overlaps).toList(),
                borders.stream().filter(reached::overlaps).toList());
    }

    /** A piece on the map, and of what is in the way only what words on it can meet. */
    private record Room(Outline piece, Point middle, Box words, List<Box> taken, List<Box> borders) {
        /**
         * Free of numbers, letters and borders, on the piece, the nearer its middle the better.
         *
         * @param least what the best place found so far costs: a cost that is no less need not be exact
         */
        double cost(Point at, double least) {
            double cost = at.distance(middle);
            if (cost >= least) {
                return cost;
            }
            Box box = around(at, words.width() + 1, words.height() + 1);
            cost += isOn(box) ? 0 : OFF_PIECE;
            if (cost >= least) {
                return cost;
            }
            return cost
                    + ON_LETTERS * taken.stream().filter(box::overlaps).count()
                    + ON_BORDER * borders.stream().filter(box::overlaps).count();
        }

        private boolean isOn(Box box) {
            return Stream.of(
                            new Point(box.minX(), box.minY()),
                            new Point(box.maxX(), box.minY()),
                            new Point(box.minX(), box.maxY()),
                            new Point(box.maxX(), box.maxY()))
                    .allMatch(piece::contains);
        }
    }

    private static Box around(Point middle, double wide, double high) {
        return new Box(middle.x() - wide / 2, middle.y() - high / 2, middle.x() + wide / 2, middle.y() + high / 2);
    }
}
