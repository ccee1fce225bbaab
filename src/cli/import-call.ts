/** What a call of `import` asks for. */

import { parseArgs } from 'node:util';
import type { Answers } from '../model/drawing.ts';
import { isLanguage, type Language } from '../model/language.ts';
import { languageRefused } from './diff-call.ts';

export interface ImportCall {
  readonly command: 'import';
  readonly file: string;
  readonly json: boolean;
  readonly language: Language;
  /** A JSON file with answers by question. */
  readonly answersFile?: string;
  readonly answers: Answers;
  readonly roles: Readonly<Record<string, string>>;
  /** A scene whose deck the drawing should fit. */
  readonly deckFile?: string;
  /** Where the draft of a scene is written. */
  readonly out?: string;
}

export const IMPORT_USAGE = `     npm run --silent import -- FILE [--answer ID=VALUE]… [--answers FILE] [--role LAYER=ROLE]… [--deck SCENE] [--scene OUT] [--json] [--language en|de]
`;

export const IMPORT_HELP = `import: reads a drawing (DXF), a map (GeoJSON), points (CSV, LandXML); nothing is changed without being said
  --answer I=V   answer to a question, by its id; may stand several times
  --answers FILE the same from a JSON file: { "unit": "mm" }
  --role L=R     what a layer is: outline, openings, bays, zones, edges, columns, outlets, levels, trees, axes, ignore
  --deck SCENE   a scene whose deck the drawing should fit: shows whether axes are exchanged or mirrored
  --language L   en, or de: questions, changes, messages and the history of the draft in German
  --scene OUT    writes the part of a scene that the file holds to OUT
                 exit code 1 here: a question is open, the best guess was taken
`;

const FLAGS = {
  json: { type: 'boolean' },
  answer: { type: 'string', multiple: true },
  answers: { type: 'string' },
  role: { type: 'string', multiple: true },
  deck: { type: 'string' },
  scene: { type: 'string' },
  language: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
} as const;

/**
 * Reads the call.
 * @param args - arguments after `import`
 * @returns the call, null for help; a text says why it was not understood
 */
export function readImportCall(args: readonly string[]): ImportCall | string | null {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    return `The call was not understood: ${(error as Error).message}`;
  }
  const { values, positionals } = parsed;
  if (values.help) return null;
  if (positionals.length !== 1) {
    return `One file was expected, ${positionals.length === 0 ? 'none was' : `${positionals.length} were`} given. Read several files one after the other.`;
  }
  const { language = 'en' } = values;
  if (!isLanguage(language)) return languageRefused(language);
  const [answers, roles] = [pairs(values.answer ?? []), pairs(values.role ?? [])];
  if (answers === null) return '--answer takes ID=VALUE, for example --answer unit=mm.';
  if (roles === null) return '--role takes LAYER=ROLE, for example --role Deck=outline.';
  if (values.scene !== undefined && values.role === undefined) return '--scene needs --role LAYER=ROLE: what is the outline of the deck?';
  return {
    command: 'import',
    file: positionals[0],
    json: values.json ?? false,
    language,
    answers,
    roles,
    ...(values.answers === undefined ? {} : { answersFile: values.answers }),
    ...(values.deck === undefined ? {} : { deckFile: values.deck }),
    ...(values.scene === undefined ? {} : { out: values.scene }),
  };
}

function parse(args: readonly string[]) {
  return parseArgs({ args: [...args], allowPositionals: true, options: FLAGS });
}

/** A layer's name may hold the sign itself: the last one parts. */
function pairs(texts: readonly string[]): Record<string, string> | null {
  const found: Record<string, string> = {};
  for (const text of texts) {
    const at = text.startsWith('columns=') ? 7 : text.lastIndexOf('=');
    if (at < 1) return null;
    Object.defineProperty(found, text.slice(0, at), { value: text.slice(at + 1), enumerable: true, configurable: true });
  }
  return found;
}
