// Peg files in and out of the phone.

const TYPE = "application/json";

/** Hands a peg file to the phone's share sheet if it takes files, else to its downloads. */
export async function shareFile(name, text) {
  const file = new File([text], name, { type: TYPE });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: name });
      return;
    } catch (error) {
      if (error.name === "AbortError") return;
    }
  }
  saveFile(name, text);
}

/** Puts a peg file into the phone's downloads. */
export function saveFile(name, text) {
  const address = URL.createObjectURL(new Blob([text], { type: TYPE }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60000);
}

/**
 * The chosen files as names and texts. Text that is not UTF-8 is refused, so that nothing is changed unseen.
 *
 * @return [{name, text}] or [{name, refused}]
 */
export function readFiles(files) {
  return Promise.all(
    [...files].map(async (file) => {
      try {
        const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
        return { name: file.name, text: decoder.decode(await file.arrayBuffer()) };
      } catch {
        return { name: file.name, refused: `${file.name} is not a peg file: it is not text in UTF-8.` };
      }
    }),
  );
}
