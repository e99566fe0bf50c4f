package easewright.editor.model;

import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The file on the table.
 *
 * @param path empty for a sample that was never saved
 * @param name what to call it in the window's title
 */
public record OpenFile(SvgFile svg, Optional<Path> path, String name) {
    public OpenFile withPath(Path saved) {
        return new OpenFile(svg, Optional.of(saved), saved.getFileName().toString());
    }
}
