package easewright.svg;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A layer of the drawing, such as one size of a nest.
 *
 * @param key      by which it is chosen in {@link ReadOptions}
 * @param name     as people read it
 * @param outlines how many closed outlines large enough for a piece lie in it
 * @param shown    whether it was read; a hidden layer is listed too
 * @param within   key of the layer around it; empty for one that lies in no other
 */
public record Layer(String key, String name, int outlines, boolean shown, String within) {
    private static final int MOST = 500;

    /** The layers that hold anything drawn, in the order in which they are painted. */
    static List<Layer> of(Tree tree, ShapeNames names, List<DrawnShape> shapes) {
        Map<String, int[]> counts = new TreeMap<>();
        for (DrawnShape shape : shapes) {
            if (shape.groups().isEmpty()) {
                continue;
            }
            int outlines = Ring.ofPieces(shape).size();
            for (DrawnShape.Group group : shape.groups()) {
                int[] count = counts.computeIfAbsent(group.key(), key -> new int[2]);
                count[0] += outlines;
                count[1] += shape.shown() ? 1 : 0;
            }
        }
        List<Layer> layers = new ArrayList<>();
        Map<Element, String> keys = new IdentityHashMap<>();
        for (Element group : groups(tree)) {
            List<DrawnShape.Group> own = names.groupsWithin(group, List.of());
            int[] count = own.isEmpty() ? null : counts.get(own.get(0).key());
            if (count != null && layers.size() < MOST) {
                keys.put(group, own.get(0).key());
                layers.add(new Layer(
                        own.get(0).key(), own.get(0).name(), count[0], count[1] > 0, within(group.parent, keys)));
            }
        }
        return layers;
    }

    private static String within(Element around, Map<Element, String> keys) {
        Element up = around;
        while (up != null && !keys.containsKey(up)) {
            up = up.parent;
        }
        return up == null ? "" : keys.get(up);
    }

    /**
     * The layers worth choosing from, such as the sizes of a nest: those that hold outlines and lie side by side, as far
     * out as there are several. Empty where there is no choice.
     */
    public static List<Layer> choice(List<Layer> all) {
        List<Layer> holding = all.stream().filter(l -> l.outlines() > 0).toList();
        List<Layer> side = holding.stream().filter(l -> l.within().isEmpty()).toList();
        while (side.size() == 1) {
            String around = side.get(0).key();
            side = holding.stream().filter(l -> l.within().equals(around)).toList();
        }
        return side;
    }

    /** Groups that an editor calls layers; without any, the groups that stand side by side right inside the root. */
    private static List<Element> groups(Tree tree) {
        List<Element> called = new ArrayList<>();
        List<Element> open = new ArrayList<>(List.of(tree.root()));
        while (!open.isEmpty()) {
            Element element = open.remove(open.size() - 1);
            if ("layer".equals(element.get("inkscape:groupmode"))) {
                called.add(element);
            }
            for (int i = element.children.size() - 1; i >= 0; i--) {
                if (holds(element.children.get(i))) {
                    open.add(element.children.get(i));
                }
            }
        }
        if (!called.isEmpty()) {
            return called;
        }
        List<Element> side = tree.root().children.stream().filter(Layer::holds).toList();
        while (side.size() == 1) {
            List<Element> inner =
                    side.get(0).children.stream().filter(Layer::holds).toList();
            if (inner.isEmpty()) {
                return side;
            }
            side = inner;
        }
        return side;
    }

    private static boolean holds(Element element) {
        return element.name.equals("g") || element.name.equals("svg");
    }
}
