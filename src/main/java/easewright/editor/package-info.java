/** The window in which a sewist gives a pattern ease: see {@link easewright.editor.EditorApp}. */
package easewright.editor;
