/** Visits, today's level, changes, neighbouring pegs. */
package pegbed.ui.visits;
