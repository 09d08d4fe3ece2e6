/** The manual pages, and the examples in them. */
package lowfirst.cli.manual;
