package easewright.editor.mark;

import easewright.pattern.Pattern;

/** Something done to the marks of a pattern, which may be refused. */
@FunctionalInterface
public interface MarkEdit {
    Pattern of(Pattern present) throws MarkRefused;
}
