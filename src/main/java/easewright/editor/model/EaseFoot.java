package easewright.editor.model;

import easewright.ease.EaseTable;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.text.NoteNumbers;
import easewright.text.Words;
import java.util.List;
import java.util.Map;

/** Collects the sources that stand below a page, each once, and gives the number that leads to it. */
public final class EaseFoot {
    private final NoteNumbers<Source> sources = new NoteNumbers<>();

    /**
     * One source.
     *
     * @param garment garments that a table is for; empty where it is for all, and for a least ease
     */
    public record Source(String source, String standing, String garment) {}

    String mark(EaseTable table) {
        String garment = Garment.OTHER.fits(table.garment()) ? "" : table.garment();
        return sources.mark(new Source(table.source(), table.standing(), garment));
    }

    String mark(Minimum minimum) {
        return mark(minimum.source(), minimum.standing());
    }

    String mark(String source, String standing) {
        return sources.mark(new Source(source, standing, ""));
    }

    /** In the order of their numbers. */
    public List<Source> sources() {
        return sources.notes();
    }

    /** Every source in words after its number. */
    public List<String> lines(Words words) {
        return sources.lines(each -> words.known(
                each.garment().isEmpty()
                        ? each.source()
                        : words.of(
                                "editor.ease.source.table", Map.of("source", each.source(), "garment", each.garment())),
                each.standing()));
    }
}
