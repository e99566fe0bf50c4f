package easewright.svg;

/** Characters {@code from} to {@code to} of a text give way to {@code text}, which is markup already escaped. */
record Edit(int from, int to, String text) {
    Edit {
        if (from < 0 || to < from) {
            throw new IllegalArgumentException("Not a stretch of text: " + from + " to " + to);
        }
    }
}
