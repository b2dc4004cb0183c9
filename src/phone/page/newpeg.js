// A new peg: what it is called, where the banks are, and the pole.

import { button, byId, fill, make, say } from "./dom.js";
import { Wheel } from "./wheel.js";

const STEP_METRES = 0.5;
const NEAR = { from: 0, to: 12 };
const FAR = { from: 4, to: 30 };
const POLE = { from: 4, to: 18 };
const SIDES = ["left", "straight out", "right"];
/** Usual distances to the banks, in the order of the sides. */
const USUAL = { near: [4, 0.5, 4], far: [14, 13, 14], pole: 13 };

/** The sheet for a new peg. */
export class NewPegView {
  #sheet = byId("new-peg");
  #begin;
  #values = structuredClone(USUAL);
  #far = true;

  /** @param begin makes the peg of {venue, water, number, near, far, poleLength, units}; gives {refused} or nothing */
  constructor(begin) {
    this.#begin = begin;
  }

  /** @param last venue, water, pole and units of the peg before; a person's pole stays the same */
  show(last) {
    this.#values = { ...structuredClone(USUAL), ...(last.poleLength ? { pole: last.poleLength } : {}) };
    this.#far = true;
    const refused = make("p", { class: "refused", role: "alert", hidden: true });
    const fields = ["venue", "water", "number"].map((name) =>
      make("input", { id: `new-${name}`, name, autocomplete: "off", value: last[name] ?? "", maxlength: 60 }),
    );
    const titles = ["Venue", "Water", "Peg number"];
    const farBank = make("div", { id: "far-bank" });
    const far = make("fieldset", {}, make("legend", { text: "Far bank" }), this.#bankChoice(farBank), farBank);
    const units = this.#unitsChoice(last.units ?? "ft");
    fill(
      this.#sheet,
      make("h2", { text: "New peg", id: "new-peg-title" }),
      make("p", { text: "Metres from your seat to the water's edge. Rough is good enough." }),
      make(
        "form",
        {
          id: "new-peg-form",
          onsubmit: async (event) => {
            event.preventDefault();
            const answer = await this.#begin(this.#request(fields, units));
            if (answer?.refused) say(refused, answer.refused);
            else this.#sheet.close();
          },
        },
        ...fields.map((field, i) => make("label", {}, make("span", { text: titles[i] }), field)),
        far,
        make(
          "fieldset",
          {},
          make("legend", { text: "Near bank" }),
          ...this.#wheels("near", "Near bank", NEAR),
        ),
        make(
          "fieldset",
          {},
          make("legend", { text: "Your longest pole" }),
          this.#wheel("pole-wheel", "Pole", POLE, this.#values.pole, (metres) => (this.#values.pole = metres)),
        ),
        make("fieldset", {}, make("legend", { text: "Depths in" }), units),
        refused,
        make("div", { class: "row" }, make("button", { type: "submit", class: "main", text: "Begin this peg" })),
      ),
      button("Cancel", () => this.#sheet.close(), { class: "quiet" }),
    );
    fill(farBank, ...this.#wheels("far", "Far bank", FAR));
    this.#sheet.showModal();
    this.#sheet.scrollTop = 0;
  }

  #bankChoice(farBank) {
    return radios("far", ["A far bank in reach", "A pond: none in reach"], 0, (at) => {
      this.#far = at === 0;
      farBank.hidden = at !== 0;
    });
  }

  #unitsChoice(units) {
    return radios("units", ["feet and inches", "metres"], units === "m" ? 1 : 0, () => {});
  }

  #wheels(bank, title, range) {
    return SIDES.map((side, i) =>
      this.#wheel(`${bank}-${i}`, `${title}, ${side}`, range, this.#values[bank][i], (metres) => {
        this.#values[bank][i] = metres;
      }),
    );
  }

  #wheel(id, title, { from, to }, at, turned) {
    const labels = [];
    for (let metres = from; metres <= to; metres += STEP_METRES) labels.push(`${metres} m`);
    const place = make("div", { id });
    const index = (metres) => Math.round((metres - from) / STEP_METRES);
    new Wheel(place, title, ["less", "more"], (i) => turned(from + i * STEP_METRES)).hold(labels, index(at));
    return place;
  }

  #request([venue, water, number], units) {
    return {
      venue: venue.value.trim(),
      water: water.value.trim(),
      number: number.value.trim(),
      near: this.#values.near,
      ...(this.#far ? { far: this.#values.far } : {}),
      poleLength: this.#values.pole,
      units: units.querySelector("input:checked").value === "0" ? "ft" : "m",
    };
  }
}

/** A row of choices of which one is taken; each input's value is its index. */
export function radios(name, labels, at, chosen) {
  return make(
    "div",
    { class: "choices" },
    ...labels.map((label, i) =>
      make(
        "label",
        { class: "choice" },
        make("input", { type: "radio", name, value: i, checked: i === at, onchange: () => chosen(i) }),
        make("span", { text: label }),
      ),
    ),
  );
}
