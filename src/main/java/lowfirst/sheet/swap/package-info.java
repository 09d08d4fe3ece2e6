/** Whether a substitute fits, and what of a drawer does. */
package lowfirst.sheet.swap;
