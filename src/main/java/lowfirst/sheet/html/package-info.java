/** Documents as HTML, drawings as SVG. */
package lowfirst.sheet.html;
