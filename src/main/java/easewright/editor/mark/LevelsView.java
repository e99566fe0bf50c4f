package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.editor.model.LevelFigures;
import easewright.measure.Girth;
import easewright.measure.LevelSeams;
import easewright.measure.LevelWidth;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import easewright.print.GirthText;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The levels of the garment and where they lie, in words.
 *
 * @param kinds levels that could be added
 */
public record LevelsView(List<Row> levels, List<Kind> kinds) {
    public LevelsView {
        levels = List.copyOf(levels);
        kinds = List.copyOf(kinds);
    }

    /**
     * A kind of level to add, under its usual name.
     *
     * @param reached whether the pieces reach it, as far as is known
     */
    public record Kind(LevelKind kind, String name, boolean reached) {}

    /**
     * One level.
     *
     * @param limb   whether it goes round one arm or leg
     * @param measured how it is measured on its pieces: straight across, or along which edge
     * @param girth  the finished girth there, with its size where there are several; empty while it lies on no piece of it
     * @param places where it lies
     * @param apart  whether it lies at different distances on its pieces
     * @param misses at which seams its lines miss each other, and by how much; empty where they meet
     * @param meetable whether they can be laid so that they miss each other less
     * @param others other levels from which it can be put: those that lie on its pieces and on the same part of the body
     */
    public record Row(
            String name,
            boolean limb,
            String measured,
            String girth,
            List<Place> places,
            boolean apart,
            String misses,
            boolean meetable,
            List<String> others) {
        public Row {
            places = List.copyOf(places);
            others = List.copyOf(others);
        }
    }

    /**
     * A level on one piece.
     *
     * @param distance from its reference, down or up; empty where it runs along an edge
     * @param above    whether it lies above its reference
     * @param how      from where it is measured, or along which edge it runs
     * @param overlap  what of it lies on the other side of an opening, empty while that is not said; none where it comes
     *                 to no opening
     * @param drawn    what the drawing shows of that while it is not said
     * @param unlike   whether at other levels of the piece something else is said of that
     */
    public record Place(
            String piece,
            String name,
            String distance,
            boolean above,
            String how,
            String width,
            boolean counts,
            Optional<String> overlap,
            Optional<String> drawn,
            boolean unlike) {}

    public static LevelsView of(Desk desk) {
        Words words = desk.words();
        List<Row> rows = new ArrayList<>();
        List<Level> levels = desk.pattern().levels();
        for (Level level : levels) {
            List<Place> places = new ArrayList<>();
            for (Piece piece : desk.pattern().pieces()) {
                piece.level(level.name()).ifPresent(m -> places.add(place(desk, piece, m)));
            }
            String girth = places.isEmpty()
                    ? ""
                    : desk.reading()
                            .measures()
                            .girth(level.name())
                            .filter(g -> !g.parts().isEmpty() || g.size().isEmpty())
                            .map(g -> girth(g, desk))
                            .orElse("");
            List<String> others = levels.stream()
                    .filter(other -> !other.equals(level) && LevelOrder.isReferenceOf(level, other))
                    .map(Level::name)
                    .filter(n -> desk.pattern().pieces().stream()
                            .filter(p ->
                                    places.isEmpty() || p.level(level.name()).isPresent())
                            .anyMatch(p -> p.level(n).isPresent()))
                    .toList();
            boolean meetable = missing(desk, level, false).findAny().isPresent()
                    && LevelMeetings.better(desk.pattern(), level.name(), Set.of())
                            .isPresent();
            String misses = misses(desk, level, meetable, words);
            rows.add(new Row(
                    level.name(),
                    level.limb(),
                    measured(desk, level, words),
                    girth,
                    places,
                    isApart(places),
                    misses,
                    meetable,
                    others));
        }
        return new LevelsView(rows, LevelsOffered.of(desk.pattern(), levels, words));
    }

    private static String measured(Desk desk, Level level, Words words) {
        List<LevelMark> marks = desk.pattern().pieces().stream()
                .flatMap(p -> p.level(level.name()).stream())
                .toList();
        List<String> edges = marks.stream().flatMap(m -> m.along().stream()).toList();
        if (edges.isEmpty()) {
            return words.of(marks.isEmpty() ? "editor.level.measured.nowhere" : "editor.level.measured.across");
        }
        if (edges.size() < marks.size()) {
            return words.of("editor.level.measured.partly");
        }
        return edges.stream().distinct().count() == 1
                ? words.of("editor.level.along", Map.of("edge", edges.get(0)))
                : words.of("editor.level.measured.edges");
    }

    private static String girth(Girth girth, Desk desk) {
        Words words = desk.words();
        String finished = words.length(new GirthText(words, desk.pattern()).finished(girth));
        return girth.size()
                .map(s -> words.of("editor.level.girth.in-size", Map.of("size", s, "girth", finished)))
                .orElse(finished);
    }

    /** Where the level meets at the seams, or where it does not. */
    private static Stream<LevelSeams.Meeting> missing(Desk desk, Level level, boolean meets) {
        return LevelMeetings.meetings(desk.pattern(), desk.reading().measures(), level.name()).stream()
                .filter(m -> m.meets() == meets);
    }

    private static String misses(Desk desk, Level level, boolean meetable, Words words) {
        List<String> seams = missing(desk, level, false)
                .map(m -> words.of("editor.level.misses.seam", Map.of("seam", m.seam(), "off", Math.abs(m.off()))))
                .toList();
        List<String> met = missing(desk, level, true)
                .map(m -> words.of("editor.level.misses.met", Map.of("seam", m.seam())))
                .distinct()
                .toList();
        String key = meetable ? "" : met.isEmpty() ? ".all" : ".straight";
        return seams.isEmpty()
                ? ""
                : words.of(
                        "editor.level.misses" + key,
                        Map.of("seams", String.join(", ", seams), "met", String.join(", ", met)));
    }

    private static boolean isApart(List<Place> places) {
        return places.stream()
                        .map(Place::distance)
                        .filter(d -> !d.isEmpty())
                        .distinct()
                        .count()
                > 1;
    }

    private static Place place(Desk desk, Piece piece, LevelMark mark) {
        Words words = desk.words();
        OptionalDouble distance = LevelEdits.distance(piece, mark.level());
        // What would be told as 0 lies neither above nor below.
        boolean above = distance.isPresent() && distance.getAsDouble() < -0.5;
        String how = mark.along().isPresent()
                ? words.of("editor.level.along", Map.of("edge", mark.along().get()))
                : FromReference.words(piece, mark, above, words);
        Optional<LevelWidth> width = desk.reading().measures().piece(piece.id()).flatMap(m -> m.level(mark.level()));
        return new Place(
                piece.id(),
                piece.name(),
                distance.isPresent() ? words.length(above ? -distance.getAsDouble() : distance.getAsDouble()) : "",
                above,
                how,
                width.map(w -> LevelFigures.of(w, told(desk, w), words)).orElse(""),
                mark.counts(),
                Overlaps.end(desk.pattern(), piece, mark).isPresent() || mark.overlap() > 0
                        ? Optional.of(mark.overlapSaid().isPresent() ? words.entered(mark.overlap()) : "")
                        : Optional.empty(),
                Overlaps.drawn(desk.pattern(), piece, mark).stream()
                        .mapToObj(words::length)
                        .findFirst(),
                Overlaps.isUnlike(desk.pattern(), piece, mark));
    }

    private static String told(Desk desk, LevelWidth width) {
        return new GirthText(desk.words(), desk.pattern()).width(desk.reading().measures(), width);
    }
}
