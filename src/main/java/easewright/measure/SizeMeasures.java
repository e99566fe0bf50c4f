package easewright.measure;

import easewright.pattern.Finding;
import easewright.pattern.Mate;
import java.util.List;

/**
 * What the garment measures in one of several sizes.
 *
 * @param seams    the mates of the pattern that are sewn in this size
 * @param mates    those of them that could be walked
 * @param findings what was found in adding up and walking; what concerns a piece is kept with the piece
 */
record SizeMeasures(String size, List<Mate> seams, List<Girth> girths, List<MateWalk> mates, List<Finding> findings) {
    SizeMeasures {
        seams = List.copyOf(seams);
        girths = List.copyOf(girths);
        mates = List.copyOf(mates);
        findings = List.copyOf(findings);
    }
}
