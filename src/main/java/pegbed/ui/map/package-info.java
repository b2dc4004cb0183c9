/** The map: camera, painting off the toolkit's thread, pointer and keys. */
package pegbed.ui.map;
