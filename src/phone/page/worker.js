// The worker: loads the core (WebAssembly, or JavaScript where the browser lacks what that needs) and hands it what the page asks. TeaVM's loader stands before this in the
// same file.

const loaded = new Promise((given) => {
  // In the page that is one file the core comes packed in a first message.
  if (self.location.protocol === "blob:") self.packedCore = given;
  else given(loadFromFile());
});
let canvas = null;

self.onmessage = async ({ data }) => {
  if (data.packed !== undefined) {
    self.packedCore(loadPacked(data.packed));
    return;
  }
  const core = await loaded;
  let answer;
  if (data.canvas) {
    canvas = data.canvas;
    answer = {};
  } else if (data.paint) {
    const { width, height, density, ...options } = data.paint;
    const pixels = [Math.round(width * density), Math.round(height * density)];
    if (canvas.width !== pixels[0] || canvas.height !== pixels[1]) [canvas.width, canvas.height] = pixels;
    answer = JSON.parse(core.paint(canvas, width, height, density, JSON.stringify(options)));
  } else if (data.paintDay) {
    const { width, density, ...options } = data.paintDay;
    const sheet = new OffscreenCanvas(1, 1);
    answer = JSON.parse(core.paintDay(sheet, width, density, JSON.stringify(options)));
    if (answer.height > 0) answer.image = sheet.transferToImageBitmap();
  } else {
    answer = JSON.parse(core.ask(JSON.stringify(data.ask)));
  }
  self.postMessage({ id: data.id, answer }, answer.image ? [answer.image] : []);
};

// A promise's failure tells the page nothing; an error of the worker does.
self.onunhandledrejection = (event) => {
  event.preventDefault();
  setTimeout(() => {
    throw event.reason;
  });
};

async function loadFromFile() {
  if (HAS_GARBAGE_COLLECTION) return (await TeaVM.wasmGC.load("pegbed.wasm")).exports;
  // Its functions come into this scope.
  importScripts("pegbed-core.js");
  return self;
}

/** @param text the core, gzip in base64 */
async function loadPacked(text) {
  const packed = Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return (await TeaVM.wasmGC.load(await new Response(unpacked).arrayBuffer())).exports;
}
