package easewright.svg;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The drawing as elements.
 *
 * @param byId         the first element with each id
 * @param repeatedIds  ids that more than one element carries
 * @param styleSheets  contents of the style elements, in order
 * @param generator    what the comments before the root say of the program that wrote the file
 * @param fromEntities whether some element came out of an entity
 * @param styledFromOutside whether the file names a style sheet that it does not hold
 */
record Tree(
        Element root,
        Map<String, Element> byId,
        Set<String> repeatedIds,
        List<Element> styleSheets,
        String generator,
        boolean fromEntities,
        boolean styledFromOutside) {}
