/** What words, values and numbers say that a part is. */
package lowfirst.intake.kind;
