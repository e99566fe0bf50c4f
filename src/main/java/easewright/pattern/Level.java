package easewright.pattern;

/**
 * A level of the garment at which girth is read.
 *
 * @param limb the girth of one arm or leg is meant: of two mirrored pieces only one counts
 */
public record Level(String name, LevelKind kind, boolean limb) {
    /**
     * @throws IllegalArgumentException if the name is blank
     */
    public Level {
        Names.require(name, "level");
    }

    public static Level of(String name, LevelKind kind) {
        return new Level(name, kind, kind.limb());
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Level l && name.equals(l.name) && kind == l.kind && limb == l.limb;
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
