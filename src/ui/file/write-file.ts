/** Writes a scene to a file: by the browser's own picker where it has one, so that saving again writes the same file. */

import type { SceneText } from '../../model/engine.ts';
import { saveFile } from '../save-file.ts';

/** What of the browser's file handle is used. */
export interface FileHandle {
  readonly name: string;
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
}

type Picker = (options: {
  readonly suggestedName: string;
  readonly types: readonly { readonly description: string; readonly accept: Readonly<Record<string, readonly string[]>> }[];
}) => Promise<FileHandle>;

export function hasPicker(): boolean {
  return 'showSaveFilePicker' in window;
}

/** Null where the user thought better of it. */
export async function pickFile(suggestedName: string): Promise<FileHandle | null> {
  try {
    return await (window as unknown as { showSaveFilePicker: Picker }).showSaveFilePicker({
      suggestedName,
      types: [{ description: 'JSON', accept: { 'application/json': ['.json'] } }],
    });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    throw error;
  }
}

export async function writeTo(handle: FileHandle, text: string): Promise<void> {
  const file = await handle.createWritable();
  await file.write(text);
  await file.close();
}

/** Hands the text to the browser's downloads. */
export function download({ name, text }: SceneText): void {
  saveFile({ name, mediaType: 'application/json', bytes: new TextEncoder().encode(text) });
}

/** A typed name with the ending by which scenes are known, free of marks that file systems refuse. */
export function asFileName(typed: string): string {
  const stem = typed
    .replace(/(\.scene)?\.json\s*$/i, '')
    .replace(/[\p{Cc}<>:"/\\|?*]+/gu, '-')
    .replace(/^[\s.]+|[\s.]+$/g, '');
  return `${stem || 'deck'}.scene.json`;
}
