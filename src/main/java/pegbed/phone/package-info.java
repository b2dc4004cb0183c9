/** The core as a page in a phone's browser uses it: text in, text out; no disk, no toolkit, no threads. */
package pegbed.phone;
