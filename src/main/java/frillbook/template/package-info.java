/**
 * What a template says, as records: sheets, inputs, lines, tables, checks, sentences, charts.
 *
 * <p>Nothing here knows how it was written or how a workbook is made of it.
 */
package frillbook.template;
