/** What stands on each page, made of the progress and the plan. */
package lowfirst.bench.screen;
