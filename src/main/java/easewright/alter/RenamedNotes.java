package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The records of changes with other names in them: by a name that is no longer there a change could not be made anew.
 *
 * @param pattern with the present names
 */
record RenamedNotes(Renaming renaming, Pattern pattern) {
    /** A record that speaks of what is renamed by its new name. */
    ChangeNote of(ChangeNote note) {
        Map<String, String> settings = new LinkedHashMap<>();
        Map<String, List<String>> listed = new LinkedHashMap<>();
        note.settings().forEach((key, value) -> {
            String plain = key.replaceFirst("\\.\\d+$", "");
            Optional<Setting.Kind> kind =
                    Ways.of(note.method()).flatMap(way -> way.setting(plain)).map(Setting::kind);
            if (kind.equals(Optional.of(Setting.Kind.NAMES))) {
                List<String> all = listed.computeIfAbsent(plain, k -> new ArrayList<>());
                for (String mark : marks(value)) {
                    if (!all.contains(mark)) {
                        all.add(mark);
                        settings.put(plain + "." + all.size(), mark);
                    }
                }
            } else {
                settings.put(key, setting(note, kind, key, value));
            }
        });
        return new ChangeNote(note.method(), settings);
    }

    private String setting(ChangeNote note, Optional<Setting.Kind> kind, String key, String value) {
        if (note.method().equals(Trued.METHOD)) {
            return trued(note, key, value);
        }
        if (kind.isEmpty()) {
            return value;
        }
        return switch (kind.get()) {
            case EDGE, SHARES -> path(value, Renaming.OnPiece::edges);
            case DARTS -> path(value, Renaming.OnPiece::darts);
            case NAME -> marks(value).get(0);
            default -> value;
        };
    }

    private String trued(ChangeNote note, String key, String value) {
        Optional<Renaming.OnPiece> there = Optional.ofNullable(note.settings().get(Trued.PIECE))
                .flatMap(piece -> renaming.onPiece(pattern, piece));
        return switch (key) {
            case Trued.MATE -> Renaming.called(renaming.seams(), value);
            case Trued.EDGE -> path(value, Renaming.OnPiece::edges);
            case Trued.DART ->
                there.map(names -> Renaming.called(names.darts(), value)).orElse(value);
            case Trued.NOTCH ->
                there.map(names -> Renaming.called(names.notches(), value)).orElse(value);
            default -> value;
        };
    }

    /** {@code piece/edge} or {@code piece/dart}. */
    private String path(String value, Function<Renaming.OnPiece, Map<String, String>> kind) {
        int slash = value.lastIndexOf('/');
        if (slash <= 0) {
            return value;
        }
        return renaming.onPiece(pattern, value.substring(0, slash))
                .map(names ->
                        value.substring(0, slash + 1) + Renaming.called(kind.apply(names), value.substring(slash + 1)))
                .orElse(value);
    }

    /** What a level, and a notch or an edge on whatever piece, that had one name are called now: the old name first. */
    private List<String> marks(String name) {
        Set<String> now = new LinkedHashSet<>();
        if (pattern.level(name).isPresent()) {
            now.add(name);
        }
        for (Piece piece : pattern.pieces()) {
            Optional<Renaming.OnPiece> names =
                    Optional.ofNullable(renaming.pieces().get(piece.id()));
            if (piece.edges().stream().anyMatch(e -> e.name().equals(name))) {
                now.add(names.map(n -> Renaming.called(n.edges(), name)).orElse(name));
            }
            if (piece.notches().stream().anyMatch(n -> n.name().equals(name))) {
                now.add(names.map(n -> Renaming.called(n.notches(), name)).orElse(name));
            }
        }
        List<String> all = new ArrayList<>(now);
        if (all.isEmpty() || all.remove(name)) {
            all.add(0, name);
        }
        return all;
    }
}
