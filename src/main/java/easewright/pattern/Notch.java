package easewright.pattern;

import easewright.geom.Point;
import java.util.Set;

/** A balance mark on the outline. Notches of the same name on mated edges meet. */
public record Notch(String name, Point at) {
    /**
     * @throws IllegalArgumentException if the name is blank
     */
    public Notch {
        Names.require(name, "notch");
    }

    /** A name for a notch that is not known to meet another one. */
    public static String unused(Set<String> taken) {
        int number = 1;
        while (taken.contains("notch " + number)) {
            number++;
        }
        return "notch " + number;
    }
}
