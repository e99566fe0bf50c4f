package easewright.command;

import java.io.PrintWriter;

/**
 * Where a command speaks.
 *
 * @param out results
 * @param err messages
 */
record Voice(PrintWriter out, PrintWriter err) {}
