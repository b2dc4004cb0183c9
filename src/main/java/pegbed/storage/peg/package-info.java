/** The text of a peg file, read whole or damaged, and written; touches no disk. */
package pegbed.storage.peg;
