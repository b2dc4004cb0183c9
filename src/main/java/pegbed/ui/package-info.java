/**
 * The window. Views show and pass on; view models, which know no control, say what is shown and what an action does;
 * {@link pegbed.session.Session} owns all that changes.
 */
package pegbed.ui;
