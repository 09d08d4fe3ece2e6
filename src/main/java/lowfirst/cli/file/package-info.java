/** Folders and files of the user: a kit as it is read, reports as they are written. */
package lowfirst.cli.file;
