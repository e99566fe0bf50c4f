package easewright.alter;

import easewright.geom.Curve;

/** A run of a piece's outline that moved: where it was and where it is. Empty runs are never listed. */
public record Moved(String pieceId, Curve before, Curve after) {}
