/** What a call of `import` asks for. */

import { parseArgs } from 'node:util';
import type { Answers } from '../model/drawing.ts';
import { isLanguage, type Language } from '../model/language.ts';
import { notParsed, type Why } from './refusal.ts';

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
 * @returns the call, null for help; a function says why it was not understood
 */
export function readImportCall(args: readonly string[]): ImportCall | Why | null {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    return notParsed(error);
  }
  const { values, positionals } = parsed;
  if (values.help) return null;
  if (positionals.length !== 1) return (t) => t.oneFile(positionals.length);
  const { language = 'en' } = values;
  if (!isLanguage(language)) return (t) => t.language(language);
  const [answers, roles] = [pairs(values.answer ?? []), pairs(values.role ?? [])];
  if (answers === null) return (t) => t.answer;
  if (roles === null) return (t) => t.role;
  if (values.scene !== undefined && values.role === undefined) return (t) => t.sceneNeedsRole;
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
