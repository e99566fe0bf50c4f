package easewright.print.ink;

import easewright.geom.Affine;
import java.util.List;

/** Marks, the first undermost. */
public record Picture(List<Mark> marks) {
    public static final Picture EMPTY = new Picture(List.of());

    public Picture {
        marks = List.copyOf(marks);
    }

    public Picture transformed(Affine map) {
        return new Picture(marks.stream().map(m -> m.transformed(map)).toList());
    }

    public boolean isEmpty() {
        return marks.isEmpty();
    }
}
