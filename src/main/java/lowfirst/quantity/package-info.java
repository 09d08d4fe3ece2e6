/**
 * Exact amounts with units, and where each number came from.
 *
 * <p>Amounts are decimal and exact; formulas elsewhere use {@code double} in SI units (lengths in
 * millimetres, temperatures in degrees Celsius). Imports only {@code problem}.
 */
package lowfirst.quantity;
