/**
 * Turns the files of a template folder into records.
 *
 * <p>{@link frillbook.reading.TemplateReader} is the way in.
 */
package frillbook.reading;
