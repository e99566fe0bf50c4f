/**
 * Full-scale pages of pattern pieces. A {@link easewright.print.sheet.PrintOrder} says what is wanted;
 * {@link easewright.print.sheet.PrintJob} makes the pages: it chooses pieces, lays them out with the grain upright
 * ({@link easewright.print.sheet.Nest}), draws their marks and labels, and cuts the whole into sheets.
 */
package easewright.print.sheet;
