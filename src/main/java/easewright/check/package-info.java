/**
 * Looks over a pattern, or over a pattern before and after a change, and says what a careful maker would want to
 * know: one small class per rule, each giving {@link easewright.pattern.Finding}s. Tolerances name their source
 * beside them. Lengths are millimetres.
 */
package easewright.check;
