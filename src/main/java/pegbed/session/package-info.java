/** The open document, its edits and its recomputation. Knows no toolkit. */
package pegbed.session;
