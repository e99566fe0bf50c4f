package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.pattern.Caption;
import easewright.pattern.Finding;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;

/**
 * What is drawn in a file.
 *
 * @param all      in the order in which they are painted, hidden ones among them
 * @param joined   outlines that are drawn as several loose lines
 * @param layers   such as the sizes of a nest, hidden ones among them
 * @param pictures such as a scanned pattern under the outlines
 * @param scale    how units became millimetres
 * @param proposals what the scale may be, the likeliest first, where nothing proves it
 * @param findings what was wrong or doubtful
 * @param rootToMm from user units of the root element to mm of the drawing, whose origin is the page's upper left
 * @param page     the page, mm, where the file states its size in whatever unit
 * @param pageUnit the unit of paper in which the file states its page, in small letters, such as {@code in}
 * @param captions the words written on it
 */
public record Drawing(
        List<DrawnShape> all,
        JoinedLines joined,
        List<Layer> layers,
        List<Picture> pictures,
        Scale scale,
        List<ScaleProposal> proposals,
        List<Finding> findings,
        Affine rootToMm,
        Optional<Box> page,
        Optional<String> pageUnit,
        List<Caption> captions) {
    public Drawing {
        all = List.copyOf(all);
        layers = List.copyOf(layers);
        pictures = List.copyOf(pictures);
        proposals = List.copyOf(proposals);
        findings = List.copyOf(findings);
        captions = List.copyOf(captions);
    }

    /** What is to be seen, in the order in which it is painted. */
    public List<DrawnShape> shapes() {
        return all.stream().filter(DrawnShape::shown).toList();
    }

    public Optional<DrawnShape> shape(String id) {
        return all.stream().filter(s -> s.id().equals(id)).findFirst();
    }
}
