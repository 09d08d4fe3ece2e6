/** From the last joint to the first load: the wiring list and the checks at first power. */
package lowfirst.sheet.power;
