package easewright.draft;

import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import java.util.List;

/**
 * Three invented people. Their girths lie near published ones (ASTM D5585-11e1, misses 10, 8 and 4, docs/sources.md 2.2,
 * for bust and waist; lengths near the ANSUR II women, docs/sources.md 2.3), the rest is chosen to go with them.
 */
public final class SampleBodies {
    public static final Body MAREN = new Body(
            "Maren Holt",
            List.of(
                    girth("Bust girth", "bust", 940),
                    girth("Waist girth", "waist", 745),
                    girth("Hip girth", "hip", 1000),
                    girth("Upper-arm girth", "upper arm", 290),
                    girth("Wrist girth", "wrist", 160),
                    girth("Neck base girth", "neck base", 380),
                    length("Shoulder length", 125),
                    length("Across back width", 352),
                    length("Across front width", 330),
                    length("Scye depth length", 208),
                    length("Back neck point to waist", 412),
                    length("Bust point width", 190),
                    length("Side neck point to bust point", 275),
                    length("Side waist to hip", 205),
                    length("Outer arm length", 590)));

    public static final Body INES = new Body(
            "Ines Falk",
            List.of(
                    girth("Waist girth", "waist", 740),
                    girth("Hip girth", "hip", 980),
                    girth("Thigh girth", "thigh", 585),
                    girth("Knee girth", "knee", 375),
                    length("Straight body rise", 280),
                    length("Side waist to hip", 205),
                    length("Outside leg length", 1045)));

    public static final Body TOVE = new Body(
            "Tove Lind",
            List.of(
                    girth("Bust girth", "bust", 870),
                    girth("Waist girth", "waist", 690),
                    girth("Hip girth", "hip", 940),
                    girth("Upper-arm girth", "upper arm", 270),
                    girth("Neck base girth", "neck base", 360),
                    length("Shoulder length", 121),
                    length("Across back width", 336),
                    length("Scye depth length", 202),
                    length("Back neck point to waist", 405),
                    length("Side waist to hip", 200)));

    private SampleBodies() {}

    private static BodyMeasure girth(String name, String level, double mm) {
        return new BodyMeasure(name, level, mm, "");
    }

    private static BodyMeasure length(String name, double mm) {
        return new BodyMeasure(name, "", mm, "");
    }
}
