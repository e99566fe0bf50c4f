/** Undo and redo over immutable values: a stack of whole documents, cheap because they share what did not change. */
package easewright.history;
