/** Compiles templates into presses, at build time or for templates of one's own. */
package frillbook.pressing;
