/** Drawings of part bodies, as they look on the bench: colours of bands, prints, leads. */
package lowfirst.sheet.body;
