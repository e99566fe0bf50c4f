package easewright.alter;

import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is named in one size of a nest, in another: the piece that is called the same but for the size, and on it the edge,
 * dart or notch of the same name. A place along an edge lies as far from the edge's start.
 */
public final class OtherSize {
    private final Pattern size;
    private final Pattern other;

    /**
     * @param size  the pieces of the size in which things are named
     * @param other those of the other size
     */
    public OtherSize(Pattern size, Pattern other) {
        this.size = size;
        this.other = other;
    }

    /**
     * The same edge there.
     *
     * @throws Refusal if there is none
     */
    public EdgeRef edge(EdgeRef edge) throws Refusal {
        Piece twin = twin(piece(edge.piece()));
        return EdgeRef.of(twin.id(), KnownNames.edge(twin, edge.edge()).name());
    }

    /** The same edge there; empty where there is none. */
    public Optional<EdgeRef> edgeIfAny(EdgeRef edge) {
        try {
            return Optional.of(edge(edge));
        } catch (Refusal notThere) {
            return Optional.empty();
        }
    }

    /**
     * The same settings there, written as {@link SettingText#read} takes them.
     *
     * @throws Refusal if a piece has none like it there, or a place is given by its coordinates alone
     */
    public Map<String, List<String>> texts(Way way, Map<String, List<String>> texts) throws Refusal {
        Map<String, List<String>> there = new LinkedHashMap<>(texts);
        for (Setting setting : way.settings()) {
            List<String> moved = new ArrayList<>();
            for (String text : texts.getOrDefault(setting.key(), List.of())) {
                for (String part : setting.kind().isList() ? text.split(";") : new String[] {text}) {
                    moved.add(text(setting.kind(), part.strip()));
                }
            }
            if (texts.containsKey(setting.key())) {
                there.put(setting.key(), moved);
            }
        }
        return there;
    }

    private String text(Setting.Kind kind, String text) throws Refusal {
        return switch (kind) {
            case PIECE, PIECES -> twin(KnownNames.piece(size, text)).id();
            case EDGE, SHARES, DARTS -> path(text);
            case PLACE, PLACES -> place(text);
            case SLASHES -> slash(text);
            case LEVEL, NAME, NAMES, SIGNED_LENGTH, CHOICE, FLAG -> text;
        };
    }

    private String slash(String text) throws Refusal {
        List<String> places = new ArrayList<>();
        for (String place : text.split(">", -1)) {
            places.add(place(place.strip()));
        }
        return String.join(" > ", places);
    }

    private String place(String text) throws Refusal {
        if (text.indexOf('/') < 0) {
            throw Refusal.of("place-of-one-size").with("text", text);
        }
        return path(text);
    }

    /** What begins with a piece and a slash. The name of a piece may itself hold one. */
    private String path(String text) throws Refusal {
        Optional<String> named = size.pieces().stream()
                .flatMap(p -> List.of(p.id(), p.name()).stream())
                .filter(name -> text.startsWith(name + "/"))
                .max(Comparator.comparing(String::length));
        String piece = named.orElse(text.substring(0, Math.max(0, text.indexOf('/'))));
        return twin(KnownNames.piece(size, piece.strip())).id() + text.substring(piece.length());
    }

    private Piece piece(String ref) throws Refusal {
        return KnownNames.piece(size, ref);
    }

    private Piece twin(Piece piece) throws Refusal {
        List<Piece> alike =
                other.pieces().stream().filter(p -> isLike(p, piece)).toList();
        if (alike.size() != 1) {
            throw Refusal.of("piece-not-known")
                    .with("piece", piece.plainName())
                    .with("known", other.pieces().stream().map(Piece::name).toList());
        }
        return alike.get(0);
    }

    /** Whether a piece is the other one in its own size; what belongs to every size is itself. */
    public static boolean isLike(Piece piece, Piece other) {
        return piece.id().equals(other.id())
                || piece.size().isPresent()
                        && other.size().isPresent()
                        && !piece.size().equals(other.size())
                        && piece.side() == other.side()
                        && piece.plainName().equalsIgnoreCase(other.plainName());
    }
}
