package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.measure.LayerCounted;
import easewright.pattern.Caption;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LevelWords;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Finds levels: lines across a piece with a level's name beside them, the waist where it is an edge, and the hip below it
 * where none is drawn.
 */
final class LevelLines {
    /** A level lies this nearly square to the grain, degrees. */
    private static final double SQUARE = 6;

    /** Its ends come this near to the stitching line, mm. */
    private static final double REACHES = 25;

    /** A sleeve longer than this reaches to the wrist, mm. */
    private static final double LONG_SLEEVE = 330;

    private final Sheet sheet;
    private final PieceWords words;
    private final Map<String, Level> levels = new LinkedHashMap<>();
    private final Map<String, Map<String, LevelMark>> marks = new LinkedHashMap<>();
    private final Map<String, Map<String, List<Rider>>> lines = new LinkedHashMap<>();
    private final Map<String, Reason> reasons = new LinkedHashMap<>();

    private LevelLines(Sheet sheet) {
        this.sheet = sheet;
        words = PieceWords.of(sheet);
    }

    static List<Suggestion> find(Sheet sheet) {
        LevelLines found = new LevelLines(sheet);
        found.alongWaists();
        found.drawn();
        found.hipsBelowWaists();
        found.alongWrists();
        List<Suggestion> all = new ArrayList<>();
        found.levels.forEach((name, level) -> {
            if (sheet.pattern().level(name).isEmpty()) {
                all.add(new LevelSuggestion(
                        level,
                        found.marks.get(name),
                        found.lines.getOrDefault(name, Map.of()),
                        found.reasons.get(name)));
            }
        });
        return all;
    }

    private void add(Level level, Piece piece, LevelMark mark, Reason reason) {
        levels.putIfAbsent(level.name(), level);
        reasons.putIfAbsent(level.name(), reason);
        marks.computeIfAbsent(level.name(), n -> new LinkedHashMap<>())
                .putIfAbsent(
                        piece.id(),
                        ButtonStand.on(piece, isOverOthers(piece) ? mark.notCounted() : mark, words.on(piece)));
    }

    /**
     * A shaped waist is measured along its edge; a band sewn to it goes round the same waist and counts once. So does a
     * bodice above a skirt, which counts: from its waist the hip is measured.
     */
    private void alongWaists() {
        for (Piece piece : sheet.pattern().pieces()) {
            List<Edge> waists = waists(piece);
            boolean shaped = piece.edges().stream()
                    .anyMatch(e ->
                            e.role() != EdgeRole.WAIST && (e.role() == EdgeRole.HEM || e.role() == EdgeRole.SHOULDER));
            if (waists.size() == 1 && shaped) {
                LevelMark mark = LevelMark.along("waist", waists.get(0).name());
                add(
                        Level.of("waist", LevelKind.WAIST),
                        piece,
                        isBodice(piece) && hasSkirt(piece.size()) ? mark.notCounted() : mark,
                        Reason.of("waist-edge", 0.85));
            }
        }
    }

    /** A facing or a lining lies on another piece of its size, which counts. */
    private boolean isOverOthers(Piece piece) {
        return LayerCounted.isLayer(piece)
                && sheet.pattern().pieces().stream()
                        .anyMatch(p -> p.size().equals(piece.size()) && !LayerCounted.isLayer(p));
    }

    private static List<Edge> waists(Piece piece) {
        return piece.edges().stream().filter(e -> e.role() == EdgeRole.WAIST).toList();
    }

