package easewright.check;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;

/**
 * How much longer one side of a seam may be than the other and still be eased in. Ease needs a place where the cloth has
 * to bulge: a shoulder blade, a bust, an elbow, the ball of a shoulder.
 */
public enum EasedIn {
    /** It can be. */
    POSSIBLE,
    /** It is more than is eased in. */
    TOO_MUCH,
    /** So much more that it is gathered or pleated, if it is meant at all. */
    GATHERED,
    /** A sleeve cap is never shorter than its armhole. */
    CAP_SHORT;

    /** The most that seams are eased by, mm: shoulder, waist in its band, elbow 1/4 to 1/2 in (docs/sources.md 3). */
    public static final double SEAM = 12.7;

    /** The same of a cap in its armhole, mm: 1 3/4 in (docs/sources.md 3, "understanding the sleeve"). */
    public static final double CAP = 44.45;

    /** More than this part of the shorter side is gathered, not eased (common practice). */
    private static final double FULLNESS = 0.25;

    /**
     * Judges a seam.
     *
     * @param first  sewn length of its first side, mm
     * @param second of its second side, mm
     */
    public static EasedIn of(Pattern pattern, Mate mate, double first, double second) {
        boolean capFirst = isCap(pattern, mate, true);
        boolean capSecond = isCap(pattern, mate, false);
        double more = capSecond ? second - first : first - second;
        if ((capFirst || capSecond) && more < 0) {
            return CAP_SHORT;
        }
        if (Math.abs(more) > FULLNESS * Math.min(first, second)) {
            return GATHERED;
        }
        return Math.abs(more) <= most(pattern, mate) ? POSSIBLE : TOO_MUCH;
    }

    /** The most that a seam is eased by, mm. */
    public static double most(Pattern pattern, Mate mate) {
        return isCap(pattern, mate, true) || isCap(pattern, mate, false) ? CAP : SEAM;
    }

    private static boolean isCap(Pattern pattern, Mate mate, boolean ofFirst) {
        return (ofFirst ? mate.first() : mate.second())
                .stream().anyMatch(e -> pattern.edge(e).map(Edge::role).equals(java.util.Optional.of(EdgeRole.CAP)));
    }
}
