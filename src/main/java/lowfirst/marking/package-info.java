/**
 * What is printed on parts and what people write for values: IEC 60062 colour, letter and digit
 * codes, IEC 60063 preferred values. Imports only {@code quantity} and {@code problem}.
 */
package lowfirst.marking;
