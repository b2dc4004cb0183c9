/**
 * Peg files, their earlier versions, and tables in and out.
 *
 * <p>{@link pegbed.storage.disk.PegFile} is the way in: it reads a {@code *.peg.json} file, whole or damaged, and saves
 * one so that no failure can spoil what was there.
 *
 * <p>Everything that comes from outside is taken to be wrong until read: whatever the bytes, the answer is a peg, a
 * recovered peg with a list of what was lost, or one {@link pegbed.model.InputException}.
 */
package pegbed.storage;
