package easewright.suggest;

import easewright.pattern.Caption;
import easewright.pattern.Pattern;
import easewright.pattern.Rider;
import java.util.List;

/**
 * All that lies on a sheet of pattern pieces, at one scale.
 *
 * @param loose    drawn lines that belong to no piece
 * @param captions words written on it
 */
public record Sheet(Pattern pattern, List<Rider> loose, List<Caption> captions) {
    public Sheet {
        loose = List.copyOf(loose);
        captions = List.copyOf(captions);
    }

    Sheet with(Pattern other) {
        return new Sheet(other, loose, captions);
    }
}
