// The page: its parts, and which of them is shown.

import { button, byId, fill, make, pause, say } from "./dom.js";
import { Core } from "./core.js";
import { FishingView } from "./fishing.js";
import { Keep, KeepError, askToPersist } from "./keep.js";
import { LinesView, cautionCards } from "./lines.js";
import { Look } from "./look.js";
import { MapView } from "./map.js";
import { NewPegView } from "./newpeg.js";
import { OpenPeg, now } from "./peg.js";
import { PegsView } from "./pegs.js";
import { PlumbView } from "./plumb.js";

const PARTS = ["plumb", "lines", "fishing", "peg"];

/** A name for a new peg's file, such as tansy-cut-14.peg.json. */
function fileName(words) {
  const name = words
    .join(" ")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return `${name || "peg"}.peg.json`;
}

/** Shows one of the parts below the map. */
function showPart(part) {
  for (const each of PARTS) {
    byId(each).hidden = each !== part;
    if (each === part) byId(`to-${each}`).setAttribute("aria-current", "page");
    else byId(`to-${each}`).removeAttribute("aria-current");
  }
  // With the frame's own layout; now it would take one more.
  requestAnimationFrame(() => (byId("parts").scrollTop = 0));
}

/** Tells something that stays until it is read. */
function tell(words) {
  const news = byId("news");
  if (!words) {
    news.hidden = true;
    return;
  }
  fill(news, make("p", { text: words }), button("Close", () => (news.hidden = true), { class: "quiet" }));
  news.hidden = false;
}

