/**
 * Whether every MOSFET, gate resistor, diode, fuse, wire and supply carries its load. A wrong pass
 * can burn a house: missing data is undecided, worst case counts, typical values never pass.
 */
package lowfirst.channel;
