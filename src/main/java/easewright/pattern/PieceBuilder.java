package easewright.pattern;

import easewright.geom.Outline;
import java.util.List;
import java.util.Optional;

/** Makes a piece from another one with some parts replaced. Not thread-safe. */
public final class PieceBuilder {
    private String id;
    private String name;
    private Outline outline;
    private LineKind drawn;
    private double allowance;
    private int times;
    private int layers;
    private boolean onFold;
    private List<Edge> edges;
    private List<LevelMark> levels;
    private List<Dart> darts;
    private List<Notch> notches;
    private Optional<Grain> grain;
    private List<Rider> riders;
    private Optional<Outline> original;
    private Optional<String> size;
    private Side side;

    PieceBuilder(Piece piece) {
        id = piece.id();
        name = piece.name();
        outline = piece.outline();
        drawn = piece.drawn();
        allowance = piece.allowance();
        times = piece.times();
        layers = piece.layers();
        onFold = piece.onFold();
        edges = piece.edges();
        levels = piece.levels();
        darts = piece.darts();
        notches = piece.notches();
        grain = piece.grain();
        riders = piece.riders();
        original = piece.original();
        size = piece.size();
        side = piece.side();
    }

    /** Another id, for a piece that is drawn apart. */
    public PieceBuilder id(String value) {
        id = value;
        return this;
    }

    public PieceBuilder name(String value) {
        name = value;
        return this;
    }

    public PieceBuilder outline(Outline value) {
        outline = value;
        return this;
    }

    public PieceBuilder drawn(LineKind value, double allowanceMm) {
        drawn = value;
        allowance = allowanceMm;
        return this;
    }

    public PieceBuilder cut(int howOften, boolean onTheFold) {
        times = howOften;
        onFold = onTheFold;
        return this;
    }

    public PieceBuilder layers(int onEachOther) {
        layers = onEachOther;
        return this;
    }

    public PieceBuilder edges(List<Edge> value) {
        edges = value;
        return this;
    }

    public PieceBuilder levels(List<LevelMark> value) {
        levels = value;
        return this;
    }

    public PieceBuilder darts(List<Dart> value) {
        darts = value;
        return this;
    }

    public PieceBuilder notches(List<Notch> value) {
        notches = value;
        return this;
    }

    public PieceBuilder grain(Optional<Grain> value) {
        grain = value;
        return this;
    }

    public PieceBuilder grain(Grain value) {
        return grain(Optional.of(value));
    }

    public PieceBuilder riders(List<Rider> value) {
        riders = value;
        return this;
    }

    public PieceBuilder original(Optional<Outline> value) {
        original = value;
        return this;
    }

    public PieceBuilder size(Optional<String> value) {
        size = value;
        return this;
    }

    public PieceBuilder side(Side value) {
        side = value;
        return this;
    }

    public Piece build() {
        return new Piece(
                id, name, outline, drawn, allowance, times, layers, onFold, edges, levels, darts, notches, grain,
                riders, original, size, side);
    }
}
