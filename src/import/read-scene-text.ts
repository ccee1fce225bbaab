/** Text of a file that should be a scene: other encodings are read, other kinds of files named. */

import type { Mend } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import { decodeText } from './decode-text.ts';
import { kindOfText, refuseBytes } from './file-kind.ts';
import { Gathering } from './gathering.ts';
import { issueOf } from './issue-of.ts';

export type SceneText = { readonly text: string; readonly mends: readonly Mend[] } | { readonly issue: Issue };

/**
 * Decodes a scene file.
 * @param bytes - the whole file
 * @returns its text and what was done to read it, or why it is no scene
 */
export function readSceneText(bytes: Uint8Array): SceneText {
  const refusal = refuseBytes(bytes);
  if (refusal !== null) return { issue: refusal };
  const gather = new Gathering({});
  const text = decodeText(bytes, gather);
  const kind = kindOfText(text);
  // What looks like JSON is left to the reader of scenes, which knows more to say about it.
  if (/^\s*[{[]/.test(text)) return { text, mends: gather.mends };
  if (typeof kind !== 'string') return { issue: kind };
  return kind === 'scene' ? { text, mends: gather.mends } : { issue: issueOf('error', 'FILE_KIND:drawing', { kind }) };
}
