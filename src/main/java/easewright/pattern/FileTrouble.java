package easewright.pattern;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * What kept a file from being read or written, so that a person can be told what to do about it. A folder and the kind of
 * the exception come first. Where neither tells, the words of the system are read: those of Linux, macOS and Windows in
 * English, as far as they are known (from memory). Where they say nothing known, as in another language, the name of the
 * file and the way to it may tell; else it is {@link #UNKNOWN}.
 */
public enum FileTrouble {
    /** There is no such file, or no such folder. */
    MISSING(),
    /** A folder has that name. */
    FOLDER("is a directory"),
    /** The system lets this person not do it. */
    DENIED("permission denied", "not permitted", "access is denied"),
    /** A name, or all names on the way to it, are too long. */
    NAME_TOO_LONG("too long"),
    /** A link leads back to itself. */
    CIRCLE("symbolic links"),
    /** Another program has the file to itself. */
    IN_USE("another process", "resource busy", "text file busy"),
    /** The disk is full, or this person's share of it is. */
    FULL("no space left", "not enough space", "quota"),
    /** The disk takes nothing. */
    READ_ONLY("read-only file system", "write protected", "write-protected"),
    /** The disk, or the machine on the network that has it, does not answer. */
    AWAY(
            "input/output error",
            "stale file handle",
            "stale nfs",
            "not connected",
            "host is down",
            "no route to host",
            "timed out",
            "network",
            "device is not ready",
            "no such device"),
    /** Nothing of the kind. */
    UNKNOWN();

    /** The most that a name may have on nearly all disks, in bytes on some and in letters on others. */
    private static final int LONGEST_NAME = 255;

    private final List<String> words;

    FileTrouble(String... words) {
        this.words = List.of(words);
    }

    /**
     * @param file what was to be read or written
     * @param why  what came of it
     */
    public static FileTrouble of(Path file, IOException why) {
        if (Files.isDirectory(file)) {
            // Before all else: some systems say of a folder that it may not be read.
            return FOLDER;
        }
        if (why instanceof NoSuchFileException) {
            return MISSING;
        }
        if (why instanceof AccessDeniedException) {
            return DENIED;
        }
        if (why instanceof FileSystemLoopException) {
            return CIRCLE;
        }
        FileTrouble said = said(details(why).toLowerCase(Locale.ROOT));
        if (said != UNKNOWN) {
            // Before the name: some disks take names that are long in bytes, and have other troubles all the same.
            return said;
        }
        if (isNameTooLong(file)) {
            return NAME_TOO_LONG;
        }
        return isInsideAFile(file) ? MISSING : UNKNOWN;
    }

    /** What the system says of it, without the name of the file, which may say anything; empty for nothing. */
    public static String details(IOException why) {
        String said = why instanceof FileSystemException named ? named.getReason() : why.getMessage();
        return said == null ? "" : said;
    }

    private static FileTrouble said(String message) {
        for (FileTrouble each : values()) {
            if (each.words.stream().anyMatch(message::contains)) {
                return each;
            }
        }
        return UNKNOWN;
    }

    private static boolean isNameTooLong(Path file) {
        for (Path name : file) {
            if (name.toString().getBytes(StandardCharsets.UTF_8).length > LONGEST_NAME) {
                return true;
            }
        }
        return false;
    }

    /** Whether the way to it goes through something that is no folder. */
    private static boolean isInsideAFile(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        while (folder != null && !Files.exists(folder)) {
            folder = folder.getParent();
        }
        return folder != null && !Files.isDirectory(folder);
    }

    /** The code of the problem that a file was not read. */
    public String unread() {
        return switch (this) {
            case MISSING -> "file-missing";
            case FOLDER -> "file-is-folder";
            case DENIED -> "file-denied";
            case NAME_TOO_LONG -> "file-name-too-long";
            case CIRCLE -> "file-link-circle";
            case IN_USE -> "file-in-use";
            case AWAY -> "file-away";
            case FULL, READ_ONLY, UNKNOWN -> "file-unreadable";
        };
    }

    /** The code of the problem that a file was not saved. */
    public String unsaved() {
        return switch (this) {
            case MISSING -> "save-no-directory";
            case FOLDER -> "save-not-a-file";
            case DENIED -> "save-denied";
            case NAME_TOO_LONG -> "save-name-too-long";
            case CIRCLE -> "file-link-circle";
            case IN_USE -> "file-in-use";
            case FULL -> "save-disk-full";
            case READ_ONLY -> "save-disk-read-only";
            case AWAY -> "save-away";
            case UNKNOWN -> "save-failed";
        };
    }
}
