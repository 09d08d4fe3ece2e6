/** The verbs, a class each. */
package lowfirst.cli.verb;
