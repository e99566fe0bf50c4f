/** Pages as PDF, true to a few thousandths of a millimetre, with embedded fonts. */
package easewright.print.pdf;
