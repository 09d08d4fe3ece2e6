/**
 * The local page: one step fills the screen. The HTTP server only here and in the room {@code web}.
 */
package lowfirst.bench;
