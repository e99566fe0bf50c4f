package easewright.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The ids of the elements that are shown of a drawing, in their order. */
final class ShownIds implements Scenery {
    private final String element;
    private final List<String> ids = new ArrayList<>();

    private ShownIds(String element) {
        this.element = element;
    }

    /**
     * @param element the name of the elements that are asked for; empty for all
     */
    static List<String> of(SvgFile file, String element, Set<String> without) throws SvgProblem {
        ShownIds shown = new ShownIds(element);
        file.show(shown, without);
        return shown.ids;
    }

    @Override
    public void start(String name, Map<String, String> attributes) {
        if (element.isEmpty() || name.equals(element)) {
            ids.add(attributes.getOrDefault("id", ""));
        }
    }

    @Override
    public void words(String words) {}

    @Override
    public void end() {}

    @Override
    public void rules(String css) {}
}
