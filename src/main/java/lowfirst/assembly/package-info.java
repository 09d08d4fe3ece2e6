/** In what order to fit the parts, and how many before each flip. Imports only the vocabularies. */
package lowfirst.assembly;
