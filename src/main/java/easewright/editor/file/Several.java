package easewright.editor.file;

import easewright.editor.model.ShortName;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Several files that are to be opened at once, of which one drawing can lie on the table. */
final class Several {
    private final FileWork work;
    private final Beside beside;
    private final Failures failures;

    Several(FileWork work, Beside beside, Failures failures) {
        this.work = work;
        this.beside = beside;
        this.failures = failures;
    }

    /** Opens the first that is a drawing, and takes the others for what they are. */
    void open(List<Path> files) {
        List<Path> all = files.stream().map(Path::toAbsolutePath).toList();
        List<Path> drawings = all.stream().filter(Several::isDrawing).toList();
        List<Path> others = all.stream().filter(file -> !isDrawing(file)).toList();
        if (!drawings.isEmpty()) {
            openFirst(drawings, 0, Optional.empty(), others);
        } else if (!others.isEmpty()) {
            beside.take(others, List.of(), () -> openFirst(others, 0, Optional.empty(), List.of()));
        }
    }

    /**
     * @param at     what comes before it cannot be opened
     * @param reason why the first of those cannot
     */
    private void openFirst(List<Path> drawings, int at, Optional<Throwable> reason, List<Path> others) {
        Path file = drawings.get(at);
        work.read(
                () -> SvgFile.read(file),
                Optional.of(file),
                Failures.name(file),
                () -> beside.take(others, saidOf(drawings, at), () -> {}),
                problem -> {
                    Throwable first = reason.orElse(problem);
                    if (at + 1 < drawings.size()) {
                        openFirst(drawings, at + 1, Optional.of(first), others);
                    } else {
                        failures.tell(first, drawings.get(0));
                    }
                });
    }

    private List<String> saidOf(List<Path> drawings, int opened) {
        String file = ShortName.of(Failures.name(drawings.get(opened)));
        List<String> said = new ArrayList<>();
        int more = drawings.size() - opened - 1;
        if (more > 0) {
            said.add(work.words().of("editor.said.one-at-a-time", Map.of("file", file, "count", more)));
        }
        if (opened > 0) {
            List<String> names = drawings.subList(0, opened).stream()
                    .map(Failures::name)
                    .map(ShortName::of)
                    .toList();
            said.add(work.words().of("editor.said.passed-over", Map.of("files", names)));
        }
        return said;
    }

    private static boolean isDrawing(Path file) {
        String name = Failures.name(file).toLowerCase(Locale.ROOT);
        return name.endsWith(".svg") || name.endsWith(".svgz");
    }
}
