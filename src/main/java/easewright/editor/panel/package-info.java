/** The parts of the window. Each shows the present desk and calls the session; none keeps a state that matters. */
package easewright.editor.panel;
