package easewright.suggest;

import easewright.pattern.Caption;
import easewright.pattern.CutWords;
import easewright.pattern.Piece;
import easewright.pattern.WrittenNames;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Reads names and counts from the words on the pieces. */
final class WordsOnPieces {
    private static final Map<String, String> PART_OF_LETTER = Map.of("F", "Front", "B", "Back");

    private final Sheet sheet;
    private final PieceWords words;
    private final boolean letters;

    /** Of the pieces by their ids, where there are several. */
    private final Map<String, String> sizes;

    private final Set<String> names = new HashSet<>();

    private WordsOnPieces(Sheet sheet) {
        this.sheet = sheet;
        words = PieceWords.of(sheet);
        sizes = PieceSize.ofNest(sheet);
        letters = frontAndBackByLetter(sheet);
    }

    static List<Suggestion> find(Sheet sheet) {
        return new WordsOnPieces(sheet).find();
    }

    private List<Suggestion> find() {
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.edges().isEmpty()) {
                name(piece).filter(s -> !s.name().equals(piece.name())).ifPresent(found::add);
                count(piece, words)
                        .filter(s -> s.times() != piece.times() || s.onFold() != piece.onFold())
                        .ifPresent(found::add);
            } else {
                names.add(piece.name());
            }
        }
        return found;
    }

    private record Candidate(String name, double weight) {}

    private Optional<PieceName> name(Piece piece) {
        Candidate best = null;
        for (Caption caption : words.on(piece)) {
            for (String line : caption.lines()) {
                String name = WrittenNames.in(line);
                // The name of a part says more than large letters; the first of equals stands on top.
                double weight = caption.height()
                        + (Vocabulary.namesPart(name) ? 1000 : Vocabulary.namesGarment(name) ? 500 : 0);
                if (!name.isEmpty() && (best == null || weight > best.weight())) {
                    best = new Candidate(name, weight);
                }
            }
        }
        if (best != null) {
            double sure = best.weight() >= 1000 ? 0.95 : best.weight() >= 500 ? 0.8 : 0.6;
            return Optional.of(
                    new PieceName(piece.id(), unique(inSize(best.name(), piece)), Reason.of("written-on-piece", sure)));
        }
        String byId = readable(piece.id());
        if (Vocabulary.namesPart(byId) && !byId.equalsIgnoreCase(piece.name())) {
            return Optional.of(new PieceName(
                    piece.id(),
                    unique(inSize(byId, piece)),
                    new Reason("name-of-line", Map.of("id", piece.id()), 0.6)));
        }
        Optional<String> letter = letters ? letter(piece) : Optional.empty();
        if (letter.isPresent()) {
            return Optional.of(
                    new PieceName(piece.id(), unique(inSize(letter.get(), piece)), Reason.of("letter-on-piece", 0.6)));
        }
        names.add(piece.name());
        return Optional.empty();
    }

    private Optional<String> letter(Piece piece) {
        return words.on(piece).stream()
                .map(c -> PART_OF_LETTER.get(c.words().strip()))
                .filter(Objects::nonNull)
                .findFirst();
    }

    /** Whether F and B stand on the sheet by themselves, and not as the sixth and the second of a row of letters. */
    private static boolean frontAndBackByLetter(Sheet sheet) {
        Set<String> alone = new HashSet<>();
        for (Caption caption : sheet.captions()) {
            if (caption.words().strip().length() == 1) {
                alone.add(caption.words().strip());
            }
        }
        return alone.equals(PART_OF_LETTER.keySet());
    }

    /** In a nest the same words stand on every size: each of its pieces is called by its own as well. */
    private String inSize(String name, Piece piece) {
        String size = sizes.get(piece.id());
        return size == null ? name : name + " " + size;
    }

    private String unique(String wanted) {
        String name = wanted;
        for (int i = 2; !names.add(name); i++) {
            name = wanted + " " + i;
        }
        return name;
    }

    /** An id such as {@code skirt-back_cutting} as words: "Skirt back". */
    private static String readable(String id) {
        String plain = id.replaceAll("_x[0-9A-Fa-f]{2,4}_", " ")
                .replaceAll("[-_.#]+", " ")
                .replaceAll("(?i)\\b(cutting|stitching|outline|path|shape|line|layer|pattern|piece)\\b", " ")
                .replaceAll("\\d+", " ")
                .replaceAll("\\s+", " ")
                .strip();
        return plain.isEmpty() ? "" : plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
    }

    /** What words or signs on a piece say of how often it is cut; empty if nothing does. */
    static Optional<CutCount> count(Piece piece, PieceWords words) {
        Optional<FoldBracket> bracket = FoldBracket.on(piece);
        boolean foldWritten = false;
        Optional<CutWords.Count> said = Optional.empty();
        for (Caption caption : words.on(piece)) {
            Optional<CutWords.Count> count = CutWords.count(caption.words());
            foldWritten |= count.map(CutWords.Count::onFold).orElse(false);
            boolean number = count.isPresent()
                    && !caption.words().toLowerCase(Locale.ROOT).matches("\\W*(on |place )?.{0,8}fold\\W*");
            if (said.isEmpty() && number) {
                said = count;
            }
        }
        if (said.isEmpty() && !foldWritten && bracket.isEmpty()) {
            return Optional.empty();
        }
        boolean fold = foldWritten || bracket.isPresent();
        int times = said.map(CutWords.Count::times).orElse(1);
        String code = said.isPresent() || foldWritten ? "written-on-piece" : "fold-sign";
        return Optional.of(
                new CutCount(piece.id(), times, fold, List.of(), Reason.of(code, said.isPresent() ? 0.95 : 0.75)));
    }
}
