/**
 * Reads the texts that describe a workbook.
 *
 * <p>A template says in YAML which inputs, calculated lines, tables, checks and notes a workbook
 * holds; its formulas are spreadsheet formulas that speak of names instead of cells. {@link
 * frillbook.template.TemplateReader} turns the files into records, finds every mistake in one run
 * and knows the line and column of each. Nothing here knows how a workbook is written.
 */
package frillbook.template;
