/** Files: written whole or not at all, journals of unsaved edits, locks, the program's own folders. */
package pegbed.storage.disk;
