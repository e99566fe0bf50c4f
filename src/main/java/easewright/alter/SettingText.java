package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The settings of a way as a person writes them: levels, pieces and edges by name whatever the capitals, edges as
 * {@code piece/edge} or {@code piece/edge=share}, darts alike, lengths with their unit, places as {@link PlaceText} says, flags as
 * yes or no, slashes as {@code from > to}, with {@code > a place of the part that moves} and {@code =share} where
 * wanted. Several values of a list may also be written as one, with semicolons between them.
 */
public final class SettingText {
    private static final List<String> YES = List.of("yes", "true", "on");
    private static final List<String> NO = List.of("no", "false", "off", "");

    private SettingText() {}

    /**
     * The record that the written settings make. Settings left out are what the way says they then are.
     *
     * @param texts by key; a setting that is no list has one text
     * @throws Refusal if a setting is unknown, missing or not understood
     * @throws X       if a length cannot be read
     */
    public static <X extends Exception> ChangeNote read(
            Way way, Map<String, List<String>> texts, Pattern pattern, LengthReader<X> lengths) throws Refusal, X {
        List<String> known = way.settings().stream().map(Setting::key).toList();
        for (String key : texts.keySet()) {
            if (!known.contains(key)) {
                throw Refusal.of("setting-unknown")
                        .with("setting", key)
                        .with("method", way.method())
                        .with("known", known);
            }
        }
        Settings settings = new Settings();
        for (Setting setting : way.settings()) {
            List<String> said = texts.getOrDefault(setting.key(), List.of());
            boolean byPlaces = setting.kind() == Setting.Kind.PIECE && said.isEmpty();
            if (byPlaces) {
                said = pieceOf(way, texts, pattern, lengths).map(Piece::id).stream()
                        .toList();
            }
            List<String> given = given(way, setting, said);
            if (setting.kind().isList()) {
                many(settings, setting, given, pattern, lengths);
            } else if (!given.isEmpty()) {
                one(settings, setting, given.get(0), pattern, lengths);
            }
        }
        return settings.note(way.method());
    }

    /**
     * The piece on which the single places that a way asks for lie: who shows the places need not name it as well. Empty
     * where none is given.
     *
     * @param texts by key
     * @throws Refusal if a place is not understood
     * @throws X       if a length in one cannot be read
     */
    public static <X extends Exception> Optional<Piece> pieceOf(
            Way way, Map<String, List<String>> texts, Pattern pattern, LengthReader<X> lengths) throws Refusal, X {
        List<String> places = way.settings().stream()
                .filter(s -> s.kind() == Setting.Kind.PLACE)
                .flatMap(s -> texts.getOrDefault(s.key(), List.of()).stream())
                .filter(t -> !t.isBlank())
                .toList();
        if (places.isEmpty()) {
            return Optional.empty();
        }
        Point from = PlaceText.read(pattern, places.get(0), lengths);
        Point to = places.size() > 1 ? PlaceText.read(pattern, places.get(1), lengths) : from;
        return Optional.of(pieceOf(pattern, places, from, to));
    }

    private static List<String> given(Way way, Setting setting, List<String> texts) throws Refusal {
        List<String> given = new ArrayList<>();
        for (String text : texts) {
            for (String part : setting.kind().isList() ? text.split(";") : new String[] {text}) {
                if (!part.isBlank()) {
                    given.add(part.strip());
                }
            }
        }
        if (given.isEmpty() && !setting.standard().isEmpty()) {
            given.add(setting.standard());
        }
        if (given.isEmpty() && setting.required()) {
            throw Refusal.of("setting-needed").with("setting", setting.key()).with("method", way.method());
        }
        if (given.size() > 1 && !setting.kind().isList()) {
            throw Refusal.of("setting-once").with("setting", setting.key()).with("text", given);
        }
        return given;
    }

    private static <X extends Exception> void one(
            Settings settings, Setting setting, String text, Pattern pattern, LengthReader<X> lengths)
            throws Refusal, X {
        String key = setting.key();
        switch (setting.kind()) {
            case LEVEL -> settings.text(key, KnownNames.level(pattern, text).name());
            case SIGNED_LENGTH -> settings.number(key, lengths.mm(text));
            case EDGE -> settings.text(key, KnownNames.edgeRef(pattern, text).toString());
            case PIECE -> settings.text(key, KnownNames.piece(pattern, text).id());
            case PLACE -> settings.point(key, PlaceText.read(pattern, text, lengths));
            case NAME -> settings.text(key, KnownNames.mark(pattern, text));
            case CHOICE ->
                settings.text(
                        key,
                        setting.choice(text)
                                .orElseThrow(() -> Refusal.of("setting-choice")
                                        .with("setting", key)
                                        .with("text", text)
                                        .with("known", setting.choices())));
            case FLAG -> settings.flag(key, flag(key, text));
            case SHARES, DARTS, PIECES, PLACES, SLASHES, NAMES -> throw new IllegalStateException(key + " is a list");
        }
    }

