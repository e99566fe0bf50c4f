package easewright.editor.model;

import easewright.editor.paint.TableScene;
import easewright.geom.Box;
import easewright.pattern.Piece;
import easewright.pattern.PieceKind;
import easewright.pattern.SizeNames;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What pieces are called on the table. Of sizes that lie over each other one is written for all, with all sizes beside the
 * name: names one over the other could not be read.
 */
final class NestTitles {
    /** Two sizes lie over each other if they share this part of the smaller one's box. */
    private static final double SHARED = 0.7;

    /** As many sizes are told one by one; of more, the first and the last. */
    private static final int MOST = 4;

    private List<Piece> pieces = List.of();
    private List<String> taking = List.of();
    private Map<String, Title> titles = Map.of();
    private List<Piece> taggedOf = List.of();
    private List<TableScene.SizeTag> tags = List.of();

    /**
     * What a piece is called.
     *
     * @param words empty where another size speaks for it
     * @param size  the one that it is itself, where it speaks for others as well
     */
    record Title(String words, Optional<String> size) {
        static final Title NONE = new Title("", Optional.empty());

        static Title of(Piece piece) {
            return new Title(piece.name(), Optional.empty());
        }
    }

    /**
     * The title of each piece that lies over another size of it, by its id; empty for one that another speaks for. Worked
     * out again only if something else lies on the table.
     *
     * @param at in which sizes something is done, or all: only these are named
     */
    Map<String, Title> of(List<Piece> now, List<String> at, Words words) {
        if (now != pieces || !at.equals(taking)) {
            pieces = now;
            taking = at;
            titles = titles(now, at, words);
        }
        return titles;
    }

    /** Which line is of which size, where several lie over each other. Worked out again likewise. */
    List<TableScene.SizeTag> tags(List<Piece> now) {
        if (now != taggedOf) {
            taggedOf = now;
            tags = nests(now).stream()
                    .filter(nest -> nest.size() > 1)
                    .flatMap(nest -> SizeTags.of(nest.stream()
                                    .sorted(Comparator.comparingDouble(one -> area(one.piece())))
                                    .map(one -> new SizeTags.Sized(
                                            one.size(), one.piece().outline()))
                                    .toList())
                            .stream())
                    .toList();
        }
        return tags;
    }

    /** One of several sizes, as marked, or as the name tells before anything is marked. */
    private record OneSize(Piece piece, String name, String size) {}

    private static Map<String, Title> titles(List<Piece> pieces, List<String> at, Words words) {
        Map<String, Title> titles = new HashMap<>();
        nests(pieces).forEach(nest -> name(nest, at, words, titles));
        return titles;
    }

    /** The sizes of each piece that lie over each other; a piece that lies alone is one by itself. */
    private static List<List<OneSize>> nests(List<Piece> pieces) {
        Map<PieceKind, List<List<OneSize>>> nests = new LinkedHashMap<>();
        for (OneSize one : inSizes(pieces)) {
            List<List<OneSize>> alike =
                    nests.computeIfAbsent(new PieceKind(one.name(), one.piece().side()), k -> new ArrayList<>());
            alike.stream()
                    .filter(nest -> liesOver(nest.get(0), one))
                    .findFirst()
                    .orElseGet(() -> {
                        alike.add(new ArrayList<>());
                        return alike.get(alike.size() - 1);
                    })
                    .add(one);
        }
        return nests.values().stream().flatMap(List::stream).toList();
    }

    private static List<OneSize> inSizes(List<Piece> pieces) {
        Map<String, String> byName = SizeNames.in(
                pieces.stream().filter(p -> p.size().isEmpty()).map(Piece::name).toList());
        List<OneSize> found = new ArrayList<>();
        for (Piece piece : pieces) {
            String own = byName.get(piece.name());
            if (piece.size().isPresent()) {
                found.add(new OneSize(piece, piece.plainName(), piece.size().get()));
            } else if (own != null) {
                found.add(new OneSize(piece, SizeNames.without(piece.name(), own), own));
            }
        }
        return found;
    }

    private static boolean liesOver(OneSize one, OneSize other) {
        Box a = one.piece().outline().box();
        Box b = other.piece().outline().box();
        double shared = a.shared(b).map(s -> s.width() * s.height()).orElse(0.0);
        return !one.size().equals(other.size())
                && shared >= SHARED * Math.min(a.width() * a.height(), b.width() * b.height());
    }

    /** The smallest one speaks for all: what lies within it lies within the others. */
    private static void name(List<OneSize> nest, List<String> at, Words words, Map<String, Title> titles) {
        if (nest.size() < 2) {
            return;
        }
        List<OneSize> named = nest.stream()
                .filter(one -> at.isEmpty() || at.contains(one.size()))
                .toList();
        nest.forEach(one -> titles.put(one.piece().id(), Title.NONE));
        named.stream()
                .min(Comparator.comparingDouble(one -> area(one.piece())))
                .ifPresent(one -> titles.put(
                        one.piece().id(),
                        named.size() == 1
                                ? Title.of(one.piece())
                                : new Title(title(named, words), Optional.of(one.size()))));
    }

    private static String title(List<OneSize> named, Words words) {
        List<String> sizes = named.stream().map(OneSize::size).distinct().toList();
        String name = named.get(0).name();
        if (sizes.size() > MOST) {
            return words.of(
                    "editor.piece.nest.many",
                    Map.of("piece", name, "first", sizes.get(0), "last", sizes.get(sizes.size() - 1)));
        }
        return words.of("editor.piece.nest", Map.of("piece", name, "sizes", String.join(", ", sizes)));
    }

    private static double area(Piece piece) {
        return Math.abs(piece.outline().signedArea());
    }
}
