/**
 * The vocabulary of findings: quantities with their symbols, where each came from, what is checked,
 * and how it stands.
 */
package lowfirst.channel.check;
