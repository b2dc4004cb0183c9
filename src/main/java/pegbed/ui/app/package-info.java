/** The window as a whole: start, frame, sheets, theme, and the view models of one window. */
package pegbed.ui.app;
