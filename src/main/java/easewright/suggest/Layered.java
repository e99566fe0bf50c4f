package easewright.suggest;

import easewright.pattern.EdgeRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Seams of pieces that are often cut twice, one to face the other: yokes and cuffs. How much longer the garment may be than
 * what it is gathered or pleated into is common practice, as is the width of the overlap at which a cuff closes.
 */
final class Layered {
    /** What is gathered into a yoke or a cuff is at most so many times as long. */
    private static final double GATHERED = 1.7;

    /** A cuff reaches over itself by at most this, mm. */
    private static final double OVERLAP = 45;

    /** A yoke is longer than what is sewn to it by no more than a drawing is off, mm. */
    private static final double DRAWN = 6;

    private Layered() {}

    /** A yoke on what lies below it. */
    static void yokes(UnsewnEdges unsewn) {
        List<SeamSide> seams = new ArrayList<>(unsewn.of(EdgeRole.SEAM).stream()
                .filter(s -> s.edge().name().startsWith(YokeForms.SEAM))
                .toList());
        List<SeamSide> yokes = seams.stream().filter(SeamSide::onYoke).toList();
        seams.removeAll(yokes);
        for (SeamSide yoke : yokes) {
            nearest(seams, yoke, DRAWN).ifPresent(below -> {
                seams.remove(below);
                unsewn.sew(YokeForms.SEAM, below, yoke, 0.85);
            });
        }
    }

    /** Cuffs on the hems of sleeves. */
    static void cuffs(UnsewnEdges unsewn) {
        List<SeamSide> hems = new ArrayList<>(unsewn.of(EdgeRole.HEM).stream()
                .filter(s -> s.pieceHas(EdgeRole.CAP))
                .toList());
        List<SeamSide> cuffs = unsewn.of(EdgeRole.SEAM).stream()
                .filter(s -> Vocabulary.has(s.piece().name(), "cuff")
                        && s.edge().name().equals("seam"))
                .toList();
        for (SeamSide cuff : cuffs) {
            nearest(hems, cuff, OVERLAP).ifPresent(hem -> {
                hems.remove(hem);
                unsewn.sew("cuff", hem, cuff, 0.75);
            });
        }
    }

    private static Optional<SeamSide> nearest(List<SeamSide> longer, SeamSide one, double shorter) {
        return longer.stream()
                .filter(s -> s.mm() > one.mm() - shorter && s.mm() < GATHERED * one.mm())
                .min(Comparator.comparingDouble(s -> s.apart(one)));
    }
}
