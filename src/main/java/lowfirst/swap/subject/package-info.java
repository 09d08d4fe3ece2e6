/**
 * What is asked for and what is offered in its place: parts, their stated facts, where they are
 * used.
 */
package lowfirst.swap.subject;
