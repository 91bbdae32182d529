/** Reads a plan that a person has changed, and writes the client's page from it. */
package frillbook.client;
