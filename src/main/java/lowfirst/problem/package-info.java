/**
 * What can be wrong with a kit, and where it is written.
 *
 * <p>The lowest floor of the house: imports nothing of ours. Something wrong with the kit is data
 * (a {@link lowfirst.problem.Problem}); something wrong with the machine is an exception.
 */
package lowfirst.problem;
