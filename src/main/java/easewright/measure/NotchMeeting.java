package easewright.measure;

/**
 * Two notches of the same name on mated seams: their distances along the sewn seams from the end at which walking
 * starts, mm.
 */
public record NotchMeeting(String notch, double first, double second) {}
