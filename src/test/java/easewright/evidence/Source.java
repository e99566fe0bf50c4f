package easewright.evidence;

/** Where a figure comes from, and how well it is known. */
record Source(String name, Standing standing) {
    static Source published(String name) {
        return new Source(name, Standing.PUBLISHED);
    }

    static Source secondHand(String name) {
        return new Source(name, Standing.SECOND_HAND);
    }

    static Source practice(String name) {
        return new Source(name, Standing.COMMON_PRACTICE);
    }

    static Source fromMemory(String name) {
        return new Source(name, Standing.FROM_MEMORY);
    }

    static Source calculated(String name) {
        return new Source(name, Standing.CALCULATED);
    }
}
