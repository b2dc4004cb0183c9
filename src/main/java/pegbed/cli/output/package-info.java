/** What commands print: text for people, JSON for machines. */
package pegbed.cli.output;
