/** Names of saved files. */

import type { SceneFile } from '../model/scene-file.ts';

/** Named after the scene: letters and digits of any script stay, everything else becomes a hyphen; `what` may be ''. */
export function fileName({ name }: SceneFile, what: string, extension: string): string {
  const stem =
    name
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '') || 'deck';
  return `${what === '' ? stem : `${stem}-${what}`}.${extension}`;
}
