/** Whether channels carry their loads: the report, its plot, tables and words. */
package lowfirst.sheet.loads;
