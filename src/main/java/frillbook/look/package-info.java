/** What cells look like, and how wide a text is. */
package frillbook.look;
