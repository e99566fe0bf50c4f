/** What goes on paper and is kept: the report of a change as one self-contained page. */
package easewright.print;
