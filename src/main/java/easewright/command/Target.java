package easewright.command;

import easewright.pattern.FileTrouble;
import easewright.svg.SvgProblem;
import easewright.svg.disk.AtomicSave;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a result goes, and what may be overwritten.
 *
 * @param overwrite whether a file there may be replaced
 */
record Target(Optional<Path> output, boolean overwrite) {
    static Grammar grammar(Grammar command) {
        return command.and(new Option(List.of("-o", "--output"), "OUT", "option.output", false))
                .flag("--overwrite", "option.overwrite");
    }

    static Target of(Given given) throws Misuse {
        return new Target(given.path("--output"), given.has("--overwrite"));
    }

    /** Refuses before any work is done what would be refused at the end. */
    void check(Path chosen, Path input, boolean inPlace) throws Trouble {
        boolean onInput = same(chosen, input);
        if (onInput && !inPlace) {
            throw new Trouble("output-is-input", Map.of("file", chosen.toString()));
        }
        if (onInput) {
            checkFolder(chosen);
        } else {
            check(chosen);
        }
    }

    /** The same where no file is read that could be overwritten. */
    void check(Path chosen) throws Trouble {
        if (Files.exists(chosen) && !overwrite) {
            throw new Trouble("output-exists", Map.of("file", chosen.toString()));
        }
        checkFolder(chosen);
    }

    private static void checkFolder(Path chosen) throws Trouble {
        Path folder = chosen.toAbsolutePath().getParent();
        if (Files.isDirectory(chosen) || folder == null || !Files.isDirectory(folder)) {
            throw new Trouble("output-folder", Map.of("file", chosen.toString()));
        }
    }

    private static boolean same(Path chosen, Path input) {
        try {
            return Files.exists(chosen) && Files.isSameFile(chosen, input);
        } catch (IOException e) {
            return chosen.toAbsolutePath()
                    .normalize()
                    .equals(input.toAbsolutePath().normalize());
        }
    }

    /** Makes a folder where there is none. */
    static void folder(Path folder) throws Trouble {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new Trouble("output-not-a-folder", Map.of("file", folder.toString()));
        } catch (IOException e) {
            throw new Trouble(
                    FileTrouble.of(folder, e).unsaved(),
                    Map.of(
                            "file",
                            folder.toString(),
                            "folder",
                            String.valueOf(folder.toAbsolutePath().getParent())));
        }
    }

    /** Puts the bytes in place whole or not at all; a file that is replaced stays as {@code NAME.bak}. */
    static void save(Path chosen, byte[] bytes) throws Trouble {
        try {
            AtomicSave.save(chosen, bytes);
        } catch (SvgProblem e) {
            throw Said.of(e, chosen);
        }
    }
}
