/**
 * What the editor knows and does, without a single control: the state of the desk, the trial of a change, and the
 * words and numbers each part of the window shows. May use JavaFX properties, never nodes.
 */
package easewright.editor.model;
