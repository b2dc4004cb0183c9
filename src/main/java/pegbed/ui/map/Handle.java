package pegbed.ui.map;

import pegbed.model.Place;

/**
 * Something on the map that can be taken hold of.
 *
 * @param tool with which
 * @param index its place in the peg's list of its kind
 * @param place where it is
 * @param words what it is, for screen readers
 */
record Handle(Tool tool, int index, Place place, String words) {}
