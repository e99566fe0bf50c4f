/**
 * How much ease a garment has, what published tables call it, and whether the cloth can give what the garment asks of
 * it. Ease is the finished girth minus the body's girth at the same level. Tables are data with a source line and a
 * standing; they disagree, and all are shown. Lengths are mm, percentages are plain numbers (25 for 25 %).
 */
package easewright.ease;
