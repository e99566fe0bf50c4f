package easewright.command;

import easewright.ease.EaseTableProblem;
import easewright.ease.EaseTables;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;

/** The ease tables that the user gives with {@code --table}, each a file as docs/ease-tables.md describes it. */
final class OwnTables {
    private static final int LARGEST_BYTES = 1 << 20;

    private OwnTables() {}

    /** The tables given and, after them, the user's own. */
    static EaseTables with(EaseTables given, Given command) throws Trouble {
        EaseTables all = given;
        for (Path file : command.paths("--table")) {
            try {
                all = all.with(EaseTables.read(new StringReader(text(file)), file.toString()));
            } catch (EaseTableProblem e) {
                throw new Trouble(e.code(), e.values());
            }
        }
        return all;
    }

    private static String text(Path file) throws Trouble {
        Map<String, Object> named = Map.of("file", file.toString());
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
            if (bytes.length > LARGEST_BYTES) {
                throw new Trouble("ease-table-not-text", named);
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            // Some editors put a mark before the first letter.
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (NoSuchFileException e) {
            throw new Trouble("file-missing", named);
        } catch (CharacterCodingException e) {
            throw new Trouble("ease-table-not-text", named);
        } catch (IOException e) {
            throw new Trouble("ease-table-unreadable", named);
        }
    }
}
