/**
 * Draws the cutting table on a canvas the size of the window's part. Painters take plain descriptions of what is to be
 * seen ({@link easewright.editor.paint.TableScene}) and know nothing of sessions, controls or files.
 */
package easewright.editor.paint;
