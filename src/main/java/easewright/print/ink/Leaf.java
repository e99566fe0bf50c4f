package easewright.print.ink;

import easewright.geom.Affine;
import easewright.geom.Box;
import java.util.List;
import java.util.Optional;

/**
 * One page, upper left corner at 0, 0.
 *
 * @param width  mm
 * @param height mm
 * @param layers the first undermost
 * @param bold   how many times as thick as usual lines are
 */
public record Leaf(double width, double height, List<Layer> layers, double bold) {
    public Leaf {
        layers = List.copyOf(layers);
    }

    public Leaf(double width, double height, List<Layer> layers) {
        this(width, height, layers, 1);
    }

    /**
     * A picture on a page.
     *
     * @param groups what it can be switched off with, the outermost first; none: always seen
     * @param place  from the picture onto the page
     * @param clip   what is seen of it, on the page
     */
    public record Layer(List<Group> groups, Picture picture, Affine place, Optional<Box> clip) {
        public Layer {
            groups = List.copyOf(groups);
        }

        public static Layer of(Picture picture) {
            return new Layer(List.of(), picture, Affine.IDENTITY, Optional.empty());
        }
    }

    /** Something that can be switched on and off in a viewer. Groups of one id are the same. */
    public record Group(String id, String name) {}
}
