/** What several verbs take: the kit, its store, sizes of batches, width of text. */
package lowfirst.cli.option;
