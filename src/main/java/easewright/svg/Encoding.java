package easewright.svg;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the characters of an XML file are stored.
 *
 * @param mark the byte order mark's length in bytes, 0 without one
 */
record Encoding(Charset charset, int mark) {
    private static final Pattern DECLARED =
            Pattern.compile("^<\\?xml\\s[^>]*?\\sencoding\\s*=\\s*[\"']([A-Za-z][A-Za-z0-9._-]*)[\"']");

    private static final int DECLARATION_REACH = 400;

    /**
     * The byte order mark decides, then the XML declaration; without either it is UTF-8.
     *
     * @throws SvgProblem {@code encoding-unknown} if the declared encoding is not known here
     */
    static Encoding of(byte[] bytes, String name) throws SvgProblem {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return new Encoding(StandardCharsets.UTF_8, 3);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return new Encoding(StandardCharsets.UTF_16BE, 2);
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return new Encoding(StandardCharsets.UTF_16LE, 2);
        }
        if (starts(bytes, 0, '<')) {
            return new Encoding(StandardCharsets.UTF_16BE, 0);
        }
        if (starts(bytes, '<', 0)) {
            return new Encoding(StandardCharsets.UTF_16LE, 0);
        }
        String head = new String(bytes, 0, Math.min(bytes.length, DECLARATION_REACH), StandardCharsets.ISO_8859_1);
        Matcher declared = DECLARED.matcher(head);
        if (!declared.find()) {
            return new Encoding(StandardCharsets.UTF_8, 0);
        }
        try {
            return new Encoding(Charset.forName(declared.group(1)), 0);
        } catch (IllegalArgumentException e) {
            throw new SvgProblem("encoding-unknown", Map.of("file", name, "encoding", declared.group(1)), e);
        }
    }

    private static boolean starts(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((bytes[i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    /**
     * The text without its byte order mark, line ends as they are.
     *
     * @throws SvgProblem {@code encoding-broken} if the bytes are not text in this encoding
     */
    String decode(byte[] bytes, String name) throws SvgProblem {
        if (charset.equals(StandardCharsets.UTF_8)) {
            // Much the quickest way, but it puts this sign in the place of what is broken.
            String text = new String(bytes, mark, bytes.length - mark, charset);
            if (text.indexOf('\uFFFD') < 0) {
                return text;
            }
        }
        try {
            return charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, mark, bytes.length - mark))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new SvgProblem("encoding-broken", Map.of("file", name, "encoding", charset.name()), e);
        }
    }

    /** The bytes of text all of whose characters exist in this encoding. */
    byte[] encode(String text) {
        return text.getBytes(charset);
    }
}
