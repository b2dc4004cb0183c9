"use strict";
importScripts("pegbed.wasm-runtime.js");
self.onmessage = async (event) => {
  try {
    const core = (await TeaVM.wasmGC.load("pegbed.wasm")).exports;
    const { pegs, typed, at } = event.data;
    self.postMessage({
      pegs: pegs.map((peg) => ({
        numbers: core.numbers(peg),
        words: core.words(peg),
        text: core.text(peg),
      })),
      typed: typed.map((line) => core.understood(at, line)),
    });
  } catch (error) {
    self.postMessage({ error: String(error && error.stack ? error.stack : error) });
  }
};
