package easewright.alter;

import easewright.geom.Segment;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/** A line that goes round a piece beside its outline, drawn anew. */
record CutStroke(String piece, String rider, List<Segment> before, List<Segment> after) implements Stroke {
    static final String WORD = "cut";

    /** Rounding in a file moves a line by no more than this, mm. */
    private static final double ROUNDED = 0.02;

    CutStroke {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    @Override
    public Piece on(Piece on) throws Refusal {
        if (on.riders().stream().noneMatch(r -> r.id().equals(rider))) {
            throw Refusal.of("truing-lost").with("piece", on.name());
        }
        return on.toBuilder()
                .riders(on.riders().stream()
                        .map(r -> r.id().equals(rider) ? r.changed(after) : r)
                        .toList())
                .build();
    }

    /** All of the line: where it lies elsewhere now, what was drawn would take it back there. */
    @Override
    public boolean continues(Piece on) {
        return on.riders().stream()
                .filter(r -> r.id().equals(rider))
                .anyMatch(r -> Likeness.sameLines(List.of(r), List.of(r.withSegments(before)), ROUNDED));
    }

    @Override
    public List<Moved> moved(Piece on) {
        return List.of();
    }

    @Override
    public Optional<Stroke> opposite() {
        return Optional.of(new CutStroke(piece, rider, after, before));
    }

    @Override
    public String text() {
        return WORD + " " + StrokeText.of(before) + " " + StrokeText.of(after) + " " + rider.length() + " " + rider
                + " " + piece;
    }

    static CutStroke parse(StrokeText read) throws Refusal {
        List<Segment> before = read.segments();
        List<Segment> after = read.segments();
        int length = read.count();
        String rest = read.rest();
        if (rest.length() <= length + 1) {
            throw read.unreadable();
        }
        return new CutStroke(rest.substring(length + 1), rest.substring(0, length), before, after);
    }
}
