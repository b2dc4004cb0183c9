// A wheel: one value of many, turned by its buttons or chosen from all of them.

import { button, byId, fill, make } from "./dom.js";

/** A list of labels of which one is shown, with a button on either side for the ones beside it. */
export class Wheel {
  #labels = [];
  #at = 0;
  #title;
  #value;
  #less;
  #more;

  /**
   * @param place the element that it is put into
   * @param title what it is for, in a word
   * @param ends what its two buttons do, for those who hear the page
   * @param turned told the index of the value that is shown
   */
  constructor(place, title, ends, turned) {
    this.#title = title;
    const turn = (to) => {
      this.show(to);
      turned(this.#at);
    };
    this.#less = button("−", () => turn(this.#at - 1), { class: "turn", "aria-label": `${title}, ${ends[0]}` });
    this.#more = button("+", () => turn(this.#at + 1), { class: "turn", "aria-label": `${title}, ${ends[1]}` });
    this.#value = button("", () => choose(title, this.#labels, this.#at, turn), { class: "value" });
    place.classList.add("wheel");
    place.setAttribute("role", "group");
    place.setAttribute("aria-label", title);
    fill(place, this.#less, this.#value, this.#more);
  }

  /** Takes other labels. */
  hold(labels, at) {
    this.#labels = labels;
    this.show(at);
  }

  /** Shows a value without telling anybody. */
  show(at) {
    this.#at = Math.max(0, Math.min(this.#labels.length - 1, at));
    const label = this.#labels[this.#at] ?? "";
    fill(this.#value, make("span", { class: "small", text: this.#title }), " ", make("strong", { text: label }));
    this.#less.disabled = this.#at <= 0;
    this.#more.disabled = this.#at >= this.#labels.length - 1;
  }
}

/** All values on a sheet, one tap each. */
export function choose(title, labels, at, chosen) {
  const sheet = byId("choices");
  const close = () => sheet.close();
  const all = labels.map((label, index) =>
    button(
      label,
      () => {
        close();
        chosen(index);
      },
      { class: "key", "aria-pressed": index === at ? "true" : "false" },
    ),
  );
  fill(
    sheet,
    make("h2", { text: title, id: "choices-title" }),
    make("div", { class: "keys wide" }, ...all),
    button("Cancel", close, { class: "quiet" }),
  );
  sheet.showModal();
  all[at]?.focus();
  all[at]?.scrollIntoView({ block: "center" });
}
