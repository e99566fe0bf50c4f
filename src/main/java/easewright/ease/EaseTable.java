package easewright.ease;

import easewright.pattern.LevelKind;
import java.util.List;
import java.util.Optional;

/**
 * One published table of total ease at one level.
 *
 * @param garment  garments it is for, as the source names them
 * @param bands    classes in rising order
 * @param source   where it was published
 * @param standing how well it is known: published, second-hand, from memory, common practice
 * @param knit     whether it is for knits (else it is for wovens only)
 * @param percent  whether its figures are percent of the body girth (else mm)
 */
public record EaseTable(
        String id,
        String garment,
        LevelKind level,
        List<Band> bands,
        String source,
        String standing,
        boolean knit,
        boolean percent) {
    /** Values this close to the end of a band lie on it, mm or percent: half of the tenth to which they are shown. */
    private static final double ON_END = 0.05;

    /**
     * @throws IllegalArgumentException if there is no band or the bands do not rise
     */
    public EaseTable {
        bands = List.copyOf(bands);
        if (bands.isEmpty()) {
            throw new IllegalArgumentException("Table " + id + " has no band");
        }
        for (int i = 0; i < bands.size(); i++) {
            double from = bands.get(i).from();
            boolean last = i == bands.size() - 1;
            if (bands.get(i).to().isEmpty() ? !last : bands.get(i).to().getAsDouble() < from) {
                throw new IllegalArgumentException(
                        "Table " + id + ": band " + bands.get(i).word() + " has no top");
            }
            if (i > 0 && from < bands.get(i - 1).to().getAsDouble()) {
                throw new IllegalArgumentException(
                        "Table " + id + ": band " + bands.get(i).word() + " starts too low");
            }
        }
    }

    /** Classes an ease, given both as a length (mm) and as a percentage of the body girth. */
    public Classed classify(double mm, double percentOfBody) {
        double value = percent ? percentOfBody : mm;
        if (value < bands.get(0).from() - ON_END) {
            return new Classed(this, Classed.Where.BELOW, Optional.empty());
        }
        for (Band band : bands) {
            if (band.to().isEmpty() || value <= band.to().getAsDouble() + ON_END) {
                return new Classed(this, Classed.Where.WITHIN, Optional.of(band));
            }
        }
        return new Classed(this, Classed.Where.ABOVE, Optional.empty());
    }
}
