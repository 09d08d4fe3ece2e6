/**
 * Progress in a database, durable: an acknowledged tick survives a kill at any moment. JDBC only
 * here.
 */
package lowfirst.store;
