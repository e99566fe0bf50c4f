package easewright.svg.disk;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The state of a file that was being worked on, as {@link Recovery} keeps it. */
public final class KeptWork {
    private static final String MAGIC = "easewright-kept-3";

    /** Without earlier states. */
    private static final String FORMER = "easewright-kept-2";

    /** Without what was unfinished, too. */
    private static final String FIRST = "easewright-kept-1";

    private final Path file;
    private final Path original;
    private final Optional<Fingerprint> base;
    private final Instant at;
    private final byte[] bytes;
    private final String unfinished;
    private final EarlierStates earlier;

    KeptWork(
            Path file,
            Path original,
            Optional<Fingerprint> base,
            Instant at,
            byte[] bytes,
            String unfinished,
            EarlierStates earlier) {
        this.file = file;
        this.original = original;
        this.base = base;
        this.at = at;
        this.bytes = bytes.clone();
        this.unfinished = unfinished;
        this.earlier = earlier;
    }

    /** Where it is kept. */
    Path file() {
        return file;
    }

    /** The user's file, or the name it would have had. */
    public Path original() {
        return original;
    }

    /** When it was kept. */
    public Instant at() {
        return at;
    }

    /** The whole file as it would have been saved. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** What was at hand and not done yet, as the one who kept it wrote it down; empty for nothing. */
    public String unfinished() {
        return unfinished;
    }

    /** What the file was before, as far as there was room to keep it. */
    public EarlierStates earlier() {
        return earlier;
    }

    /**
     * Whether the user's file is no longer what it was when this was kept: restoring over it would lose what has
     * happened to it since. Not so where it holds just what was kept.
     */
    public boolean originalChanged() {
        try {
            Optional<Fingerprint> now = now();
            return !now.equals(base) && !now.equals(Optional.of(Fingerprint.of(bytes)));
        } catch (IOException e) {
            return true;
        }
    }

    /** Whether the user's file holds just this: it was saved before the program ended. */
    public boolean isInItsFile() {
        try {
            return now().equals(Optional.of(Fingerprint.of(bytes)));
        } catch (IOException e) {
            return false;
        }
    }

    /** What the user's file holds now, if it is there. */
    private Optional<Fingerprint> now() throws IOException {
        boolean there = original.isAbsolute() && Files.isRegularFile(original);
        return there ? Optional.of(Fingerprint.of(Files.readAllBytes(original))) : Optional.empty();
    }

    /** Everything in one piece, with its own fingerprint behind it. */
    byte[] stored() {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + 512);
        try (DataOutputStream data = new DataOutputStream(out)) {
            data.writeUTF(MAGIC);
            data.writeUTF(original.toString());
            data.writeLong(at.toEpochMilli());
            data.writeLong(base.map(Fingerprint::size).orElse(-1L));
            data.writeUTF(base.map(Fingerprint::sha256).orElse(""));
            data.writeInt(bytes.length);
            data.write(bytes);
            byte[] hand = unfinished.getBytes(StandardCharsets.UTF_8);
            data.writeInt(hand.length);
            data.write(hand);
            byte[] before = earlier.packed();
            data.writeInt(before.length);
            data.write(before);
            data.writeInt(earlier.saved());
            data.flush();
            data.writeUTF(Fingerprint.of(out.toByteArray()).sha256());
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be written", e);
        }
        return out.toByteArray();
    }

    /** Empty if the file is not whole. */
    static Optional<KeptWork> of(Path file, byte[] stored) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(stored))) {
            String magic = in.readUTF();
            if (!List.of(MAGIC, FORMER, FIRST).contains(magic)) {
                return Optional.empty();
            }
            Path original = Path.of(in.readUTF());
            Instant at = Instant.ofEpochMilli(in.readLong());
            long size = in.readLong();
            String sha256 = in.readUTF();
            byte[] bytes = in.readNBytes(in.readInt());
            byte[] hand = magic.equals(FIRST) ? new byte[0] : in.readNBytes(in.readInt());
            String unfinished = new String(hand, StandardCharsets.UTF_8);
            byte[] before = magic.equals(MAGIC) ? in.readNBytes(in.readInt()) : EarlierStates.NONE.packed();
            int saved = magic.equals(MAGIC) ? in.readInt() : -1;
            int covered = stored.length - in.available();
            boolean whole = in.readUTF()
                    .equals(Fingerprint.of(Arrays.copyOf(stored, covered)).sha256());
            Optional<Fingerprint> base = size < 0 ? Optional.empty() : Optional.of(new Fingerprint(size, sha256));
            // What is not whole is not even looked into: it might ask for any amount of memory.
            return whole
                    ? Optional.of(new KeptWork(
                            file, original, base, at, bytes, unfinished, EarlierStates.unpacked(before, saved)))
                    : Optional.empty();
        } catch (IOException | IllegalArgumentException damaged) {
            return Optional.empty();
        }
    }
}
