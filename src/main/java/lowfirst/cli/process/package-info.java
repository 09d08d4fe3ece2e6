/** What is around a command: streams, console, clock, exit status. */
package lowfirst.cli.process;
