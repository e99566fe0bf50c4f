package easewright.print.ink;

import easewright.geom.Affine;
import java.util.ArrayList;
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

    /** This with another one on top. */
    public Picture and(Picture above) {
        List<Mark> both = new ArrayList<>(marks);
        both.addAll(above.marks);
        return new Picture(both);
    }

    public boolean isEmpty() {
        return marks.isEmpty();
    }
}