    private static boolean isBodice(Piece piece) {
        return piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.SHOULDER || e.role() == EdgeRole.ARMHOLE);
    }

    /** Whether pieces of that size hang from a waist of their own, on which the level can be laid. */
    private boolean hasSkirt(Optional<String> size) {
        return sheet.pattern().pieces().stream()
                .filter(p -> p.size().equals(size) && !isBodice(p))
                .anyMatch(p -> waists(p).size() == 1 && p.edges().stream().anyMatch(e -> e.role() == EdgeRole.HEM));
    }

    /** Where no hip is drawn, nor marked, nor written. */
    private void hipsBelowWaists() {
        boolean known = levels.values().stream().anyMatch(LevelLines::isHip)
                || sheet.pattern().levels().stream().anyMatch(LevelLines::isHip);
        if (known) {
            return;
        }
        Map<Optional<String>, List<Piece>> bySize = sheet.pattern().pieces().stream()
                .filter(p -> HipBelowWaist.waist(p).isPresent())
                .collect(Collectors.groupingBy(Piece::size, LinkedHashMap::new, Collectors.toList()));
        for (List<Piece> pieces : bySize.values()) {
            double depth = HipBelowWaist.depth(pieces);
            Reason reason = new Reason("hip-below-waist", Map.of("below", depth), 0.45);
            for (Piece piece : pieces) {
                HipBelowWaist.on(piece, depth)
                        .ifPresent(mark -> add(Level.of(HipBelowWaist.LEVEL, LevelKind.HIP), piece, mark, reason));
            }
        }
    }

    private static boolean isHip(Level level) {
        return level.kind() == LevelKind.HIP || level.kind() == LevelKind.HIGH_HIP;
    }

    private void alongWrists() {
        for (Piece piece : sheet.pattern().pieces()) {
            Optional<Edge> hem =
                    piece.edges().stream().filter(e -> e.role() == EdgeRole.HEM).findFirst();
            boolean sleeve = piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.CAP);
            if (hem.isPresent() && sleeve && piece.outline().box().height() > LONG_SLEEVE) {
                add(
                        Level.of("wrist", LevelKind.WRIST),
                        piece,
                        LevelMark.along("wrist", hem.get().name()),
                        Reason.of("sleeve-hem", 0.6));
            }
        }
    }

    private void drawn() {
        for (Piece piece : sheet.pattern().pieces()) {
            piece.riders().forEach(rider -> lines(piece, rider, true));
            sheet.linesOfOtherSizes(piece).forEach(rider -> lines(piece, rider, false));
        }
    }

    private void lines(Piece piece, Rider rider, boolean own) {
        for (Pen pen : Pen.of(rider)) {
            if (pen.isLine()) {
                line(piece, rider, pen.runs().get(0), own);
            }
        }
    }

    /**
     * @param own whether the line goes along with the piece
     */
    private void line(Piece piece, Rider rider, Curve run, boolean own) {
        Line line = Pen.chord(run);
        double turn = Turns.between(line.tangent(0), piece.grainDirection());
        boolean across = 90 - turn <= SQUARE
                && line.length() > 40
                && piece.outline().nearest(line.start()).distance() <= REACHES
                && piece.outline().nearest(line.end()).distance() <= REACHES;
        if (!across) {
            return;
        }
        named(line).ifPresent(level -> {
            boolean known = marks.getOrDefault(level.name(), Map.of()).containsKey(piece.id());
            if (known) {
                return;
            }
            double degrees = Turns.signed(piece.grainDirection().quarterTurned(), line.tangent(0));
            double folded = degrees > 90 ? degrees - 180 : degrees < -90 ? degrees + 180 : degrees;
            LevelMark straight = LevelMark.through(level.name(), line.at(0.5)).withReference(Reference.of(piece));
            LevelMark mark = Math.abs(folded) < 0.05
                    ? straight
                    : new LevelMark(
                            level.name(),
                            straight.through(),
                            Optional.empty(),
                            folded,
                            true,
                            0,
                            straight.span(),
                            straight.reference());
            add(level, piece, mark, Reason.of("line-with-name", 0.9));
            if (own) {
                lines.computeIfAbsent(level.name(), n -> new LinkedHashMap<>())
                        .computeIfAbsent(piece.id(), id -> new ArrayList<>())
                        .add(rider);
            }
        });
    }

    /** The level whose name stands just above or below the line. */
    private Optional<Level> named(Line line) {
        return sheet.captions().stream()
                .filter(c -> LevelWords.of(c.words()).isPresent())
                .filter(c -> away(line, c) <= 1.6 * c.height() + 2)
                .min(Comparator.comparingDouble(c -> away(line, c)))
                .flatMap(c -> LevelWords.of(c.words()));
    }

    private static double away(Line line, Caption caption) {
        Point at = caption.middle();
        return line.at(line.nearest(at)).distance(at);
    }
}
