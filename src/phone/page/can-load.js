// Stands before the worker and the service worker, which both have to know which core this browser can load.

/** Whether WebAssembly has garbage collection here: such a browser takes a module with a structure as its one type. */
const HAS_GARBAGE_COLLECTION =
  typeof WebAssembly === "object" &&
  WebAssembly.validate(new Uint8Array([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0, 1, 5, 1, 0x5f, 1, 0x78, 0]));
