package easewright.command;

import easewright.draft.DraftRefused;
import easewright.draft.Samples;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code draft FOLDER}: draws the sample garments anew. */
@Command(name = "draft", mixinStandardHelpOptions = true)
final class DraftCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FOLDER", descriptionKey = "option.folder")
    Path folder;

    @Option(names = "--overwrite", descriptionKey = "option.overwrite")
    boolean overwrite;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() throws Trouble {
        Words words = Words.english(LengthUnit.CM);
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
            spec.commandLine().getErr().println(words.of("command.saved", Map.of("file", path.toString())));
        }
        return Commands.DONE;
    }
}
