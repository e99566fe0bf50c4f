package easewright.svg;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What Inkscape keeps of an element besides its line and draws it by: that it is a star or an arc, or what an effect is
 * laid on. It goes by that and not by the line, so that a line which has been changed would be seen as it was, at once or
 * when the element is next touched. A line that is drawn anew is therefore no longer such a form.
 *
 * <p>An effect may lie on a group as well. It would be laid once more on the line that was drawn anew, and cannot be taken
 * off that line alone: the group loses it, and every line in the group stays as it is seen.
 */
final class LiveForm {
    private static final String EFFECT = "inkscape:path-effect";
    private static final Set<String> ATTRIBUTES = Set.of("sodipodi:type", EFFECT, "inkscape:original-d");

    private LiveForm() {}

    /** Whether an attribute, by its name as written, is part of it. */
    static boolean isOf(String attribute) {
        return ATTRIBUTES.contains(attribute.toLowerCase(Locale.ROOT));
    }

    static boolean isOn(Tag tag) {
        return tag.attributes().stream().anyMatch(a -> isOf(a.name()));
    }

    /** The outermost group around an element on which an effect lies. */
    static Optional<Tag> groupAround(SourceText source, int element) {
        Tag outermost = null;
        for (int up = source.tag(element).parent(); up >= 0; up = source.tag(up).parent()) {
            outermost = hasEffect(source.tag(up)) ? source.tag(up) : outermost;
        }
        return Optional.ofNullable(outermost);
    }

    private static boolean hasEffect(Tag tag) {
        return tag.attributes().stream()
                .anyMatch(a -> a.name().toLowerCase(Locale.ROOT).equals(EFFECT)
                        && !a.raw().isBlank());
    }

    /**
     * The edits by which elements, and all in groups with an effect around them, become plain lines.
     *
     * @param elements the numbers of those that are drawn anew
     * @param gone     what is taken out of the text altogether
     */
    static List<Edit> madePlain(SourceText source, Collection<Integer> elements, List<Edit> gone) {
        Set<Integer> plain = new TreeSet<>(elements);
        Set<Integer> groups = new TreeSet<>();
        elements.forEach(e -> groupAround(source, e).ifPresent(group -> groups.add(group.index())));
        for (int group : groups) {
            int end = source.tag(group).endTo();
            for (int in = group; in < source.tags().size() && source.tag(in).from() < end; in++) {
                plain.add(in);
            }
        }
        Set<Edit> edits = new LinkedHashSet<>();
        for (int element : plain) {
            Tag tag = source.tag(element);
            if (gone.stream().noneMatch(g -> g.from() <= tag.from() && tag.to() <= g.to())) {
                tag.attributes().stream().filter(a -> isOf(a.name())).forEach(a -> edits.add(a.takenOut()));
            }
        }
        return new ArrayList<>(edits);
    }
}
