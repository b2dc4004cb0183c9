/** Banks, marks, hazards, pole and names in forms; a new peg. */
package pegbed.ui.place;
