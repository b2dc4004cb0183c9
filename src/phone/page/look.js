// Light, dark or high contrast: as the phone is set, or as the person wishes.

const WISHES = ["phone", "light", "dark", "contrast"];
/** What the wishes are called on the page, in their order. */
export const LOOKS = ["As the phone", "Light", "Dark", "High contrast"];

/** How the page looks. */
export class Look {
  #keep;
  #changed;
  #wish = "phone";
  #dark = matchMedia("(prefers-color-scheme: dark)");
  #contrast = matchMedia("(prefers-contrast: more)");

  /** @param changed called when the look is another */
  constructor(keep, changed) {
    this.#keep = keep;
    this.#changed = changed;
    this.#dark.addEventListener("change", () => this.#apply());
    this.#contrast.addEventListener("change", () => this.#apply());
  }

  async begin() {
    this.#wish = await this.#keep.wish("look", "phone");
    this.#apply();
  }

  /** The index of the wish among LOOKS. */
  get at() {
    return Math.max(0, WISHES.indexOf(this.#wish));
  }

  /** light, dark or contrast. */
  get theme() {
    if (this.#wish !== "phone") return this.#wish;
    if (this.#contrast.matches) return "contrast";
    return this.#dark.matches ? "dark" : "light";
  }

  wish(at) {
    this.#wish = WISHES[at];
    this.#keep.setWish("look", this.#wish);
    this.#apply();
  }

  #apply() {
    document.documentElement.dataset.look = this.theme;
    document.querySelector("meta[name=theme-color]").content = this.theme === "light" ? "#14222e" : "#000000";
    this.#changed();
  }
}
