package easewright.measure;

import easewright.geom.Point;

/** A stretch of cloth that was measured, for drawing. */
public record Span(Point from, Point to) {}
