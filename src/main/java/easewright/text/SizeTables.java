package easewright.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Published tables of body sizes that come with the program: files in the form of {@link BodyFile} beside this class,
 * each with its source and standing (docs/sources.md 2.2).
 */
public final class SizeTables {
    private static final List<String> NAMES = List.of("astm-2011", "astm-1995", "home-pattern");

    private SizeTables() {}

    public static List<String> names() {
        return NAMES;
    }

    /** The table of this name, if there is one. */
    public static Optional<Bodies> of(String name) {
        if (!NAMES.contains(name)) {
            return Optional.empty();
        }
        try (InputStream in = SizeTables.class.getResourceAsStream("sizes-" + name + ".txt")) {
            return Optional.of(BodyFile.parseAll(new String(in.readAllBytes(), StandardCharsets.UTF_8), name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (Unreadable e) {
            throw new IllegalStateException("A table that came with the program is damaged", e);
        }
    }
}
