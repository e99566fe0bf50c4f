package easewright.svg.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * By what the content of a file is known again.
 *
 * @param size   bytes
 * @param sha256 in hexadecimal digits
 */
public record Fingerprint(long size, String sha256) {
    public static Fingerprint of(byte[] content) {
        return new Fingerprint(content.length, HexFormat.of().formatHex(digest(content)));
    }

    /** What a file on the disk is; empty where it cannot be read. */
    public static Optional<Fingerprint> onDisk(Path file) {
        try {
            // What is no file, such as a pipe, might never come to its end.
            return Files.isRegularFile(file) ? Optional.of(of(Files.readAllBytes(file))) : Optional.empty();
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** The digest of a name. */
    static String hex(String name) {
        return HexFormat.of().formatHex(digest(name.getBytes(StandardCharsets.UTF_8)));
    }

    private static byte[] digest(byte[] content) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(content);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Fingerprint f && size == f.size && sha256.equals(f.sha256);
    }

    @Override
    public int hashCode() {
        return sha256.hashCode();
    }
}
