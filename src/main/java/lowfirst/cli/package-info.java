/** The commands: reads files, wires the core to the writers, exits. picocli only here. */
package lowfirst.cli;
