package easewright.topology;

import easewright.geom.Place;
import easewright.geom.Point;

/** A point through which an outline passes twice: at the first place, and again at the second. */
public record Meeting(Place first, Place second, Point point) {}
