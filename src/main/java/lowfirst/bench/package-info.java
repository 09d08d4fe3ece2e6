/** The local page: one step fills the screen. The HTTP server only here. */
package lowfirst.bench;
