/**
 * Finds mistakes that show only once all files are read: unknown names, circles, parts that nothing
 * checks.
 *
 * <p>Every mistake goes to {@link frillbook.source.Mistakes}; nothing here stops at the first.
 */
package frillbook.proofreading;
