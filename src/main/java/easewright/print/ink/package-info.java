/**
 * Pictures made of strokes, fills and writing, in millimetres, y down, for no medium in particular: the PDF pages, the
 * drawings in a report and the preview on screen are painted from the same pictures.
 */
package easewright.print.ink;
