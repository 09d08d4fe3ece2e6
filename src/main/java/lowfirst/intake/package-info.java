/**
 * Reading kits: tables of any export into the vocabularies, with every fault placed. Takes bytes,
 * not files: the shell opens them.
 */
package lowfirst.intake;
