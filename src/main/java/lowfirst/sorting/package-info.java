/**
 * How to sort the bag: what each part type looks like, what it could be mistaken for, which meter
 * reading to accept. Imports only the vocabularies.
 */
package lowfirst.sorting;
