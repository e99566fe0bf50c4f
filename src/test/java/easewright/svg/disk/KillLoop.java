package easewright.svg.disk;

import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Lets a program save and keep work without end, kills it (signal 9) at a random moment, looks at what is left, and
 * does so again.
 *
 * <p>{@code java … easewright.svg.disk.KillLoop FOLDER TIMES SEED}
 */
final class KillLoop {
    private static final int SIZE = 400_000;

    private KillLoop() {}

    /** What was found over all rounds. */
    record Result(int kills, int savesSeen, int torn, int lost, int recovered, int leftAside, String kinds) {}

    public static void main(String[] args) throws Exception {
        System.out.println(run(Path.of(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2])));
    }

    static Result run(Path folder, int times, long seed) throws IOException, InterruptedException, SvgProblem {
        Random random = new Random(seed);
        Path file = Files.createDirectories(folder).resolve("a.svg");
        Path state = folder.resolve("state");
        Files.write(file, content(0));
        int torn = 0;
        int lost = 0;
        int recovered = 0;
        int aside = 0;
        int saves = 0;
        int kills = 0;
        TreeMap<String, Integer> kinds = new TreeMap<>();
        while (kills < times) {
            int before = number(Files.readAllBytes(file)).orElse(-1);
            Process saver = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-Xshare:auto",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Saver.class.getName(),
                            file.toString(),
                            state.toString(),
                            Integer.toString(before + 1))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (saver.getInputStream().read() < 0) {
                throw new IOException("The saver did not start");
            }
            TimeUnit.MICROSECONDS.sleep(random.nextInt(60_000));
            saver.destroyForcibly().waitFor();
            kills++;
            // Only its being whole counts: which of two saves came last is the disk's affair.
            OptionalInt now = number(Files.readAllBytes(file));
            torn += now.isPresent() ? 0 : 1;
            lost += now.isPresent() && now.getAsInt() < before ? 1 : 0;
            saves += Math.max(0, now.orElse(before) - before);
            Path backup = file.resolveSibling("a.svg.bak");
            if (Files.exists(backup) && number(Files.readAllBytes(backup)).isEmpty()) {
                torn++;
            }
            List<Path> left = aside(folder);
            aside += left.isEmpty() ? 0 : 1;
            kinds.merge(left.isEmpty() ? "between saves" : left.size() + " files aside", 1, Integer::sum);
            for (Path one : left) {
                Files.setLastModifiedTime(one, FileTime.from(Instant.EPOCH));
            }
            recovered += recover(state, file);
        }
        AtomicSave.save(file, content(0));
        if (!aside(folder).isEmpty()) {
            throw new IOException("The next save did not tidy up");
        }
        return new Result(kills, saves, torn, lost, recovered, aside, kinds.toString());
    }

    private static int recover(Path state, Path file) throws IOException {
        int whole = 0;
        try (Recovery next = new Recovery(state)) {
            for (KeptWork work : next.leftBehind()) {
                boolean right =
                        work.original().equals(file) && number(work.bytes()).isPresent();
                whole += right ? 1 : 0;
                if (!right) {
                    throw new IOException("Kept work is torn");
                }
                next.discard(work);
            }
        } catch (SvgProblem e) {
            throw new IOException(e);
        }
        return whole;
    }

    private static List<Path> aside(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return new ArrayList<>(
                    all.filter(p -> p.toString().endsWith(".tmp")).toList());
        }
    }

    /** A content that says its number in every eighth byte, so that no mixture of two passes for whole. */
    static byte[] content(int number) {
        byte[] bytes = new byte[SIZE + number % 1000];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (number >>> 8 * (i % 4));
        }
        return bytes;
    }

    private static OptionalInt number(byte[] bytes) {
        if (bytes.length < SIZE) {
            return OptionalInt.empty();
        }
        int number = (bytes[0] & 0xFF) | (bytes[1] & 0xFF) << 8 | (bytes[2] & 0xFF) << 16 | (bytes[3] & 0xFF) << 24;
        return Arrays.equals(bytes, content(number)) ? OptionalInt.of(number) : OptionalInt.empty();
    }

    /** Saves and keeps one content after another until it is killed. */
    static final class Saver {
        private Saver() {}

        public static void main(String[] args) throws Exception {
            Path file = Path.of(args[0]);
            Recovery window = new Recovery(Path.of(args[1]));
            for (int number = Integer.parseInt(args[2]); ; number++) {
                byte[] content = content(number);
                window.keep(file, Optional.empty(), content, "", EarlierStates.NONE);
                AtomicSave.save(file, content, Fingerprint.of(Files.readAllBytes(file)));
                window.done(file);
                if (number == Integer.parseInt(args[2])) {
                    System.out.println("saving");
                }
            }
        }
    }
}
