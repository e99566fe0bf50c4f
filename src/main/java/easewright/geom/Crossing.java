package easewright.geom;

/** Where an outline meets a line: the place on the outline, the point, and its position along the line in mm. */
public record Crossing(Place place, Point point, double along) {}