async function begin() {
  // The worker loads the core while the rest is made.
  const core = new Core((reason) =>
    tell(
      typeof WebAssembly === "object" && !/compile/i.test(reason)
        ? `Something went wrong (${reason}). What was added is kept: close the page and open it again.`
        : "This browser is too old for Pegbed: it needs WebAssembly with garbage collection. What was added is kept.",
    ),
  );
  await pause();
  const keep = await Keep.open();
  const look = new Look(keep, () => {
    map?.paint();
    fishing?.paint();
  });
  let map = null;
  let fishing = null;
  const lines = new LinesView(
    (metres) => change({ do: "target", metres }),
    () => map.paint(),
  );
  const peg = new OpenPeg(core, keep, {
    state: showState,
    map: async (answer) => {
      if (answer.shown === false) return;
      showMap(answer);
      await map.paint();
      document.body.dataset.maps = String(Number(document.body.dataset.maps ?? 0) + 1);
    },
    next: async (next) => {
      plumb.showNext(next);
      await plumb.goOn();
      return map.paint();
    },
    plan: async (plan) => {
      lines.show(plan);
      fishing.refresh();
      await pause();
      return map.paint();
    },
  });
  await pause();
  let here = null;
  const plumb = new PlumbView(
    core,
    (line) => peg.edit({ do: "add", line }),
    (place) => {
      here = place;
      map.paint();
    },
  );
  await pause();
  map = new MapView(core, () => ({ theme: look.theme, flats: lines.flats, here: byId("plumb").hidden ? null : here }), (xPx, yPx) => {
    showPart("plumb");
    plumb.takePlace(xPx, yPx);
  }, tell);
  await pause();
  fishing = new FishingView(core, (request) => peg.edit(request), () => look.theme);
  const newPeg = new NewPegView(core, (wanted) => peg.alone(() => makePeg(wanted)));
  await pause();
  const pegs = new PegsView(core, keep, peg, look, {
    open: openKept,
    make: async () => newPeg.show(await keep.wish("last", {})),
    take: (files) => peg.alone(() => takeFiles(files)),
    change,
    tell,
  });

  function showState(state) {
    byId("title").textContent = state.title;
    document.title = `${state.title} – Pegbed`;
    byId("undo").disabled = !state.canUndo;
    byId("undo").setAttribute("aria-label", state.canUndo && state.undoWords ? state.undoWords : "Undo");
    byId("redo").disabled = !state.canRedo;
    document.body.classList.remove("no-peg");
    lines.showState(state);
    pegs.showState(state);
    fishing.refresh();
  }

  function showMap({ refused, deepest, question, state }) {
    if (refused) tell(refused);
    plumb.question(question);
    const missing = state?.missing ?? "";
    say(byId("missing"), missing);
    const found = deepest ? `${deepest.title}: ${deepest.where}. ${deepest.what}` : missing;
    byId("map").setAttribute("aria-label", `Map of ${byId("title").textContent}. ${found}`);
  }

  /** A change that no box waits for: a refusal is told. */
  async function change(request) {
    const answer = await peg.edit(request);
    if (answer.refused) tell(answer.refused);
    return answer;
  }

  /** Opens a kept peg, unless another tab has it. */
  function openKept(id) {
    return peg.alone(() => openNow(id));
  }

  async function openNow(id) {
    const record = await keep.peg(id);
    if (!record) return;
    const letGo = await peg.turn(id);
    if (!letGo) {
      const news = byId("news");
      tell(`${record.title} is open in another tab. Close it there first, so that no reading is lost.`);
      news.append(button("Try again", () => (tell(""), openKept(id)), { class: "main" }));
      await pegs.show();
      return;
    }
    await openRecord(record, letGo);
  }

  async function openRecord(record, letGo) {
    plumb.clear();
    lines.clear();
    fishing.clear();
    tell(keep.trouble);
    const others = (await keep.pegs()).filter((other) => other.id !== record.id);
    const answer = await peg.open(record, others, letGo);
    if (answer.refused) {
      tell(answer.refused);
      return;
    }
    if (answer.damage) tell(answer.damage);
    await pause();
    showPart("plumb");
    await keep.setWish("open", record.id);
    await pause();
    await pegs.show();
    await pause();
    await map.begin();
    peg.follow();
  }

  /** Keeps a peg that is not kept yet; gives {id} or {refused}. */
  async function keepNew(name, text, title, damaged = false) {
    const record = { id: crypto.randomUUID(), name, text, title, changed: now(), stamp: 0 };
    if (damaged) record.damaged = text;
    try {
      record.stamp = await keep.put(record);
    } catch (error) {
      if (!(error instanceof KeepError)) throw error;
      return { refused: error.message };
    }
    askToPersist().then((persisted) => pegs.showKept(persisted));
    return { id: record.id };
  }

  async function makePeg(wanted) {
    const before = peg.record?.id;
    const answer = await peg.tryOut({ do: "new", ...wanted });
    if (answer.refused) return openAgain(before, answer);
    const { venue, water, pole, units } = wanted;
    await keep.setWish("last", { venue, water, pole, units });
    const { title, water: called, number } = answer.state;
    const kept = await keepNew(fileName([called, number]), answer.text, title);
    if (kept.refused) return openAgain(before, kept);
    await openNow(kept.id);
    return {};
  }

  /** Another peg was tried out in vain: the one before is opened again, and the answer given. */
  async function openAgain(id, answer) {
    if (id) await openNow(id);
    return answer;
  }

  /** Files become pegs; the last one is opened. One that is kept already, byte for byte, is only opened. */
  async function takeFiles(files) {
    const refused = [];
    let last = peg.record?.id;
    for (const file of files) {
      const same = (await keep.pegs()).find(
        (kept) => kept.text === file.text || kept.damaged === file.text,
      );
      const answer = same ?? (file.refused ? file : await peg.tryOut({ do: "open", ...file, neighbours: [] }));
      const kept = same || answer.refused ? answer : await keepNew(file.name, file.text, answer.state.title, Boolean(answer.damage));
      if (kept.refused) refused.push(kept.refused);
      else last = kept.id;
    }
    if (last) await openNow(last);
    if (refused.length > 0) tell(refused.join(" "));
  }

  for (const part of PARTS) {
    byId(`to-${part}`).addEventListener("click", () => {
      showPart(part);
      lines.refresh();
      fishing.refresh();
      map.paint();
    });
  }
  byId("undo").addEventListener("click", async () => {
    await change({ do: "undo" });
    plumb.forget();
    fishing.forget();
  });
  byId("redo").addEventListener("click", () => change({ do: "redo" }));
  await look.begin();
  tell(keep.trouble);
  await firstCautions(core, keep);
  await pegs.show();
  pegs.showKept(await navigator.storage?.persisted?.());
  const given = byId("packed-peg");
  if (given && (await keep.pegs()).length === 0) await peg.alone(() => takeFiles([JSON.parse(given.textContent)]));
  else await openKept(await keep.wish("open", ""));
  if (!peg.record) showPart("peg");
  if ("serviceWorker" in navigator && !byId("packed-worker") && location.protocol !== "file:") {
    navigator.serviceWorker.register("service-worker.js").catch(() => {
      // Without it the page needs the network to open; pegs are kept all the same.
    });
  }
  document.documentElement.dataset.ready = "true";
}

/** Cautions are read before anything else, once. */
async function firstCautions(core, keep) {
  if (await keep.wish("cautions", false)) return;
  const { cautions } = await core.ask({ do: "cautions" });
  const sheet = byId("cautions");
  await new Promise((read) => {
    fill(
      sheet,
      make("h2", { text: "Before you plumb", id: "cautions-title" }),
      ...cautionCards(cautions),
      button("I have read them", () => sheet.close(), { class: "main", id: "cautions-read" }),
    );
    sheet.addEventListener("close", read, { once: true });
    sheet.showModal();
    sheet.scrollTop = 0;
  });
  await keep.setWish("cautions", true);
}

begin();
