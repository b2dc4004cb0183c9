// Lines, rigs, flat spots and cautions as cards, and the target depth.

import { button, byId, fill, make } from "./dom.js";

const INCH_METRES = 0.0254;

/** The part of the page for lines. */
export class LinesView {
  #target;

  /** One step of the target's buttons, metres. */
  #step = 0.02;

  #flats = false;
  #seen;
  #plan = null;
  #made = false;

  /**
   * @param target sets a target in metres, or null for half the deepest
   * @param seen told when the map should have something else
   */
  constructor(target, seen) {
    this.#target = target;
    this.#seen = seen;
  }

  /** Whether the map has the flat spots, and not the lines. */
  get flats() {
    return this.#flats;
  }

  /** Targets go by an inch where depths are told in feet, else by 2 cm. */
  showState({ depthUnit }) {
    this.#step = depthUnit === "feet" ? INCH_METRES : 0.02;
  }

  clear() {
    this.#flats = false;
    this.#plan = null;
    fill(byId("plan"), make("p", { class: "quiet", text: "Working it out …" }));
    fill(byId("target"));
  }

  /** The answers to the request "plan"; made into cards when they are in sight. */
  show(plan) {
    this.#plan = plan;
    this.#made = false;
    this.refresh();
  }

  /** The part may have come into sight. */
  refresh() {
    if (this.#made || !this.#plan || byId("lines").hidden) return;
    this.#made = true;
    this.#fill(this.#plan);
  }

  #fill(plan) {
    if (plan.refused) {
      fill(byId("target"));
      fill(byId("plan"), make("p", { class: "card", text: plan.refused }));
      return;
    }
    this.#showTarget(plan.target);
    fill(
      byId("plan"),
      ...texts(plan.warnings, "warning"),
      ...list("Lines", [...texts([plan.noLines, plan.order]), ...(plan.lines ?? []).map(lineCard)]),
      ...list("Rigs", (plan.rigs ?? []).map(foundCard)),
      ...texts(plan.shortfalls),
      ...list("Deepest", plan.deepest ? [foundCard(plan.deepest)] : []),
      ...list("Flat spots", plan.flats?.length > 0 ? [this.#flatsButton(), ...plan.flats.map(foundCard)] : []),
      ...list("Slopes", (plan.slopes ?? []).map(foundCard)),
      ...texts(plan.notes, "small"),
      ...list("Cautions", texts(plan.cautions)),
    );
  }

  #flatsButton() {
    const toggle = button("Show them on the map, not the lines", () => {
      this.#flats = !this.#flats;
      toggle.setAttribute("aria-pressed", String(this.#flats));
      this.#seen();
    });
    toggle.setAttribute("aria-pressed", String(this.#flats));
    return toggle;
  }

  #showTarget({ words, metres, least, most, follows }) {
    const to = (value) => () => this.#target(value);
    const focused = document.activeElement?.id;
    fill(
      byId("target"),
      make(
        "div",
        { class: "wheel", role: "group", "aria-label": "Target depth" },
        button("−", to(Math.max(least, metres - this.#step)), {
          id: "target-shallower",
          class: "turn",
          "aria-label": "Target depth, shallower",
          disabled: metres <= least,
        }),
        make("p", { class: "value", text: words }),
        button("+", to(Math.min(most, metres + this.#step)), {
          id: "target-deeper",
          class: "turn",
          "aria-label": "Target depth, deeper",
          disabled: metres >= most,
        }),
      ),
      follows ? null : button("Half the deepest", to(null), { class: "quiet" }),
    );
    // The buttons are new ones: whoever goes by keys stays where they were.
    if (focused?.startsWith("target-")) byId(focused)?.focus();
  }
}

/** A heading and what stands under it; nothing where there is nothing. */
function list(title, cards) {
  return cards.length === 0 ? [] : [make("h2", { text: title }), ...cards];
}

function lineCard(line) {
  return make(
    "article",
    { class: "card line" },
    make("h3", {}, make("span", { class: "number", text: line.number }), make("span", { text: line.title })),
    ...texts([line.where, line.what]),
    ...texts(line.warnings, "warning"),
    more("Why", [line.why]),
  );
}

function foundCard(found) {
  return make("article", { class: "card" }, make("h3", { text: found.title }), ...texts([found.where, found.what]));
}

/** Cautions in full. */
export function cautionCards(cautions) {
  return (cautions ?? []).map((caution) =>
    make(
      "article",
      { class: "card caution" },
      make("h3", {}, make("span", { text: caution.title })),
      ...texts([caution.words]),
    ),
  );
}

function texts(words, kind) {
  return (words ?? []).filter(Boolean).map((text) => make("p", { text, class: kind }));
}

function more(title, words) {
  const all = texts(words);
  return all.length === 0 ? null : make("details", {}, make("summary", { text: title }), ...all);
}
