package easewright.svg;

import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;

/**
 * The marks of a pattern as text, for whoever writes a whole new SVG file. See {@code docs/file-format.md}.
 */
public final class MarksBlock {
    /** The namespace of the marks. */
    public static final String NAMESPACE = MarkNode.NAMESPACE;

    private static final String INDENT = "  ";

    private MarksBlock() {}

    /**
     * A {@code metadata} element holding all of the pattern but its outlines, to be put inside an {@code svg} element
     * whose default namespace is SVG. It begins with two spaces and ends with a line feed. Characters outside ASCII
     * are not escaped: the file is to be stored as UTF-8.
     *
     * @throws SvgProblem {@code text-unwritable} if a name holds a control character
     */
    public static String text(Pattern pattern) throws SvgProblem {
        return INDENT + metadata(pattern, List.of(), Optional.empty(), Resting.NONE, "", INDENT, "\n") + "\n";
    }

    /** The metadata element, without indent before or line end after it. */
    static String metadata(
            Pattern pattern,
            List<KeptMark> kept,
            Optional<PageMark> page,
            Resting resting,
            String prefix,
            String indent,
            String lineEnd)
            throws SvgProblem {
        String name = prefix + "metadata";
        String marks = MarksWriter.write(pattern, kept, page, resting, indent + INDENT, lineEnd);
        return "<" + name + ">" + lineEnd + indent + INDENT + marks + lineEnd + indent + "</" + name + ">";
    }
}
