package easewright.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Map;
import java.util.ResourceBundle;

/**
 * The lines of a bundle, one per key: {@code key=words}, with {@code \}{@code u00a0} for a character by its number, and
 * comments behind {@code #}. Java's own reader looks at each character several times, which with a thousand and a half
 * lines every start of the program would feel; here a line is cut in two when it is read, and its signs are replaced
 * when it is asked for.
 */
final class Lines extends ResourceBundle {
    private final Map<String, String> raw = new HashMap<>(4096);

    /**
     * @param name of a file beside this class
     */
    Lines(String name) {
        String text = text(name);
        int from = 0;
        while (from < text.length()) {
            int end = text.indexOf('\n', from);
            end = end < 0 ? text.length() : end;
            int equals = text.charAt(from) == '#' ? -1 : text.indexOf('=', from);
            if (equals >= 0 && equals < end) {
                raw.put(text.substring(from, equals), text.substring(equals + 1, end));
            }
            from = end + 1;
        }
    }

    private static String text(String name) {
        try (InputStream in = Lines.class.getResourceAsStream(name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.indexOf('\r') < 0 ? text : text.replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    protected Object handleGetObject(String key) {
        return line(key);
    }

    /** The line of a key; null where there is none. */
    String line(String key) {
        String line = raw.get(key);
        return line == null || line.indexOf('\\') < 0 ? line : plain(line);
    }

    private static String plain(String line) {
        StringBuilder out = new StringBuilder(line.length());
        int at = 0;
        while (at < line.length()) {
            char sign = line.charAt(at++);
            if (sign != '\\' || at == line.length()) {
                out.append(sign);
                continue;
            }
            char kind = line.charAt(at++);
            switch (kind) {
                case 'u' -> {
                    out.append((char) Integer.parseInt(line, at, at + 4, 16));
                    at += 4;
                }
                case 'n' -> out.append('\n');
                case 't' -> out.append('\t');
                default -> out.append(kind);
            }
        }
        return out.toString();
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(raw.keySet());
    }
}
