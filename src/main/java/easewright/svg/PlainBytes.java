package easewright.svg;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** The bytes of the XML text: as they are, or taken out of one layer of gzip. */
final class PlainBytes {
    /** Largest drawing that is read, packed or not, bytes. */
    static final int MOST = 64 << 20;

    private PlainBytes() {}

    /** Whether a file of this name is expected to be packed. */
    static boolean isNameOfPacked(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(".svgz");
    }

    static boolean isPacked(byte[] bytes) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == 0x1F && (bytes[1] & 0xFF) == 0x8B;
    }

    /**
     * @throws SvgProblem {@code too-large}, {@code gzip-broken}, {@code file-empty}, or {@code not-svg} if this is nothing
     *     like XML
     */
    static byte[] of(byte[] bytes, String name) throws SvgProblem {
        if (bytes.length == 0) {
            throw new SvgProblem("file-empty", Map.of("file", name));
        }
        if (bytes.length > MOST) {
            throw tooLarge(name);
        }
        byte[] plain = isPacked(bytes) ? unpacked(bytes, name) : bytes;
        if (!beginsLikeXml(plain)) {
            throw new SvgProblem("not-svg", Map.of("file", name));
        }
        return plain;
    }

    private static byte[] unpacked(byte[] bytes, String name) throws SvgProblem {
        ByteArrayOutputStream plain = new ByteArrayOutputStream(Math.min(MOST, 4 * bytes.length));
        byte[] chunk = new byte[1 << 16];
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            for (int n = in.read(chunk); n >= 0; n = in.read(chunk)) {
                if (plain.size() + n > MOST) {
                    throw tooLarge(name);
                }
                plain.write(chunk, 0, n);
            }
        } catch (IOException e) {
            throw new SvgProblem("gzip-broken", Map.of("file", name), e);
        }
        return plain.toByteArray();
    }

    static byte[] packed(byte[] plain) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(plain);
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be written", e);
        }
        return out.toByteArray();
    }

    private static SvgProblem tooLarge(String name) {
        return new SvgProblem("too-large", Map.of("file", name, "megabytes", MOST >> 20));
    }

    /** Whether the first character is {@code <}, in any of the encodings in which XML may come, white space aside. */
    private static boolean beginsLikeXml(byte[] bytes) {
        for (byte b : bytes) {
            int c = b & 0xFF;
            boolean byteOrderMark = c == 0xEF || c == 0xBB || c == 0xBF || c == 0xFE || c == 0xFF;
            boolean space = c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == 0;
            if (!byteOrderMark && !space) {
                return c == '<';
            }
        }
        return false;
    }
}
