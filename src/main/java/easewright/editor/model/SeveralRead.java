package easewright.editor.model;

import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;

/**
 * What is read off a pattern before a change that is tried in several sizes at once, and after it, with the girths, seams
 * and ease of all of them. Worked out once for whoever tells of it; where one size changes, it is what is read of that.
 *
 * @param sizes  in which it is tried
 * @param before stays the same through a whole pull
 */
record SeveralRead(List<String> sizes, Reading before, Reading after) {
    SeveralRead {
        sizes = List.copyOf(sizes);
    }

    /**
     * @param last what was read when the last wish on the same pattern was tried
     */
    static SeveralRead of(
            Pattern pattern,
            Reading read,
            Pattern changed,
            Reading now,
            List<String> sizes,
            Optional<SeveralRead> last) {
        if (sizes.size() < 2) {
            return new SeveralRead(sizes, read, now);
        }
        Reading before = last.filter(l -> l.sizes.equals(sizes))
                .map(SeveralRead::before)
                .orElseGet(() -> read.inSizes(pattern, sizes));
        return new SeveralRead(sizes, before, now.inSizes(changed, sizes));
    }
}
