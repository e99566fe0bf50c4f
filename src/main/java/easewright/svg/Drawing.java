package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.pattern.Caption;
import easewright.pattern.Finding;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;

/**
 * What is visible in a file.
 *
 * @param shapes   in the order in which they are painted
 * @param scale    how units became millimetres
 * @param findings what was wrong or doubtful
 * @param rootToMm from user units of the root element to mm of the drawing, whose origin is the page's upper left
 * @param page     the page, mm, where the file states its size in whatever unit
 * @param captions the words written on it
 */
public record Drawing(
        List<DrawnShape> shapes,
        Scale scale,
        List<Finding> findings,
        Affine rootToMm,
        Optional<Box> page,
        List<Caption> captions) {
    public Drawing {
        shapes = List.copyOf(shapes);
        findings = List.copyOf(findings);
        captions = List.copyOf(captions);
    }

    public Optional<DrawnShape> shape(String id) {
        return shapes.stream().filter(s -> s.id().equals(id)).findFirst();
    }
}
