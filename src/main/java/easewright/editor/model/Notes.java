package easewright.editor.model;

import easewright.alter.Truing;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.pattern.SidePair;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is to be noticed about the pattern to be seen, the weightiest first. What is untrue has a page of its own, and
 * of what is said of one seam or of one level only the weightiest is told.
 */
public final class Notes {
    /** What tells by how much a seam does not fit, where its fit is another by what is tried. */
    private static final Set<String> TRIED = Set.of("mate-drifted", "mate-nearer");

    /** What tells of a piece that lies over others of the same girth. */
    private static final Set<String> LAYERS = Set.of("layer-counted", "layer-above-counted");

    private Notes() {}

    /**
     * One note in words.
     *
     * @param why   what is to be known beyond its line, if anything
     * @param piece id of the piece it speaks of, if any
     * @param open  id of the line that it says does not close, if it does
     * @param seam  name of the seam it speaks of, if any
     * @param level name of the level that the piece lacks, if it says so
     * @param overlapAt name of the first level whose overlap on the piece it asks for, if it does
     * @param layerAt the levels out of whose girths it offers to leave the piece, if it does
     * @param onItself whether it asks if the piece is lined with itself
     * @param line  id of the closed line of which nobody said what it is, if it speaks of one
     */
    public record Note(
            Severity severity,
            String words,
            Optional<String> why,
            Optional<String> piece,
            Optional<String> open,
            Optional<String> seam,
            Optional<String> level,
            Optional<String> overlapAt,
            List<String> layerAt,
            boolean onItself,
            Optional<String> line) {}

    public static List<Note> of(Desk desk) {
        Map<String, String> ids = new HashMap<>();
        desk.pattern().pieces().forEach(p -> ids.putIfAbsent(p.name(), p.id()));
        List<Note> notes = new ArrayList<>();
        for (Finding finding : NotesTold.of(desk)) {
            notes.add(new Note(
                    finding.severity(),
                    desk.words().of(finding),
                    desk.words().why(finding),
                    finding.piece().isEmpty() ? Optional.empty() : id(finding.piece(), ids, desk),
                    openLine(finding),
                    seam(finding),
                    level(finding, desk),
                    overlapAt(finding),
                    layerAt(finding),
                    finding.code().equals("layer-on-itself"),
                    closedLine(finding)));
        }
        return List.copyOf(notes);
    }

    private static Optional<String> seam(Finding finding) {
        return Stream.of("mate", "seam")
                .map(key -> finding.values().get(key))
                .filter(String.class::isInstance)
                .map(String.class::cast)
                .findFirst();
    }

    /** The level that a girth is said to leave a piece out of. */
    private static Optional<String> level(Finding finding, Desk desk) {
        Object title = finding.values().get("level");
        return finding.code().startsWith("level-left-out")
                ? desk.reading().measures().inEverySize().girths().stream()
                        .filter(g -> g.title().equals(title))
                        .map(g -> g.level().name())
                        .findFirst()
                : Optional.empty();
    }

    private static Optional<String> overlapAt(Finding finding) {
        return finding.code().equals("overlap-unsaid") && finding.values().get("levels") instanceof List<?> levels
                ? levels.stream().map(String.class::cast).findFirst()
                : Optional.empty();
    }

    private static List<String> layerAt(Finding finding) {
        return LAYERS.contains(finding.code()) && finding.values().get("levels") instanceof List<?> levels
                ? levels.stream().map(String.class::cast).toList()
                : List.of();
    }

    private static Optional<String> closedLine(Finding finding) {
        return finding.values().get("line") instanceof String id ? Optional.of(id) : Optional.empty();
    }

    /** A closed line on the table that is no outline of a piece; empty where there is none of that id. */
    public static Optional<Pointed> pointedLine(Desk desk, String id) {
        Stream<Rider> loose = desk.file().stream().flatMap(f -> BesideLines.loose(f, desk.pattern()));
        Stream<Rider> inner = desk.pattern().pieces().stream().flatMap(p -> p.riders().stream());
        return Stream.concat(loose, inner)
                .filter(r -> r.id().equals(id))
                .findFirst()
                .map(r -> new Pointed("", Optional.of(r.segments().get(0).start()), r.segments()));
    }

