/** JSON text to a value; where it stops in the middle, the features that are whole. */

import { readJson } from '../scene/json-reader.ts';
import { type Gathering, StopReading } from './gathering.ts';
import { issueOf } from './issue-of.ts';
import { tellCut } from './truncation.ts';

/** Length up to which a break is explained [characters]. */
const EXPLAINED = 20_000_000;

/** The value, or of a file that is cut off, what is whole; stops the reading where nothing is. */
export function jsonOf(text: string, gather: Gathering): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    const reading = text.length <= EXPLAINED ? readJson(text) : null;
    const problem = reading !== null && 'problem' in reading ? reading.problem : null;
    if (problem !== null && problem.code !== 'JSON_TRUNCATED') {
      const { offset, path, ...words } = problem;
      throw new StopReading({
        ...words,
        level: 'error',
        path: path.join('.').slice(0, 100),
        line: lineAt(text, offset),
      });
    }
    const features = wholeFeatures(text);
    if (problem === null && features.length === 0) {
      throw new StopReading(issueOf('error', 'FILE_TRUNCATED:json', {}));
    }
    const use = tellCut(gather, features.length, { unit: 'byte', at: new TextEncoder().encode(text).length });
    return { type: 'FeatureCollection', features: use ? features : [] };
  }
}

function lineAt(text: string, offset: number): number {
  let line = 1;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) line += 1;
  return line;
}

/** Objects of the list of features that are closed. */
function wholeFeatures(text: string): readonly unknown[] {
  const list = /"features"\s*:\s*\[/.exec(text);
  if (list === null) return [];
  const start = list.index + list[0].length;
  let depth = 0;
  let end = start;
  let inText = false;
  for (let i = start; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 92 && inText) i += 1;
    else if (code === 34) inText = !inText;
    else if (inText) continue;
    else if (code === 123 || code === 91) depth += 1;
    else if (code === 125 || code === 93) {
      depth -= 1;
      if (depth < 0) break;
      if (depth === 0) end = i + 1;
    }
  }
  try {
    return JSON.parse(`[${text.slice(start, end)}]`) as unknown[];
  } catch {
    return [];
  }
}
