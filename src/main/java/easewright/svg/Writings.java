package easewright.svg;

import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.WrittenNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gives unnamed closed shapes and joined outlines the name written inside them, the largest where there are several. */
final class Writings {
    /** Words and where they are anchored, mm. */
    record Writing(Point at, Caption caption) {
        String text() {
            return caption.words();
        }

        /** The first of its lines that may be a name, and not a count, a level or a size; else empty. */
        String name() {
            return caption.lines().stream()
                    .map(WrittenNames::in)
                    .filter(name -> !name.isEmpty())
                    .findFirst()
                    .orElse("");
        }
    }

    /** Beyond this, searching every text in every outline would be felt. */
    private static final int MOST = 2000;

    private Writings() {}

    /** Shapes and joined outlines under the names that they have been given. */
    record Named(List<DrawnShape> shapes, List<JoinedOutline> joined) {}

    static Named name(List<DrawnShape> shapes, List<JoinedOutline> joined, List<Writing> writings) {
        if (writings.isEmpty() || writings.size() > MOST) {
            return new Named(shapes, joined);
        }
        List<Area> areas = new ArrayList<>();
        for (int i = 0; i < joined.size(); i++) {
            areas.add(Area.of(joined.get(i).outline(), shapes.size() + i, 0));
        }
        for (int i = 0; i < shapes.size(); i++) {
            if (shapes.get(i).shown()) {
                List<Area> own = Area.ofPieces(shapes.get(i), i);
                // One label cannot name several pieces.
                areas.addAll(own.size() == 1 ? own : List.of());
            }
            if (areas.size() > MOST) {
                return new Named(shapes, joined);
            }
        }
        List<DrawnShape> named = new ArrayList<>(shapes);
        List<JoinedOutline> namedJoined = new ArrayList<>(joined);
        for (Writing writing : largestFirst(writings)) {
            Area smallest = null;
            for (Area area : areas) {
                if ((smallest == null || area.area() < smallest.area()) && area.contains(writing.at())) {
                    smallest = area;
                }
            }
            if (smallest == null) {
                continue;
            }
            int j = smallest.index() - shapes.size();
            if (j >= 0 && namedJoined.get(j).label().isEmpty()) {
                namedJoined.set(j, namedJoined.get(j).withLabel(writing.name()));
            } else if (j < 0 && named.get(smallest.index()).label().isEmpty()) {
                named.set(smallest.index(), named.get(smallest.index()).withLabel(writing.name()));
            }
        }
        return new Named(named, namedJoined);
    }

    private static List<Writing> largestFirst(List<Writing> writings) {
        return writings.stream()
                .filter(writing -> !writing.name().isEmpty())
                .sorted(Comparator.comparingDouble(
                        (Writing writing) -> -writing.caption().height()))
                .toList();
    }
}
