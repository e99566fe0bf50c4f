package easewright.svg;

import java.util.Optional;

/**
 * How many pixels a packed picture unpacks to, read from its own head without unpacking it.
 *
 * @param mediaType by the bytes themselves, whatever the file calls it
 */
record PictureSize(String mediaType, int across, int down) {
    /** Empty unless it is a PNG, JPEG or GIF with a whole head. */
    static Optional<PictureSize> of(byte[] b) {
        if (starts(b, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A) && b.length >= 24) {
            return sized("image/png", int32(b, 16), int32(b, 20));
        }
        if (starts(b, 'G', 'I', 'F', '8') && b.length >= 10) {
            return sized("image/gif", (b[6] & 0xFF) | (b[7] & 0xFF) << 8, (b[8] & 0xFF) | (b[9] & 0xFF) << 8);
        }
        return starts(b, 0xFF, 0xD8, 0xFF) ? jpeg(b) : Optional.empty();
    }

    /** Goes from segment to segment to the one that begins the frame. */
    private static Optional<PictureSize> jpeg(byte[] b) {
        int at = 2;
        while (at + 9 < b.length && (b[at] & 0xFF) == 0xFF) {
            int marker = b[at + 1] & 0xFF;
            boolean frame = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
            if (frame) {
                return sized("image/jpeg", int16(b, at + 7), int16(b, at + 5));
            }
            int length = marker == 0xFF ? -1 : int16(b, at + 2);
            if (length == 0 || length == 1) {
                return Optional.empty();
            }
            at += length < 0 ? 1 : 2 + length;
        }
        return Optional.empty();
    }

    private static Optional<PictureSize> sized(String type, int across, int down) {
        return across > 0 && down > 0 ? Optional.of(new PictureSize(type, across, down)) : Optional.empty();
    }

    long pixels() {
        return (long) across * down;
    }

    private static int int16(byte[] b, int at) {
        return (b[at] & 0xFF) << 8 | (b[at + 1] & 0xFF);
    }

    private static int int32(byte[] b, int at) {
        return int16(b, at) << 16 | int16(b, at + 2);
    }

    private static boolean starts(byte[] b, int... wanted) {
        boolean same = b.length >= wanted.length;
        for (int i = 0; same && i < wanted.length; i++) {
            same = (b[i] & 0xFF) == wanted[i];
        }
        return same;
    }
}
