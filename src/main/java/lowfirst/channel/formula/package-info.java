/** The laws of switching and carrying, each with its source: pure functions of numbers. */
package lowfirst.channel.formula;
