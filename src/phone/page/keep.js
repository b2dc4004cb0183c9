// Pegs and wishes in the browser's own store (IndexedDB). A peg that was put is on the disk before its promise ends.

const NO_STORE =
  "This browser keeps nothing here, as in some private windows. The peg lasts until the page is closed: save it to a file.";

/** Thrown with a sentence for the person. */
export class KeepError extends Error {}

/** What keeps the pegs; in memory alone where the browser has no store, which "trouble" says. */
export class Keep {
  #base;
  #memory = { pegs: new Map(), wishes: new Map() };
  /** A sentence where nothing outlasts the page, or empty. */
  trouble = "";

  static async open() {
    const keep = new Keep();
    try {
      keep.#base = await opened();
    } catch {
      keep.trouble = NO_STORE;
    }
    return keep;
  }

  /** All pegs, the one changed last first. */
  async pegs() {
    const all = this.#base
      ? await done(this.#base.transaction("pegs").objectStore("pegs").getAll())
      : [...this.#memory.pegs.values()];
    return all.sort((one, other) => other.changed.localeCompare(one.changed));
  }

  /** One peg, or undefined. */
  async peg(id) {
    return this.#base
      ? done(this.#base.transaction("pegs").objectStore("pegs").get(id))
      : this.#memory.pegs.get(id);
  }

  /**
   * Keeps a peg: {id, name, text, title, changed, stamp}, and damaged, the text of its file as it was where that could
   * not be read whole. The stamp is the one that was read with it, 0 for a new peg;
   * the kept peg's is one more.
   *
   * @return the stamp kept
   * @throws KeepError if the store is full, or somebody else kept the peg since
   */
  async put(peg) {
    const kept = { ...peg, stamp: peg.stamp + 1 };
    if (!this.#base) {
      this.#memory.pegs.set(kept.id, kept);
      return kept.stamp;
    }
    await this.#write("pegs", (store, refuse) => {
      store.get(peg.id).onsuccess = ({ target }) => {
        if ((target.result?.stamp ?? 0) === peg.stamp) store.put(kept);
        else refuse("This peg was changed in another tab. Nothing was added here; open the peg again to go on.");
      };
    });
    return kept.stamp;
  }

  /** Takes a peg away. */
  async remove(id) {
    if (this.#base) await this.#write("pegs", (store) => store.delete(id));
    else this.#memory.pegs.delete(id);
  }

  /** A wish by its key, or what is usual. */
  async wish(key, usual) {
    const found = this.#base
      ? await done(this.#base.transaction("wishes").objectStore("wishes").get(key))
      : this.#memory.wishes.get(key);
    return found === undefined ? usual : found.value;
  }

  /** Keeps a wish; a full store is no harm here. */
  async setWish(key, value) {
    const wish = { key, value };
    if (!this.#base) {
      this.#memory.wishes.set(key, wish);
      return;
    }
    try {
      await this.#write("wishes", (store) => store.put(wish));
    } catch {
      this.trouble ||= "The phone's storage is full: your settings are not kept.";
    }
  }

  /** Ends when the transaction is complete and on the disk. */
  #write(name, work) {
    return new Promise((complete, failed) => {
      let refusal = null;
      const transaction = this.#base.transaction(name, "readwrite", { durability: "strict" });
      transaction.oncomplete = () => complete();
      transaction.onabort = () => failed(new KeepError(refusal ?? reason(transaction.error)));
      work(transaction.objectStore(name), (words) => {
        refusal = words;
        transaction.abort();
      });
    });
  }
}

function reason(error) {
  return error?.name === "QuotaExceededError"
    ? "The phone's storage is full, so nothing was added. Free some space, or save the peg to a file, then add it again."
    : `The browser could not keep it, so nothing was added (${error?.name ?? "no reason given"}). Save the peg to a file, then try again.`;
}

function opened() {
  return new Promise((given, failed) => {
    const asked = indexedDB.open("pegbed", 1);
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore("pegs", { keyPath: "id" });
      asked.result.createObjectStore("wishes", { keyPath: "key" });
    };
    asked.onsuccess = () => given(asked.result);
    asked.onerror = () => failed(asked.error);
  });
}

function done(asked) {
  return new Promise((given, failed) => {
    asked.onsuccess = () => given(asked.result);
    asked.onerror = () => failed(asked.error);
  });
}

/** Whether the browser promises not to clear the store by itself; asks it to. */
export async function askToPersist() {
  try {
    return (await navigator.storage.persisted()) || (await navigator.storage.persist());
  } catch {
    return false;
  }
}

/**
 * Takes a peg for this tab alone.
 *
 * @return a function that lets go of it, or null if another tab has it
 */
export function takeTurn(id) {
  if (!navigator.locks) return Promise.resolve(() => {});
  return new Promise((taken) => {
    navigator.locks.request(`pegbed ${id}`, { ifAvailable: true }, (lock) => {
      if (!lock) {
        taken(null);
        return undefined;
      }
      return new Promise((release) => taken(release));
    });
  });
}
