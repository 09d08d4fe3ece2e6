/**
 * What the bench pages show, as values; the templates beside them turn these into HTML and escape
 * every text.
 */
package lowfirst.bench.page;
