// A wheel: one value of many, turned by its buttons or chosen from a sheet with all of them.

import { button, byId, fill, make } from "./dom.js";

/** Labels of which one is shown, with a button on either side for the ones beside it. */
export class Wheel {
  #labels = [];
  #at = 0;
  #title = "";
  #place;
  #value;
  #less;
  #more;

  /**
   * @param place the element that it is put into
   * @param ends what its two buttons do, for those who hear the page
   * @param turned told the index that its buttons turn to
   * @param chosen called when the value is tapped
   */
  constructor(place, ends, turned, chosen) {
    this.#place = place;
    const turn = (by) => () => {
      this.hold(this.#title, this.#labels, this.#at + by);
      turned(this.#at);
    };
    this.#less = button("−", turn(-1), { class: "turn" });
    this.#more = button("+", turn(1), { class: "turn" });
    this.#value = button("", chosen, { class: "value" });
    this.ends = ends;
    place.classList.add("wheel");
    place.setAttribute("role", "group");
    fill(place, this.#less, this.#value, this.#more);
  }

  /** Takes a title, labels, and the index of the one that is shown; tells nobody. */
  hold(title, labels, at) {
    this.#title = title;
    this.#labels = labels;
    this.#at = Math.max(0, Math.min(labels.length - 1, at));
    this.#place.setAttribute("aria-label", title);
    this.#less.setAttribute("aria-label", `${title}, ${this.ends[0]}`);
    this.#more.setAttribute("aria-label", `${title}, ${this.ends[1]}`);
    this.#less.disabled = this.#at === 0;
    this.#more.disabled = this.#at >= labels.length - 1;
    fill(
      this.#value,
      make("span", { class: "small", text: title }),
      " ",
      make("strong", { text: labels[this.#at] ?? "" }),
    );
  }
}

/**
 * A sheet of values, one tap each.
 *
 * @param choices [{label, chosen, here}]; here marks the one that is shown now
 */
export function choose(title, choices) {
  const sheet = byId("choices");
  const keys = choices.map(({ label, chosen, here }) =>
    button(
      label,
      () => {
        sheet.close();
        chosen();
      },
      { class: "key", "aria-pressed": here ? "true" : "false" },
    ),
  );
  fill(
    sheet,
    make("h2", { text: title, id: "choices-title" }),
    make("div", { class: "keys wide" }, ...keys),
    button("Cancel", () => sheet.close(), { class: "quiet" }),
  );
  sheet.showModal();
  const here = keys.find((key) => key.getAttribute("aria-pressed") === "true") ?? keys[0];
  here?.focus();
  here?.scrollIntoView({ block: "center" });
}
