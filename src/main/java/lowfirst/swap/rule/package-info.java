/**
 * What a substitute is judged by: one enum a kind of part, each constant a rule with its source.
 */
package lowfirst.swap.rule;
