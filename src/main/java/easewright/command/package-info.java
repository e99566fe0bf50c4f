/** The commands: for scripts, for tests and for machines without a display. No JavaFX class is loaded here. */
package easewright.command;
