package easewright.editor.mark;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** From a place on the table to the next certain one, for the keyboard. The last is followed by the first. */
final class FromPlace {
    private FromPlace() {}

    /**
     * The next place, or with −1 the one before. A hand that was moved off a place goes on from the nearest one of its
     * piece, and back to that.
     *
     * @param over where the hand is; empty before the first step
     */
    static Optional<Snap> next(List<Snap> places, Optional<Snap> over, int by) {
        if (places.isEmpty()) {
            return Optional.empty();
        }
        int at = over.map(places::indexOf).orElse(-1);
        int from = by > 0 ? -1 : 0;
        if (at >= 0) {
            from = at;
        } else if (over.isPresent()) {
            from = nearest(places, over.get()) + (by > 0 ? 0 : 1);
        }
        return Optional.of(places.get(Math.floorMod(from + by, places.size())));
    }

    private static int nearest(List<Snap> places, Snap over) {
        boolean any = places.stream().anyMatch(p -> p.piece().equals(over.piece()));
        return IntStream.range(0, places.size())
                .boxed()
                .filter(i -> !any || places.get(i).piece().equals(over.piece()))
                .min(Comparator.comparingDouble(i -> places.get(i).at().distance(over.at())))
                .orElse(0);
    }

    /** The first place of the next piece, or with −1 of the one before. */
    static Optional<Snap> onNextPiece(List<Snap> places, Optional<Snap> over, int by) {
        List<Optional<String>> pieces =
                places.stream().map(Snap::piece).distinct().toList();
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        int at = over.map(o -> pieces.indexOf(o.piece())).orElse(-1);
        Optional<String> next = pieces.get(Math.floorMod((at < 0 && by < 0 ? 0 : at) + by, pieces.size()));
        return places.stream().filter(p -> p.piece().equals(next)).findFirst();
    }
}
