// Lines, rigs, flat spots and cautions as cards, and the target depth.

import { button, byId, fill, make } from "./dom.js";

/** The part of the page for lines. */
export class LinesView {
  #target;
  #answer = null;

  /** @param target sets a target in metres, or null for half the deepest */
  constructor(target) {
    this.#target = target;
  }

  clear() {
    this.#answer = null;
    fill(byId("plan"), make("p", { class: "quiet", text: "Working it out …" }));
    fill(byId("target"));
  }

  /** The answers to the request "plan". */
  show(plan) {
    this.#answer = plan;
    if (plan.refused) {
      fill(byId("target"));
      fill(byId("plan"), make("p", { class: "card", text: plan.refused }));
      return;
    }
    this.#showTarget(plan.target);
    fill(
      byId("plan"),
      ...(plan.lines ?? []).map(lineCard),
      ...list("Rigs", (plan.rigs ?? []).map(rigCard)),
      ...list("Not found", sentences(plan.shortfalls)),
      ...list("Flat spots", (plan.flats ?? []).map(foundCard)),
      ...list("Slopes", sentences(plan.slopes)),
      ...list("Cautions", cautionCards(plan.cautions)),
    );
  }

  #showTarget({ words, metres, min, max, step, isHalfDeepest }) {
    const to = (value) => () => this.#target(value);
    fill(
      byId("target"),
      make("h2", { text: "Target depth" }),
      make(
        "div",
        { class: "wheel", role: "group", "aria-label": "Target depth" },
        button("−", to(metres - step), { class: "turn", "aria-label": "Target depth, shallower", disabled: metres - step < min }),
        make("p", { class: "value", text: words }),
        button("+", to(metres + step), { class: "turn", "aria-label": "Target depth, deeper", disabled: metres + step > max }),
      ),
      isHalfDeepest ? null : button("Half the deepest", to(null), { class: "quiet" }),
    );
  }
}

/** A heading and what stands under it; nothing where there is nothing. */
function list(title, cards) {
  return cards.length === 0 ? [] : [make("h2", { text: title }), ...cards];
}

function sentences(words) {
  return (words ?? []).length === 0
    ? []
    : [make("div", { class: "card" }, ...words.map((text) => make("p", { text })))];
}

function lineCard(line) {
  return make(
    "article",
    { class: "card line" },
    make(
      "h3",
      {},
      make("span", { class: "number", text: line.number }),
      make("span", { text: line.zone }),
      make("span", { class: "depth", text: [line.depth, line.plusMinus].filter(Boolean).join(" ") }),
    ),
    ...texts([line.where, line.aim, line.rig, line.use]),
    ...texts(line.warnings, "warning"),
    more("Why, and what to check", [line.why, ...(line.checks ?? [])]),
  );
}

function rigCard(rig) {
  return make(
    "article",
    { class: "card" },
    make("h3", {}, make("span", { text: rig.title ?? rig.lines })),
    ...texts([rig.title ? rig.lines : null, rig.float, rig.settings, rig.hookLength, rig.shotting]),
    ...texts(rig.warnings, "warning"),
  );
}

function foundCard(found) {
  return make(
    "article",
    { class: "card" },
    make("h3", {}, make("span", { text: found.title })),
    ...texts([found.where, found.what]),
  );
}

/** Cautions: the short form, and more behind a button. */
export function cautionCards(cautions) {
  return (cautions ?? []).map((caution) =>
    make(
      "article",
      { class: "card caution" },
      make("h3", {}, make("span", { text: caution.title })),
      ...texts([caution.words]),
      more("More", [caution.more]),
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
