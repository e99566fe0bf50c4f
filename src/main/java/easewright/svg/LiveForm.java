package easewright.svg;

import java.util.Locale;
import java.util.Set;

/**
 * What Inkscape keeps of an element besides its line and draws it by: that it is a star or an arc, or what an effect is
 * laid on. It goes by that and not by the line, so that a line which has been changed would be seen as it was, at once or
 * when the element is next touched. A line that is drawn anew is therefore no longer such a form.
 */
final class LiveForm {
    private static final Set<String> ATTRIBUTES =
            Set.of("sodipodi:type", "inkscape:path-effect", "inkscape:original-d");

    private LiveForm() {}

    /** Whether an attribute, by its name as written, is part of it. */
    static boolean isOf(String attribute) {
        return ATTRIBUTES.contains(attribute.toLowerCase(Locale.ROOT));
    }

    static boolean isOn(Tag tag) {
        return tag.attributes().stream().anyMatch(a -> isOf(a.name()));
    }
}
