/** The commands. */
package pegbed.cli;
