package easewright.editor.paint;

import java.util.Arrays;

/**
 * Stretches of lines by the squares of the screen that they come into, so that words are compared only with what is near:
 * room for one label is looked for in a hundred places.
 */
final class LineGrid {
    /** The side of a square, pixels. */
    private static final double SIDE = 64;

    /** What comes into more squares is compared always. */
    private static final int MOST = 64;

    /** Squares far from each other share a bucket; a power of two. */
    private static final int BUCKETS = 256;

    /** Above a line and below it, at one end and at the other. */
    private static final int LATELY = 4;

    private final Bucket[] buckets = new Bucket[BUCKETS];
    private final Bucket always = new Bucket();
    /** What the last places that were not clear met: places are tried around one spot, and the next mostly meets it too. */
    private final DrawnLine[] met = new DrawnLine[LATELY];

    private final int[] metAt = new int[LATELY];
    private int meetings;

    private final class Bucket {
        private DrawnLine[] lines = new DrawnLine[4];
        private int[] stretches = new int[4];
        private int count;

        void put(DrawnLine line, int stretch) {
            if (count == lines.length) {
                lines = Arrays.copyOf(lines, 2 * count);
                stretches = Arrays.copyOf(stretches, 2 * count);
            }
            lines[count] = line;
            stretches[count++] = stretch;
        }

        boolean meets(DrawnLine.Place place) {
            for (int i = 0; i < count; i++) {
                if (lines[i].meets(stretches[i], place)) {
                    met[meetings % LATELY] = lines[i];
                    metAt[meetings++ % LATELY] = stretches[i];
                    return true;
                }
            }
            return false;
        }
    }

    void put(DrawnLine line) {
        for (int stretch = 0; stretch < line.stretches(); stretch++) {
            int left = square(line.left(stretch));
            int right = square(line.right(stretch));
            int top = square(line.top(stretch));
            int bottom = square(line.bottom(stretch));
            if ((right - left + 1L) * (bottom - top + 1L) > MOST) {
                always.put(line, stretch);
                continue;
            }
            for (int x = left; x <= right; x++) {
                for (int y = top; y <= bottom; y++) {
                    int at = bucket(x, y);
                    if (buckets[at] == null) {
                        buckets[at] = new Bucket();
                    }
                    buckets[at].put(line, stretch);
                }
            }
        }
    }

    /** Whether one of the lines crosses or enters a rectangle. */
    boolean meets(DrawnLine.Place place) {
        for (int i = 0; i < Math.min(meetings, LATELY); i++) {
            if (met[i].meets(metAt[i], place)) {
                return true;
            }
        }
        if (always.meets(place)) {
            return true;
        }
        int right = square(place.x() + place.reach());
        int bottom = square(place.y() + place.tall());
        for (int x = square(place.x() - place.reach()); x <= right; x++) {
            for (int y = square(place.y() - place.tall()); y <= bottom; y++) {
                Bucket bucket = buckets[bucket(x, y)];
                if (bucket != null && bucket.meets(place)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int square(double pixels) {
        return (int) Math.floor(pixels / SIDE);
    }

    private static int bucket(int x, int y) {
        return (x + 17 * y) & (BUCKETS - 1);
    }
}
