/**
 * What a pattern measures: sewn edge lengths, widths at levels, girths, mated seams walked. Everything is read on the
 * stitching line, along the curve, with darts folded out; allowance and overlap never count (rules and sources:
 * docs/sources.md, "Measuring flat pieces"). Millimetres.
 */
package easewright.measure;
