package easewright.svg;

import easewright.geom.Affine;
import java.util.List;

/**
 * One drawn element with its geometry.
 *
 * @param element  0-based number of its start tag in document order, the root being 0
 * @param id       its id, or one made up here; unique in the drawing
 * @param idGiven  whether the file holds exactly this id, once
 * @param tag      local name: path, polygon, polyline, rect, circle, ellipse or line
 * @param label    what the file calls it: title, label, or a text written inside it; may be empty
 * @param groups   the groups around it that are called something, outermost first
 * @param subPaths its geometry, mm of the whole drawing; those without any length are left out
 * @param toMm     from the units in which its own numbers are written to mm
 * @param editable false if its numbers must not be written back: it was drawn through {@code use}, its transform
 *                 cannot be undone, or its geometry is not the file's own text
 * @param shown    false if it is hidden, or outside the layers that were asked for
 */
public record DrawnShape(
        int element,
        String id,
        boolean idGiven,
        String tag,
        String label,
        List<Group> groups,
        List<SubPath> subPaths,
        Affine toMm,
        boolean editable,
        boolean shown) {
    public DrawnShape {
        groups = List.copyOf(groups);
        subPaths = List.copyOf(subPaths);
    }

    /**
     * A group that is called something.
     *
     * @param key  by which it can be asked for as a layer
     * @param name as people read it
     */
    public record Group(String key, String name) {}

    /** Names of the groups around it, outermost first. */
    public List<String> layers() {
        return groups.stream().map(Group::name).toList();
    }

    /** The same shape under another label. */
    DrawnShape withLabel(String other) {
        return new DrawnShape(element, id, idGiven, tag, other, groups, subPaths, toMm, editable, shown);
    }
}
