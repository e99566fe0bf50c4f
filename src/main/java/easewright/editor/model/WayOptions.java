package easewright.editor.model;

import easewright.alter.DartIntake;
import easewright.alter.DartShare;
import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.editor.model.WayForm.Option;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;

/** What may be chosen in the form of a way, narrowed to what can take part at the level at work. */
final class WayOptions {
    private final OtherWay other;
    private final Desk desk;
    private final Pattern pattern;

    private WayOptions(OtherWay other, Desk desk) {
        this.other = other;
        this.desk = desk;
        this.pattern = desk.pattern();
    }

    /**
     * @param key of the setting's words
     */
    static List<Option> of(Setting setting, String key, OtherWay other, Desk desk) {
        WayOptions options = new WayOptions(other, desk);
        return switch (setting.kind()) {
            case LEVEL ->
                plain(desk.pattern().levels().stream().map(Level::name).toList());
            case EDGE -> options.edges();
            case SHARES -> options.seams();
            case PIECE -> pieces(desk.pattern().pieces());
            case PIECES -> pieces(options.taking());
            case NAME, NAMES -> plain(options.names());
            case CHOICE ->
                setting.choices().stream()
                        .sorted(Comparator.comparing(c -> !c.equals(setting.standard())))
                        .map(c -> new Option(c, desk.words().of(key + "." + c)))
                        .toList();
            case DARTS -> options.darts();
            default -> List.of();
        };
    }

    /** Whether the pieces of a garment have what a way changes, at any level: darts, or sleeves with a cap. */
    static boolean allows(Pattern garment, Way way) {
        return way.settings().stream().allMatch(setting -> switch (setting.kind()) {
            case DARTS -> garment.pieces().stream().anyMatch(p -> !p.darts().isEmpty());
            case PIECES ->
                way.aim() == Way.Aim.LENGTH || garment.pieces().stream().anyMatch(WayOptions::isSleeve);
            default -> true;
        });
    }

    private static boolean isSleeve(Piece piece) {
        return piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.CAP);
    }

    /** What takes part where nothing is chosen: all that can. */
    static List<String> usual(Setting setting, OtherWay other, Desk desk) {
        return switch (setting.kind()) {
            case SHARES, DARTS, PIECES ->
                of(setting, "", other, desk).stream().map(Option::text).toList();
            default -> List.of();
        };
    }

    private static List<Option> plain(List<String> names) {
        return names.stream().map(n -> new Option(n, n)).toList();
    }

    private static List<Option> pieces(List<Piece> pieces) {
        return pieces.stream().map(p -> new Option(p.id(), p.name())).toList();
    }

    /** For a change of the girth: centre lines first; for one of an edge: seams first. */
    private List<Option> edges() {
        boolean ofGirth = other.way().aim() == Way.Aim.GIRTH;
        List<Piece> pieces = ofGirth ? counting() : pattern.pieces();
        ToIntFunction<Edge> rank = edge -> switch (edge.role()) {
            case FOLD, CENTRE -> ofGirth ? 0 : 2;
            case SEAM -> 1;
            default -> ofGirth ? 2 : 1;
        };
        List<Option> options = new ArrayList<>();
        for (int wanted = 0; wanted <= 2; wanted++) {
            for (Piece piece : pieces) {
                for (Edge edge : piece.edges()) {
                    if (rank.applyAsInt(edge) == wanted && (!ofGirth || wanted == 0)) {
                        options.add(option(piece, edge.name()));
                    }
                }
            }
        }
        return options;
    }

    /** The seams that the level meets. */
    private List<Option> seams() {
        List<Option> options = new ArrayList<>();
        desk.reading().measures().girths().stream()
                .filter(g -> desk.level().equals(java.util.Optional.of(g.level())))
                .flatMap(g -> Hold.of(pattern, g).stream())
                .map(Hold::edge)
                .distinct()
                .forEach(ref -> pattern.piece(ref.piece()).ifPresent(p -> options.add(option(p, ref.edge()))));
        return options;
    }

    private List<Option> darts() {
        List<Option> options = new ArrayList<>();
        for (DartShare share : desk.level().map(l -> DartIntake.at(pattern, l)).orElse(List.of())) {
            pattern.piece(share.piece()).ifPresent(p -> options.add(option(p, share.dart())));
        }
        return options;
    }

    private Option option(Piece piece, String part) {
        String label = desk.words().of("editor.here.seam", Map.of("piece", piece.name(), "edge", part));
        return new Option(piece.id() + "/" + part, label);
    }

    private List<Piece> counting() {
        return pattern.pieces().stream()
                .filter(p -> desk.level()
                        .flatMap(l -> p.level(l.name()))
                        .filter(m -> m.counts())
                        .isPresent())
                .toList();
    }

    /** Pieces that a way can change: for one of length, all on which the level is marked; else those with a cap. */
    private List<Piece> taking() {
        if (other.way().aim() == Way.Aim.LENGTH) {
            return pattern.pieces().stream()
                    .filter(p -> desk.level().flatMap(l -> p.level(l.name())).isPresent())
                    .toList();
        }
        return counting().stream()
                .filter(WayOptions::isSleeve)
                .sorted(Comparator.comparing(Piece::name))
                .toList();
    }

    private List<String> names() {
        Set<String> names = new LinkedHashSet<>();
        pattern.levels().stream().map(Level::name).forEach(names::add);
        for (Piece piece : counting()) {
            piece.notches().stream().map(Notch::name).forEach(names::add);
            piece.edges().stream().map(Edge::name).forEach(names::add);
        }
        // What is being changed cannot stay as it is.
        desk.level().map(Level::name).ifPresent(names::remove);
        return List.copyOf(names);
    }
}
