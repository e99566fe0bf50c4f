package easewright.check;

import easewright.pattern.Finding;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;

/** One message about one thing: of findings of which one says all that another says, only the fuller. */
public final class Once {
    private static final List<String> MATE_NOW = List.of("mate-mismatch", "mate-drift", "mate-fits-centre");
    private static final List<String> MATE_CHANGED = List.of("mate-drifted", "mate-drifted-little", "mate-nearer");

    /** Advice on width and cloth, which is beside the point where the girth is not whole. */
    private static final List<String> TOO_SMALL =
            List.of("garment-smaller-than-body", "stretch-unknown", "stretch-too-little");

    private Once() {}

    /** The findings in their order, each once and none that another one includes. */
    public static List<Finding> of(List<Finding> findings) {
        List<Finding> all = List.copyOf(new LinkedHashSet<>(findings));
        return all.stream()
                .filter(f -> all.stream().noneMatch(g -> saysMore(g, f)))
                .toList();
    }

    private static boolean saysMore(Finding one, Finding other) {
        if (MATE_NOW.contains(other.code())) {
            // What the change did to the seam also tells how it fits now.
            return MATE_CHANGED.contains(one.code())
                    && one.values().get("mate").equals(other.values().get("mate"))
                    && Objects.equals(one.values().get("size"), other.values().get("size"));
        }
        if (other.code().equals("hinge-corner")) {
            // The corner that a hinge leaves is a place to be trued, and told as one.
            return one.code().equals("corner-within-edge")
                    && one.severity().compareTo(other.severity()) >= 0
                    && one.piece().equals(other.piece())
                    && Objects.equals(one.values().get("edge"), other.values().get("edge"));
        }
        if (TOO_SMALL.contains(other.code())
                && (one.code().equals("girth-not-whole") || one.code().startsWith("level-left-out"))) {
            return one.values().get("level").equals(other.values().get("level"));
        }
        if (other.code().equals("girth-not-whole") && one.code().startsWith("level-left-out")) {
            // Which piece is missing is known.
            return one.values().get("level").equals(other.values().get("level"));
        }
        return one.code().equals(other.code())
                && one.piece().equals(other.piece())
                && one.values().size() > other.values().size()
                && one.values().entrySet().containsAll(other.values().entrySet());
    }
}
