/** Hands a file to the browser to be saved; nothing leaves the device. */

import type { ExportedFile } from '../model/engine.ts';

/** Some browsers read the address only after the click has returned. */
const KEPT_MS = 60_000;

export function saveFile({ name, mediaType, bytes }: ExportedFile): void {
  const url = URL.createObjectURL(new Blob([bytes], { type: mediaType }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), KEPT_MS);
}
