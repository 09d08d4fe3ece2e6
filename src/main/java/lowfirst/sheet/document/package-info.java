/** What a sheet says, apart from how it is written: the only vocabulary that the writers know. */
package lowfirst.sheet.document;
