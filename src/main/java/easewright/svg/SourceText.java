package easewright.svg;

import java.io.ByteArrayOutputStream;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * An XML file as text, exactly as it stands: line ends, quotes, references and spaces are kept, and so is the
 * encoding with its byte order mark. What no edit touches comes out byte for byte as it came in.
 */
final class SourceText {
    private final byte[] bytes;
    private final Encoding encoding;
    private final String text;
    private final List<Tag> tags;
    private final String name;

    private SourceText(byte[] bytes, Encoding encoding, String text, List<Tag> tags, String name) {
        this.bytes = bytes;
        this.encoding = encoding;
        this.text = text;
        this.tags = tags;
        this.name = name;
    }

    /**
     * Takes well-formed XML apart.
     *
     * @param bytes which are not to change any more
     * @param name  the file's name, for problems
     * @throws SvgProblem {@code encoding-unknown}, {@code encoding-broken} or {@code tags-broken}
     */
    static SourceText of(byte[] bytes, String name) throws SvgProblem {
        Encoding encoding = Encoding.of(bytes, name);
        String text = encoding.decode(bytes, name);
        try {
            return new SourceText(bytes, encoding, text, TagScanner.scan(text), name);
        } catch (TagScanner.Torn e) {
            long line =
                    1 + text.substring(0, e.at()).chars().filter(c -> c == '\n').count();
            throw new SvgProblem("tags-broken", Map.of("file", name, "line", line), e);
        }
    }

    boolean isUtf8() {
        return encoding.charset().equals(StandardCharsets.UTF_8);
    }

    /** Whether all of a text in UTF-8 is what XML may hold. */
    boolean holdsOnlyCharacters() {
        return PlainValues.holdsOnlyCharacters(text, bytes);
    }

    String text() {
        return text;
    }

    /** All start tags; the place in the list is the element's number. */
    List<Tag> tags() {
        return tags;
    }

    Tag tag(int element) {
        return tags.get(element);
    }

    byte[] bytes() {
        return bytes.clone();
    }

    /** The line end used in the file, taken from its first line. */
    String lineEnd() {
        int feed = text.indexOf('\n');
        int carriage = text.indexOf('\r');
        if (carriage >= 0 && (feed < 0 || carriage < feed)) {
            return feed == carriage + 1 ? "\r\n" : "\r";
        }
        return "\n";
    }

    /**
     * The file with edits made. Characters that the encoding lacks are written as references.
     *
     * @param edits in any order; they must not overlap, and those at one place go in the order given
     * @throws SvgProblem               {@code encoding-not-kept} if text and bytes do not correspond one to one
     * @throws IllegalArgumentException if edits overlap
     */
    byte[] splice(List<Edit> edits) throws SvgProblem {
        if (edits.isEmpty()) {
            return bytes();
        }
        if (!Arrays.equals(encoding.encode(text), Arrays.copyOfRange(bytes, encoding.mark(), bytes.length))) {
            throw new SvgProblem(
                    "encoding-not-kept",
                    Map.of("file", name, "encoding", encoding.charset().name()));
        }
        // What is put in at a place comes before what is taken out from there on.
        List<Edit> ordered = edits.stream()
                .sorted(Comparator.comparingInt(Edit::from).thenComparingInt(Edit::to))
                .toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + 1024);
        out.write(bytes, 0, encoding.mark());
        int at = 0;
        for (Edit edit : ordered) {
            if (edit.from() < at) {
                throw new IllegalArgumentException("Two edits overlap at character " + edit.from());
            }
            out.writeBytes(encoding.encode(text.substring(at, edit.from())));
            out.writeBytes(encoding.encode(representable(edit.text())));
            at = edit.to();
        }
        out.writeBytes(encoding.encode(text.substring(at)));
        return out.toByteArray();
    }

    private String representable(String markup) {
        CharsetEncoder encoder = encoding.charset().newEncoder();
        if (encoder.canEncode(markup)) {
            return markup;
        }
        StringBuilder out = new StringBuilder(markup.length() + 16);
        markup.codePoints().forEach(c -> {
            if (encoder.canEncode(Character.toString(c))) {
                out.appendCodePoint(c);
            } else {
                out.append("&#").append(c).append(';');
            }
        });
        return out.toString();
    }
}
