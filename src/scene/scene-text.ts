/** Writes a changed scene into the text it was opened from: what did not change keeps its lines, order and blanks. */

type Json = unknown;

const BLANKS = /[ \t\r\n\uFEFF]*/y;
const TEXT = /"(?:[^"\\]|\\.)*"/y;
const PLAIN = /[^\s,[\]{}]+/y;
/** A list or object printed anew stays in one line up to this many characters. */
const LINE = 120;
const STEP = '  ';

/**
 * The text of a value in the style of another text.
 * @param opened - text the value was read from, valid JSON
 * @param value - the value as it stands now
 * @returns text that reads as the value; the very text that was opened where nothing changed
 */
export function textInStyle(opened: string, value: Json): string {
  const writer = new Restyler(opened);
  return writer.write(value, '');
}

class Restyler {
  #at = 0;
  readonly #text: string;

  constructor(text: string) {
    this.#text = text;
  }

  /** From the blanks before a value to the blanks behind it. */
  write(value: Json, indent: string): string {
    const lead = this.#take(BLANKS);
    const own = lead.includes('\n') ? lead.slice(lead.lastIndexOf('\n') + 1) : indent;
    const body = this.#body(value, own);
    return lead + body + this.#take(BLANKS);
  }

  #body(value: Json, indent: string): string {
    const start = this.#at;
    const open = this.#text[start];
    if (open === '[') return this.#list(value, indent, start);
    if (open === '{') return this.#object(value, indent, start);
    const old = this.#take(open === '"' ? TEXT : PLAIN);
    return Object.is(JSON.parse(old), value) ? old : printed(value, indent);
  }

  #list(value: Json, indent: string, start: number): string {
    const items = Array.isArray(value) ? value : [];
    let count = 0;
    const out = this.#members(']', () => this.write(items[count++], indent));
    return Array.isArray(value) && count === value.length ? out : this.#anew(value, indent, start);
  }

  #object(value: Json, indent: string, start: number): string {
    const now = isObject(value) ? value : {};
    const seen: string[] = [];
    const out = this.#members('}', () => {
      const lead = this.#take(BLANKS);
      const own = lead.includes('\n') ? lead.slice(lead.lastIndexOf('\n') + 1) : indent;
      const key = this.#take(TEXT);
      const colon = `${this.#take(BLANKS)}${this.#text[this.#at++]}`;
      const name = JSON.parse(key) as string;
      seen.push(name);
      return lead + key + colon + this.write(now[name], own);
    });
    const kept = seen.filter((name) => Object.hasOwn(now, name) && now[name] !== undefined);
    if (isObject(value) && kept.length === seen.length && seen.length === keysOf(now).length) return out;
    // Order of the file first, then what is new.
    const order = [...new Set([...kept, ...keysOf(now)])];
    return this.#anew(isObject(value) ? Object.fromEntries(order.map((name) => [name, now[name]])) : value, indent, start);
  }

  /** Everything from the opening to the closing bracket, each member as `member` writes it. */
  #members(close: string, member: () => string): string {
    let out = this.#text[this.#at++] ?? '';
    const blank = this.#take(BLANKS);
    if (this.#text[this.#at] === close) {
      this.#at++;
      return out + blank + close;
    }
    this.#at -= blank.length;
    for (;;) {
      out += member();
      const mark = this.#text[this.#at++] ?? close;
      out += mark;
      if (mark === close) return out;
    }
  }

  #anew(value: Json, indent: string, start: number): string {
    const inline = !this.#text.slice(start, this.#at).includes('\n');
    const line = oneLine(value);
    return inline && line.length <= LINE ? line : printed(value, indent);
  }

  #take(pattern: RegExp): string {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0] ?? '';
    this.#at += found.length;
    return found;
  }
}

function isObject(value: Json): value is Readonly<Record<string, Json>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const keysOf = (value: Readonly<Record<string, Json>>): string[] => Object.keys(value).filter((key) => value[key] !== undefined);

function printed(value: Json, indent: string): string {
  return (JSON.stringify(value, null, STEP) ?? 'null').replaceAll('\n', `\n${indent}`);
}

function oneLine(value: Json): string {
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`;
  if (!isObject(value)) return JSON.stringify(value) ?? 'null';
  const members = keysOf(value).map((key) => `${JSON.stringify(key)}: ${oneLine(value[key])}`);
  return members.length === 0 ? '{}' : `{ ${members.join(', ')} }`;
}
