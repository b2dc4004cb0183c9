/** Peg files, their earlier versions, and tables in and out. */
package pegbed.storage;