    /** The edges of a seam on the table, in the size at work; empty where there is none of that name. */
    public static Optional<Pointed> pointed(Desk desk, String seam) {
        Pattern pattern = desk.size()
                .map(size -> PatternPart.ofSize(desk.shown(), size).alone())
                .orElse(desk.shown());
        Optional<Mate> mate =
                pattern.mates().stream().filter(m -> m.name().equals(seam)).findFirst();
        List<EdgeRef> edges = mate.stream()
                .flatMap(m -> Stream.concat(m.first().stream(), m.second().stream()))
                .filter(ref -> pattern.edge(ref).isPresent())
                .toList();
        // All of them are meant, whichever piece they are on.
        List<Curve> runs = edges.stream().map(ref -> run(pattern, ref)).toList();
        List<Point> middles =
                runs.stream().map(run -> run.pointAtLength(run.length() / 2)).toList();
        return edges.isEmpty()
                ? Optional.empty()
                : pattern.piece(edges.get(0).piece())
                        .map(p -> new Pointed(
                                p.id(),
                                Optional.of(middles.get(0)),
                                middles.subList(1, middles.size()),
                                edges.stream()
                                        .flatMap(ref -> pattern.piece(ref.piece()).stream())
                                        .map(Piece::id)
                                        .collect(Collectors.toSet()),
                                runs.stream()
                                        .flatMap(run -> run.segments().stream())
                                        .toList()));
    }

    private static Curve run(Pattern pattern, EdgeRef ref) {
        Piece piece = pattern.piece(ref.piece()).orElseThrow();
        return piece.edge(ref.edge()).orElseThrow().on(piece.outline());
    }

    /** The id of the line that a finding says does not close, if that is what it says. */
    public static Optional<String> openLine(Finding finding) {
        return finding.code().equals("outline-open") && finding.values().get("id") instanceof String id
                ? Optional.of(id)
                : Optional.empty();
    }

    /** Most findings call their piece by a name that no other has. */
    private static Optional<String> id(String piece, Map<String, String> ids, Desk desk) {
        boolean unique = ids.size() == desk.pattern().pieces().size();
        return unique && ids.containsKey(piece)
                ? Optional.of(ids.get(piece))
                : desk.pattern()
                        .piece(piece)
                        .or(() -> SidePair.of(desk.pattern()).stream()
                                .filter(p -> p.wholeName().equals(piece))
                                .map(SidePair::drawn)
                                .findFirst())
                        .map(Piece::id);
    }

    /** How many of the notes tell of trouble; the others are only good to know. */
    public static int count(Desk desk) {
        return (int) troubles(desk).count();
    }

    /**
     * How many of them tell of trouble that is put right on no other page.
     *
     * @param work what is put right on the page True; empty while that is looked for
     */
    public static long count(Desk desk, Optional<TrueWork> work) {
        return troubles(desk).filter(f -> !isPutRight(f, desk, work)).count();
    }

    /**
     * The key of what stands above the notes: a seam that does not fit is among them and counts on the page True, which is
     * said, since a sign of trouble on a page without a number would else contradict itself.
     *
     * @param work what is put right there; empty while that is looked for
     */
    public static String intro(Desk desk, Optional<TrueWork> work) {
        if (of(desk).isEmpty()) {
            return untrue(desk) > 0 ? "editor.notes.none.untrue" : "editor.notes.none";
        }
        return count(desk, work) < count(desk) ? "editor.notes.intro.true" : "editor.notes.intro";
    }

    /**
     * How much there is to be done on the page True: seams that do not fit, and places that are not true. As many as it
     * lists, and that is what was before anything is tried.
     *
     * @param work what is put right there; empty while that is looked for
     */
    public static long open(Desk desk, Optional<TrueWork> work) {
        if (work.isPresent()) {
            return work.get().offers().size() + work.get().places().size();
        }
        Desk still = desk.untried();
        return untrue(still)
                + troubles(still).filter(f -> isPutRight(f, still, work)).count();
    }

    private static Stream<Finding> troubles(Desk desk) {
        return NotesTold.of(desk).stream().filter(f -> f.severity() != Severity.NOTE);
    }

    /** Whether it tells of a seam that is offered to be put right. What is tried comes with no offers yet. */
    private static boolean isPutRight(Finding finding, Desk desk, Optional<TrueWork> work) {
        return seam(finding)
                .filter(seam -> NotesTold.MISFITS.contains(finding.code()) || TRIED.contains(finding.code()))
                .filter(seam -> work.isEmpty()
                        ? desk.trial().isEmpty()
                        : work.get().offers().stream().anyMatch(o -> o.seam().equals(seam)))
                .isPresent();
    }

    /** How many places of the pattern are not true, in the sizes in which something is done. */
    public static long untrue(Desk desk) {
        List<String> sizes = desk.sizesTaking();
        return desk.reading().findings().stream()
                .filter(Truing::tells)
                .filter(f -> sizes.isEmpty()
                        || desk.pattern()
                                .piece(f.piece())
                                .flatMap(Piece::size)
                                .map(sizes::contains)
                                .orElse(true))
                .count();
    }
}
