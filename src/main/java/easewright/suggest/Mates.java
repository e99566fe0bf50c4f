package easewright.suggest;

import java.util.List;
import java.util.function.Consumer;

/**
 * Finds edges that are sewn together: by what they are for, and by near-equal sewn length. A seam that is found takes its
 * edges away from the rules that come after. That matters in six places, of which {@code MatesTest} has an example
 * each; else the order is only that in which seams are listed:
 *
 * <ul>
 *   <li>a waistband before waist seams, since a band that is set into a dress lies between the two waists;
 *   <li>seams of the same name before those left over, since what an edge is called says more than how long it is;
 *   <li>and before sides that are far apart, since those of like length belong together first;
 *   <li>facings before waistbands and those left over, since they are told by what is written on them, and bands in parts
 *       before facings, which face the edge of the band that is still free;
 *   <li>neck bands before those left over, since both long edges of a band may be as long as some seam;
 *   <li>yokes and cuffs before those left over, for the same reason.
 * </ul>
 */
final class Mates {
    static final List<Consumer<UnsewnEdges>> RULES = List.of(
            EdgeToEdge::shoulders,
            OneToSeveral::sleeves,
            EdgeToEdge::sameNames,
            EdgeToEdge::underarms,
            Layered::yokes,
            Layered::cuffs,
            Facings::bandsInParts,
            Facings::facings,
            OneToSeveral::waistbands,
            OneToSeveral::neckBands,
            OneToSeveral::waistSeams,
            EdgeToEdge::sidesApart,
            EdgeToEdge::leftOver);

    private Mates() {}

    static List<Suggestion> find(Sheet sheet) {
        return find(sheet, RULES);
    }

    /** The same in another order of the rules. */
    static List<Suggestion> find(Sheet sheet, List<Consumer<UnsewnEdges>> rules) {
        UnsewnEdges unsewn = new UnsewnEdges(sheet.pattern());
        rules.forEach(rule -> rule.accept(unsewn));
        return unsewn.seams();
    }
}
