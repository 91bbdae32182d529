/**
 * Writes templates into spreadsheet workbooks and reads values back by name.
 *
 * <p>The only package that knows Apache POI. {@link frillbook.workbook.WorkbookCompiler} lays a
 * template out, names its cells and writes its formulas; {@link frillbook.workbook.WorkbookPackage}
 * turns the workbook into a file; {@link frillbook.workbook.WorkbookValues} calculates it.
 */
package frillbook.workbook;
