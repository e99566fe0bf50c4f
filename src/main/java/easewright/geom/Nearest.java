package easewright.geom;

/** The place on an outline or curve nearest to a wanted point, and how far off it lies (mm). */
public record Nearest(Place place, Point point, double distance) {}
