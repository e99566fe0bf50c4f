/**
 * Marking a pattern by hand, without a single control: what the hand on the table is for, what it snaps to, and what
 * each mark does to the pattern. May use JavaFX properties, never nodes.
 */
package easewright.editor.mark;
