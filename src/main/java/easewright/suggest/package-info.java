/**
 * What a drawing without marks most likely means: how large it is, what its pieces are called and how often they are
 * cut, which of two outlines is sewn, where edges begin and end and what they are for, darts, notches, grain, levels,
 * and which edges are sewn together. Pure functions of what lies on the sheet; nothing is ever applied here. Every
 * suggestion carries its reason and how sure it is, and somebody who sews decides.
 *
 * <p>Words on the sheet are read in English. Limits in millimetres are common practice of drawing patterns by hand or in
 * vector editors, unless said otherwise.
 */
package easewright.suggest;
