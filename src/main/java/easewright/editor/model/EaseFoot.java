package easewright.editor.model;

import easewright.ease.EaseTable;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Collects the sources that stand below a page, each once, and gives the number that leads to it. */
public final class EaseFoot {
    private final List<Source> sources = new ArrayList<>();

    /**
     * One source.
     *
     * @param garment garments that a table is for; empty where it is for all, and for a least ease
     */
    public record Source(String source, String standing, String garment) {}

    String mark(EaseTable table) {
        String garment = Garment.OTHER.fits(table.garment()) ? "" : table.garment();
        return mark(new Source(table.source(), table.standing(), garment));
    }

    String mark(Minimum minimum) {
        return mark(new Source(minimum.source(), minimum.standing(), ""));
    }

    String mark(String source, String standing) {
        return mark(new Source(source, standing, ""));
    }

    /** The number of a source, in brackets: a raised one would make square centimetres of an ease. */
    private String mark(Source source) {
        if (!sources.contains(source)) {
            sources.add(source);
        }
        return bracketed(sources.indexOf(source) + 1);
    }

    private static String bracketed(int number) {
        return "[" + number + "]";
    }

    /** In the order of their numbers. */
    public List<Source> sources() {
        return List.copyOf(sources);
    }

    /** Every source in words after its number. */
    public List<String> lines(Words words) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            Source each = sources.get(i);
            String key = each.garment().isEmpty() ? "editor.ease.source" : "editor.ease.source.table";
            lines.add(bracketed(i + 1)
                    + " "
                    + words.of(
                            key,
                            Map.of(
                                    "source", each.source(),
                                    "standing", each.standing(),
                                    "garment", each.garment())));
        }
        return List.copyOf(lines);
    }
}
