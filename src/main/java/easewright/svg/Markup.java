package easewright.svg;

/**
 * A file taken apart in both ways: what it means, and where each thing stands in it.
 */
record Markup(Tree tree, SourceText source) {
    /**
     * Takes the content of a file apart, by {@link PlainXml} where that can do it, else by the JDK's parser.
     *
     * @param plain XML text, not packed
     * @param name  the file's name, for problems
     */
    static Markup of(byte[] plain, String name) throws SvgProblem {
        SourceText source;
        try {
            source = SourceText.of(plain, name);
        } catch (SvgProblem unreadable) {
            // The parser knows better what is wrong with the file, if anything is wrong with all of it.
            SafeXml.read(plain, name);
            throw unreadable;
        }
        Tree tree = PlainXml.tree(source).orElse(null);
        return new Markup(tree == null ? SafeXml.read(plain, name) : tree, source);
    }

    /** The same by the JDK's parser in any case. */
    static Markup parsed(byte[] plain, String name) throws SvgProblem {
        return new Markup(SafeXml.read(plain, name), SourceText.of(plain, name));
    }
}
