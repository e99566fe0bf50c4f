/** Putting the pattern on paper: what is chosen, and the pages made of it away from the window's thread. */
package easewright.editor.paper;
