/**
 * The command line as a whole, the demo that runs all of it, and the entry points of the process.
 * picocli only in here and its rooms.
 */
package lowfirst.cli;
