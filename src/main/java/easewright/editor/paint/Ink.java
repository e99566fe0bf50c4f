package easewright.editor.paint;

import javafx.scene.paint.Color;

/** The colours of the table, light and dark. Every colour that means something goes with a sign of its own shape. */
public record Ink(
        Color table,
        Color grid,
        Color gridStrong,
        Color paper,
        Color line,
        Color text,
        Color quiet,
        Color level,
        Color levelText,
        Color moved,
        Color movedWash,
        Color ghost,
        Color guard,
        Color shadow,
        Color body) {
    /** Paper on a wooden table by day. */
    public static final Ink LIGHT = new Ink(
            Color.web("#e9e4da"),
            Color.web("#ded8cb"),
            Color.web("#d0c8b8"),
            Color.web("#fffdf8"),
            Color.web("#33312d"),
            Color.web("#33312d"),
            Color.web("#6a6459"),
            Color.web("#1f6a70"),
            Color.web("#ffffff"),
            Color.web("#b8480f"),
            Color.web("#b8480f", 0.16),
            Color.web("#70695b"),
            Color.web("#3f49b8"),
            Color.web("#5c5140", 0.16),
            Color.web("#b98a6a"));

    /** The same table by lamplight. */
    public static final Ink DARK = new Ink(
            Color.web("#1d1f22"),
            Color.web("#26292d"),
            Color.web("#33373c"),
            Color.web("#2c2f33"),
            Color.web("#e6e1d6"),
            Color.web("#ece7dc"),
            Color.web("#a39d92"),
            Color.web("#6cc3c6"),
            Color.web("#10282a"),
            Color.web("#ff9d5c"),
            Color.web("#ff9d5c", 0.18),
            Color.web("#aba69b"),
            Color.web("#9aa3ff"),
            Color.web("#000000", 0.35),
            Color.web("#d0a183"));

    /**
     * Pieces by day that lie aside: quieter than those in hand, and still plain enough for lines to be followed on the
     * table, on their own paper and on that of a piece in hand below them.
     */
    private static final Ink LIGHT_ASIDE = new Ink(
            LIGHT.table,
            LIGHT.grid,
            LIGHT.gridStrong,
            Color.web("#f1eee5"),
            Color.web("#75726c"),
            LIGHT.quiet,
            Color.web("#7d776d"),
            Color.web("#4d8688"),
            LIGHT.levelText,
            Color.web("#bb5f30"),
            Color.web("#bb5f30", 0.1),
            Color.web("#857e70"),
            Color.web("#7076c2"),
            LIGHT.shadow.deriveColor(0, 1, 1, 0.4),
            LIGHT.body);

    private static final Ink DARK_ASIDE = new Ink(
            DARK.table,
            DARK.grid,
            DARK.gridStrong,
            Color.web("#232528"),
            Color.web("#8a8882"),
            DARK.quiet,
            Color.web("#847f77"),
            Color.web("#50888b"),
            DARK.levelText,
            Color.web("#ae7049"),
            Color.web("#ae7049", 0.1),
            Color.web("#827e75"),
            Color.web("#747bbb"),
            DARK.shadow.deriveColor(0, 1, 1, 0.4),
            DARK.body);

    /** What pieces are drawn with that lie aside. */
    public Ink aside() {
        return this == DARK ? DARK_ASIDE : LIGHT_ASIDE;
    }
}
