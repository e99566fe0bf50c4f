package easewright.ease;

import easewright.pattern.FileTrouble;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A table of the user's own on the disk, in the form of docs/ease-tables.md. */
public final class TableFile {
    private static final int LARGEST_BYTES = 1 << 20;

    private TableFile() {}

    /**
     * Reads it.
     *
     * @param name what to call it in messages
     * @throws EaseTableProblem if it is not there, is no plain text of reasonable length, or is not in that form
     */
    public static EaseTables read(Path file, String name) throws EaseTableProblem {
        return EaseTables.read(new StringReader(text(file, name)), name);
    }

    private static String text(Path file, String name) throws EaseTableProblem {
        Map<String, Object> named = Map.of("file", name);
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
            if (bytes.length > LARGEST_BYTES) {
                throw new EaseTableProblem("ease-table-not-text", named);
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            // Some editors put a mark before the first letter.
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new EaseTableProblem("ease-table-not-text", named);
        } catch (IOException e) {
            throw new EaseTableProblem(FileTrouble.of(file, e).unread(), named);
        }
    }
}
