/** Where a text of a template stands, and the mistakes found in it. */
package frillbook.source;
