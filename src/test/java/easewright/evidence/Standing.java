package easewright.evidence;

/** How well a figure from outside is known. */
enum Standing {
    PUBLISHED("published"),
    SECOND_HAND("second-hand"),
    COMMON_PRACTICE("common practice"),
    FROM_MEMORY("from memory"),
    CALCULATED("calculated");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
