/** Events at the bench, and the state they add up to. Nothing is erased: undo is an event. */
package lowfirst.progress;
