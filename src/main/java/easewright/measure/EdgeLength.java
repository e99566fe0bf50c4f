package easewright.measure;

import easewright.pattern.EdgeRole;

/**
 * The length of one edge as it is sewn.
 *
 * @param mm     length along the stitching line without the dart mouths on it
 * @param dartMm what the dart mouths on it take up
 */
public record EdgeLength(String pieceId, String edge, EdgeRole role, double mm, double dartMm) {}
