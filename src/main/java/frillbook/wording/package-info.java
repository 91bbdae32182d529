/**
 * Sentences that follow the plan: words, values in them, and one of several wordings by a code. A
 * sentence is said once, in a template; the workbook makes a formula of it, and here it is said in
 * words from the plan's values.
 */
package frillbook.wording;
