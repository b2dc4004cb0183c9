/** The page for a phone's browser as files: put together, with a peg inside, or all in one file. */
package pegbed.page;
