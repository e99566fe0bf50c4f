/**
 * The record of a change, to be kept: its content is put together once ({@link easewright.print.report.ReportContent})
 * and set as a page for a browser ({@link easewright.print.report.HtmlReport}) or as sheets
 * ({@link easewright.print.report.PdfReport}).
 */
package easewright.print.report;
