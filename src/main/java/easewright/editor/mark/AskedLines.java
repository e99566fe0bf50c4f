package easewright.editor.mark;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.suggest.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * The closed lines on the sheet that are no outline of a piece, of which it can be asked what they are. Every move of the
 * mouse and every picture asks for them: they are found once for each sheet.
 */
public final class AskedLines {
    private Sheet on;
    private List<OtherLines.Other> lines = List.of();

    /** All of them. */
    public List<OtherLines.Other> all(Sheet sheet) {
        if (sheet != on) {
            lines = OtherLines.on(sheet);
            on = sheet;
        }
        return lines;
    }

    /** The one with this id. */
    Optional<OtherLines.Other> of(Sheet sheet, String id) {
        return all(sheet).stream().filter(line -> line.id().equals(id)).findFirst();
    }

    /** The one under the pointer. */
    Optional<OtherLines.Other> at(Sheet sheet, Point at, double reach) {
        return OtherLines.at(all(sheet), sheet.pattern(), at, reach);
    }

    /** As it is drawn; nothing where no such line is on the sheet. */
    List<Segment> drawn(Sheet sheet, String id) {
        return of(sheet, id).map(line -> line.line().segments()).orElse(List.of());
    }
}
