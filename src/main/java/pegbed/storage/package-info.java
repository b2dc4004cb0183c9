/**
 * Peg files, their earlier versions, and tables in and out.
 *
 * <p>{@link pegbed.storage.PegFile} is the way in: it reads a {@code *.peg.json} file, whole or damaged, and saves one so
 * that no failure can spoil what was there. {@link pegbed.storage.PegWriter} and {@link pegbed.storage.PegReader} turn a
 * peg into bytes and back without touching a disk. {@link pegbed.storage.ReadingsTable},
 * {@link pegbed.storage.BanksTable} and {@link pegbed.storage.PointsTable} read tables as spreadsheets write them.
 *
 * <p>Everything that comes from outside is taken to be wrong until read: whatever the bytes, the answer is a peg, a
 * recovered peg with a list of what was lost, or one {@link pegbed.model.InputException}.
 */
package pegbed.storage;
