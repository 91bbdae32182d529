/** Records from and to the names of the workbook. */
package frillbook.naming;
