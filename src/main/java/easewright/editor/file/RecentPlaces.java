package easewright.editor.file;

import java.nio.file.Path;
import java.util.List;

/**
 * Where files lie, as people say it: by the name of the folder, with {@code ~} for where all that is theirs lies; by as
 * many names of folders as it takes to tell files of the same name apart.
 */
public final class RecentPlaces {
    private RecentPlaces() {}

    /**
     * A place for each of the files, in their order.
     *
     * @param home the user's own folder
     */
    public static List<String> of(List<Path> files, Path home) {
        return files.stream().map(file -> place(file, files, home)).toList();
    }

    private static String place(Path file, List<Path> files, Path home) {
        List<Path> alike = files.stream()
                .filter(other -> other.getFileName().equals(file.getFileName()))
                .toList();
        int deepest = folder(file).getNameCount();
        for (int names = 1; names < deepest; names++) {
            String said = said(folder(file), names, home);
            int told = names;
            if (alike.stream()
                            .filter(o -> said(folder(o), told, home).equals(said))
                            .count()
                    == 1) {
                return said;
            }
        }
        return said(folder(file), deepest, home);
    }

    private static Path folder(Path file) {
        Path whole = file.toAbsolutePath();
        return whole.getParent() == null ? whole : whole.getParent();
    }

    /** @param names of folders, the last ones */
    private static String said(Path folder, int names, Path home) {
        boolean own = folder.startsWith(home);
        if (folder.equals(home)) {
            return "~";
        }
        Path told = own ? home.relativize(folder) : folder;
        int all = told.getNameCount();
        if (all <= names) {
            return own ? "~/" + told : folder.toString();
        }
        return (own ? "~/\u2026/" : "") + told.subpath(all - names, all);
    }
}
