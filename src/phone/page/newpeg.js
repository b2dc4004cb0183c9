// A new peg: what it is called, where the banks are, and the pole.

import { button, byId, fill, make, say } from "./dom.js";
import { Wheel, choose } from "./wheel.js";

const STEP_METRES = 0.5;
const FAR_STEPS = 16;
const NEAR_STEPS = 8;

/** The sheet for a new peg. */
export class NewPegView {
  #core;
  #sheet = byId("new-peg");
  #begin;
  /** Distances as texts, by bank. */
  #banks = {};
  #pole = 0;
  #far = true;

  /**
   * @param core the worker
   * @param begin makes the peg of {venue, water, number, near, far, pole, units}; gives {refused} or nothing
   */
  constructor(core, begin) {
    this.#core = core;
    this.#begin = begin;
  }

  /** @param last venue, water, pole and units of the peg before: a person's pole stays the same */
  async show(last) {
    const form = await this.#core.ask({ do: "form" });
    this.#far = true;
    this.#pole = last.pole ?? form.pole;
    const refused = make("p", { class: "refused", role: "alert", hidden: true });
    const fields = ["venue", "water", "number"].map((name) =>
      make("input", { id: `new-${name}`, name, autocomplete: "off", value: last[name] ?? "", maxlength: 60 }),
    );
    const titles = ["Venue", "Water", "Peg number"];
    const farBank = make("div", {}, ...this.#bank("far", "Far bank", form.far, FAR_STEPS));
    const units = radios("units", form.units, Math.max(0, form.units.indexOf(last.units)), () => {});
    const inReach = radios("far", ["within reach", "none: a pond"], 0, (at) => {
      this.#far = at === 0;
      farBank.hidden = !this.#far;
    });
    fill(
      this.#sheet,
      make("h2", { text: "New peg", id: "new-peg-title", tabindex: -1, autofocus: true }),
      make("p", { text: "Distances are from your seat to the water's edge; rough is good enough." }),
      make(
        "form",
        {
          onsubmit: async (event) => {
            event.preventDefault();
            const [venue, water, number] = fields.map((field) => field.value.trim());
            const answer = await this.#begin({
              venue,
              water,
              number,
              near: this.#banks.near,
              ...(this.#far ? { far: this.#banks.far } : {}),
              pole: this.#pole,
              units: form.units[units.querySelector("input:checked").value],
            });
            if (answer?.refused) say(refused, answer.refused);
            else this.#sheet.close();
          },
        },
        make(
          "div",
          { class: "names" },
          ...fields.map((field, i) => make("label", {}, make("span", { text: titles[i] }), field)),
        ),
        part("Far bank", inReach, farBank),
        part("Near bank", ...this.#bank("near", "Near bank", form.near, NEAR_STEPS)),
        part("Your longest pole", this.#poleWheel(form)),
        part("Depths in", units),
        refused,
        make("div", { class: "row" }, make("button", { type: "submit", class: "main", text: "Begin this peg" })),
      ),
      button("Cancel", () => this.#sheet.close(), { class: "quiet" }),
    );
    this.#sheet.showModal();
    this.#sheet.scrollTop = 0;
  }

  #bank(bank, title, distances, steps) {
    this.#banks[bank] = distances.map(({ metres }) => String(metres));
    return distances.map(({ direction, metres }, i) => {
      const values = [];
      for (let step = -steps; step <= steps; step++) {
        const value = Math.round((metres + step * STEP_METRES) * 10) / 10;
        if (value > 0) values.push(value);
      }
      return metresWheel(`${bank}-${i}`, `${title}, ${direction}`, values, metres, (value) => {
        this.#banks[bank][i] = String(value);
      });
    });
  }

  #poleWheel({ shortestPole, longestPole }) {
    const values = [];
    for (let metres = shortestPole; metres <= longestPole; metres += STEP_METRES) values.push(metres);
    return metresWheel("pole", "Pole", values, this.#pole, (value) => (this.#pole = value));
  }
}

function part(title, ...children) {
  return make("fieldset", {}, make("legend", { text: title }), ...children);
}

function metresWheel(id, title, values, at, taken) {
  const labels = values.map((value) => `${value} m`);
  const place = make("div", { id });
  const show = (index) => {
    wheel.hold(title, labels, index);
    taken(values[index]);
    here = index;
  };
  let here = values.indexOf(at);
  const wheel = new Wheel(place, ["less", "more"], show, () =>
    choose(
      title,
      labels.map((label, index) => ({ label, here: index === here, chosen: () => show(index) })),
    ),
  );
  wheel.hold(title, labels, here);
  return place;
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
