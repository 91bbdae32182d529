/** The formulas of templates: spreadsheet formulas that speak of names instead of cells. */
package frillbook.formula;
