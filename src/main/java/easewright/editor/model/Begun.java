package easewright.editor.model;

import easewright.geom.Line;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is begun in the window and not done yet, beside what is tried on the desk: text that was not taken, marks of
 * which some places are shown, a cut with one end. Immutable.
 *
 * @param page    the key of the page beside the table that is open
 * @param typed   what stands in fields and was not taken
 * @param marking where marking is, if its page is open or anything of it is half done
 * @param cut     a cut of which one end is shown
 */
public record Begun(String page, List<Typed> typed, Optional<Marking> marking, Optional<Cut> cut) {
    public static final Begun NOTHING = new Begun("", List.of(), Optional.empty(), Optional.empty());

    /** The page of what is typed in the window for prints. */
    public static final String PRINT = "print";

    /**
     * Text that stands in a field and was not taken.
     *
     * @param page  the key of the page on which the field is; empty where it is on none
     * @param id    by which the window knows the field; empty where it has none
     * @param field what the field is called
     * @param keys  whether the keys are in it
     */
    public record Typed(String page, String id, String field, String text, boolean keys) {}

    /**
     * Where marking is.
     *
     * @param open    whether its page is open
     * @param step    which part of it
     * @param tool    what a click on the table does
     * @param piece   id of the piece whose marks are listed
     * @param level   name of the level that is being put on pieces
     * @param places  those clicked so far with the tool
     * @param line    the line that is being measured
     * @param leftOut keys of suggestions that are not to be taken
     */
    public record Marking(
            boolean open,
            String step,
            String tool,
            Optional<String> piece,
            Optional<String> level,
            List<Place> places,
            Optional<Line> line,
            Set<String> leftOut) {
        public Marking {
            places = List.copyOf(places);
            leftOut = Set.copyOf(leftOut);
        }

        /** Whether something would have to be done again if it were forgotten. */
        public boolean isHalfDone() {
            return !places.isEmpty() || line.isPresent() || !leftOut.isEmpty();
        }
    }

    /**
     * A place that was clicked.
     *
     * @param kind what is there
     * @param at   where it is, mm
     */
    public record Place(String kind, Point at, Optional<String> piece, Optional<Line> line) {}

    /**
     * A cut of which one end is shown.
     *
     * @param field the key of the setting that asks for it
     * @param from  where it begins, mm
     */
    public record Cut(String field, Point from) {}

    public Begun {
        typed = List.copyOf(typed);
    }

    /** What is typed in the window for prints. */
    public List<Typed> forPrint() {
        return typed.stream().filter(t -> t.page().equals(PRINT)).toList();
    }

    public boolean isNothing() {
        return typed.isEmpty()
                && cut.isEmpty()
                && marking.filter(Marking::isHalfDone).isEmpty();
    }
}
