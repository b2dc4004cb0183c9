/** Banks and water as shapes: bank coordinates, the outline of the fishable water, marks as aims. */
package pegbed.geometry;
