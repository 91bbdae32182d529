/**
 * The workbook as it is written: finished once for a length unit, with a slot for whatever differs
 * from plan to plan, and filled many times. Nothing here needs the library that compiles a workbook
 * or the one that reads templates.
 */
package frillbook.press;
