/** Drawings as values made of a few shapes. SVG and PDF are two dull writers of them. */
package lowfirst.sheet.drawing;
