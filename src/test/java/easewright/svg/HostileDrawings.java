package easewright.svg;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Hostile drawings that are made rather than kept, each of another class than the files in
 * {@code src/test/resources/hostile}. All but those to be refused also draw the square {@code good}.
 *
 * <p>{@code java … easewright.svg.HostileDrawings FOLDER} writes them all there, for {@link HostileRun}.
 */
final class HostileDrawings {
    /** What must become of it. */
    enum Fate {
        /** Refused with a reason. */
        REFUSED,
        /** Opened, with the good square measured right. */
        OPENED,
        /** Either of both, in bounded time and memory. */
        BOUNDED
    }

    /**
     * One drawing.
     *
     * @param heavy whether it weighs by its mass, and is left to {@link HostileRun}
     */
    record Hostile(String name, Fate fate, boolean heavy, Supplier<byte[]> bytes) {
        @Override
        public String toString() {
            return name;
        }
    }

    private HostileDrawings() {}

    static List<Hostile> all() {
        return Stream.of(new HostileText(), new HostileShapes(), new HostileWords())
                .flatMap(list -> list.all.stream())
                .toList();
    }

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        for (Hostile one : all()) {
            Files.write(folder.resolve(one.name() + ".svg"), one.bytes().get());
        }
    }
}
