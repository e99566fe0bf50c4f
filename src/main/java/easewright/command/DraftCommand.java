package easewright.command;

import easewright.draft.DraftRefused;
import easewright.draft.Samples;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** {@code draft FOLDER}: draws the sample garments anew. */
final class DraftCommand implements Job {
    @Override
    public Grammar grammar() {
        return Grammar.of("draft").place("FOLDER", "option.folder").flag("--overwrite", "option.overwrite");
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Path folder = given.path(0);
        boolean overwrite = given.has("--overwrite");
        Words words = Commands.english();
        Map<String, String> files;
        try {
            files = Samples.files();
        } catch (DraftRefused e) {
            throw new Trouble("draft-refused", Map.of("reason", String.valueOf(e.getMessage())));
        } catch (SvgProblem e) {
            throw Said.of(e, folder);
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new Trouble("output-folder", Map.of("file", folder.toString()));
        }
        for (String name : files.keySet()) {
            if (Files.exists(folder.resolve(name)) && !overwrite) {
                throw new Trouble(
                        "output-exists", Map.of("file", folder.resolve(name).toString()));
            }
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Target.save(path, file.getValue().getBytes(StandardCharsets.UTF_8));
            voice.err().println(words.of("command.saved", Map.of("file", path.toString())));
        }
        return Commands.DONE;
    }
}
