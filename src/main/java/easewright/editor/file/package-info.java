/**
 * Opening and saving from the window: reading and writing away from its thread, work kept safe from a crash, and
 * what is asked of the user on the way, behind a seam that tests can answer.
 */
package easewright.editor.file;
