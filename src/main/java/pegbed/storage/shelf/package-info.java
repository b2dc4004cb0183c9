/** Many peg files in a folder: listed, found, moved; the neighbouring pegs of the same water. */
package pegbed.storage.shelf;