    private static <X extends Exception> void many(
            Settings settings, Setting setting, List<String> texts, Pattern pattern, LengthReader<X> lengths)
            throws Refusal, X {
        for (int i = 0; i < texts.size(); i++) {
            String key = setting.key() + "." + (i + 1);
            String text = texts.get(i);
            switch (setting.kind()) {
                case SHARES -> share(settings, key, "weight." + (i + 1), text, pattern);
                case DARTS -> dart(settings, key, Settings.DART_WEIGHT + (i + 1), text, pattern);
                case PIECES ->
                    settings.text(key, KnownNames.piece(pattern, text).id());
                case PLACES -> settings.point(key, PlaceText.read(pattern, text, lengths));
                case NAMES -> settings.text(key, KnownNames.mark(pattern, text));
                case SLASHES -> slash(text, pattern, lengths).write(settings, key);
                default -> throw new IllegalStateException(key + " is no list");
            }
        }
    }

    private static void share(Settings settings, String key, String weightKey, String text, Pattern pattern)
            throws Refusal {
        int equals = text.lastIndexOf('=');
        EdgeRef edge = KnownNames.edgeRef(pattern, equals < 0 ? text : text.substring(0, equals));
        settings.text(key, edge.toString());
        settings.number(weightKey, equals < 0 ? 1 : weight(text, text.substring(equals + 1)));
    }

    /** {@code from > to}, {@code from > to > a place of the part that moves}, each with {@code =share} if wanted. */
    private static <X extends Exception> Slash slash(String text, Pattern pattern, LengthReader<X> lengths)
            throws Refusal, X {
        int equals = text.lastIndexOf('=');
        String[] places = (equals < 0 ? text : text.substring(0, equals)).split(">", -1);
        if (places.length < 2 || places.length > 3) {
            throw Refusal.of("slash-form").with("text", text);
        }
        Point from = PlaceText.read(pattern, places[0], lengths);
        Point to = PlaceText.read(pattern, places[1], lengths);
        Slash slash = Slash.of(pieceOf(pattern, List.of(places), from, to).id(), from, to)
                .withWeight(equals < 0 ? 1 : weight(text, text.substring(equals + 1)));
        return places.length == 2 ? slash : slash.moving(PlaceText.read(pattern, places[2], lengths));
    }

    /** The piece that one of the places names, or else the one on whose outline they lie. */
    private static Piece pieceOf(Pattern pattern, List<String> places, Point from, Point to) throws Refusal {
        for (String place : places) {
            int slash = place.indexOf('/');
            if (slash > 0) {
                return KnownNames.piece(pattern, place.substring(0, slash).strip());
            }
        }
        Piece best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Piece piece : pattern.pieces()) {
            double off = piece.outline().nearest(from).distance()
                    + piece.outline().nearest(to).distance();
            if (off < least) {
                least = off;
                best = piece;
            }
        }
        if (best == null) {
            throw Refusal.of("slash-form").with("text", String.join(">", places));
        }
        return best;
    }

    private static void dart(Settings settings, String key, String weightKey, String text, Pattern pattern)
            throws Refusal {
        int equals = text.lastIndexOf('=');
        String path = equals < 0 ? text : text.substring(0, equals);
        int slash = path.lastIndexOf('/');
        if (slash <= 0) {
            throw Refusal.of("dart-form").with("text", text);
        }
        Piece piece = KnownNames.piece(pattern, path.substring(0, slash).strip());
        Dart dart = KnownNames.dart(piece, path.substring(slash + 1).strip());
        settings.text(key, piece.id() + "/" + dart.name());
        settings.number(weightKey, equals < 0 ? 1 : weight(text, text.substring(equals + 1)));
    }

    /** A share as a number, a percentage or a fraction; only its proportion to the others counts. */
    private static double weight(String whole, String text) throws Refusal {
        String number = text.strip().replace("%", "").replace(',', '.');
        int slash = number.indexOf('/');
        try {
            double weight = slash < 0
                    ? Double.parseDouble(number)
                    : Double.parseDouble(number.substring(0, slash)) / Double.parseDouble(number.substring(slash + 1));
            if (weight > 0 && weight < 1e6) {
                return weight;
            }
        } catch (NumberFormatException noNumber) {
            throw Refusal.of("share-not-a-number").with("text", whole);
        }
        throw Refusal.of("share-not-a-number").with("text", whole);
    }

    private static boolean flag(String key, String text) throws Refusal {
        String word = text.toLowerCase(Locale.ROOT);
        if (!YES.contains(word) && !NO.contains(word)) {
            throw Refusal.of("setting-flag").with("setting", key).with("text", text);
        }
        return YES.contains(word);
    }
}
