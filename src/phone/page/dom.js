// Small helpers for the page's elements. Texts go in as text, never as markup.

/** The element with this id, which the page has from its beginning. */
export function byId(id) {
  return document.getElementById(id);
}

/**
 * A new element.
 *
 * @param tag its name
 * @param attributes attributes by name; "text" is its text, a function is a listener of the event after "on"
 * @param children elements inside it; null and undefined are left out
 */
export function make(tag, attributes = {}, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (name === "text") node.textContent = value;
    else if (typeof value === "function") node.addEventListener(name.slice(2), value);
    else node.setAttribute(name, value === true ? "" : String(value));
  }
  node.append(...children.filter((child) => child !== null && child !== undefined));
  return node;
}

/** A button with words on it. */
export function button(words, pressed, attributes = {}) {
  return make("button", { type: "button", text: words, onclick: pressed, ...attributes });
}

/** Puts other children into an element. */
export function fill(node, ...children) {
  node.replaceChildren(...children.filter((child) => child !== null && child !== undefined));
}

/** Shows text, and hides the element where there is none. */
export function say(node, words) {
  const text = words ?? "";
  if (node.textContent !== text) node.textContent = text;
  node.hidden = text === "";
}

/** Ends the task, so that the page can answer fingers and show what is there before it goes on. */
export function pause() {
  return globalThis.scheduler?.yield ? scheduler.yield() : new Promise((goOn) => setTimeout(goOn));
}
