/** The open peg as a document: its title, file, undo. */
package pegbed.ui.document;
