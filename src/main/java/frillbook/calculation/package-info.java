/** Calculates a workbook with POI, and again what hangs on an input that changed. */
package frillbook.calculation;
