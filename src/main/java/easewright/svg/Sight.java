package easewright.svg;

import java.util.Locale;
import java.util.Map;

/**
 * Whether an element is to be seen. What is not is read all the same, so that marks may refer to it and its layer can
 * be chosen; only it counts for nothing else.
 *
 * @param displayed false inside anything that is taken out of the picture as a whole
 * @param visible   false where drawing is switched off; an element inside may switch it on again
 * @param chosen    false outside the layers that were asked for
 */
record Sight(boolean displayed, boolean visible, boolean chosen) {
    boolean shown() {
        return displayed && visible && chosen;
    }

    /** Whether what is wrong with the element is of interest. */
    boolean matters() {
        return displayed && chosen;
    }

    /**
     * What holds for an element inside.
     *
     * @param asked whether the element is a layer that was asked for by name: it is then seen even if hidden
     */
    Sight inside(Element element, Map<String, String> style, boolean asked) {
        return new Sight(displayed && (asked || !hidden(element, style)), visible(element, style), chosen || asked);
    }

    private static boolean hidden(Element element, Map<String, String> style) {
        String display = style.getOrDefault("display", element.get("display"));
        return display != null && display.strip().equalsIgnoreCase("none");
    }

    private boolean visible(Element element, Map<String, String> style) {
        String visibility = style.getOrDefault("visibility", element.get("visibility"));
        if (visibility == null) {
            return visible;
        }
        return switch (visibility.strip().toLowerCase(Locale.ROOT)) {
            case "visible" -> true;
            case "hidden", "collapse" -> false;
            default -> visible;
        };
    }

    /** The same around a layer that is not to be read. */
    Sight unchosen() {
        return new Sight(displayed, visible, false);
    }
}
