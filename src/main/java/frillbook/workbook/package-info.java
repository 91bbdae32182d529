/**
 * Compiles templates into sheets: places every row, names the cells and writes the formulas.
 *
 * <p>{@link frillbook.workbook.WorkbookCompiler} is the way in.
 */
package frillbook.workbook;
