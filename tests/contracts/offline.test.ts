/** Nothing in the app names another host; the browser tests hold the same at run time. */

import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT, readSource, SRC, sourceFiles, withoutComments } from './source-text.ts';

/** Names of markup languages and schemas that only look like addresses: nothing is fetched from them. */
const NAMESPACES = ['http://www.w3.org/2000/svg', 'http://www.w3.org/1999/xlink', 'https://json-schema.org/draft/2020-12/schema'];

/** Addresses of other hosts, also those that take over the page's scheme (`//host`) inside quotes or `url(`. */
function addressesIn(text: string): string[] {
  const found = [...text.matchAll(/(?:https?|wss?):\/\/[^\s'"`)<>]+|(?<=['"`(])\/\/[\w-]+\.[^\s'"`)<>]+/gi)].map((match) => match[0]);
  return found.filter((address) => !NAMESPACES.includes(address));
}

describe('no address of another host', () => {
  // The catalogue cites its sources by address.
  it.each(sourceFiles().filter((file) => !file.startsWith('catalogue/')))('src/%s', (file) => {
    expect(addressesIn(withoutComments(readSource(file)))).toEqual([]);
  });

  const styles = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.css'));
  const served = readdirSync(resolve(ROOT, 'public'), { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.(svg|json|webmanifest|css)$/.test(file),
  );
  it.each(['index.html', ...styles.map((file) => `src/${file}`), ...served.map((file) => `public/${file}`)])('%s', (file) => {
    expect(addressesIn(readFileSync(resolve(ROOT, file), 'utf8'))).toEqual([]);
  });

  it('the page allows itself no other host', () => {
    const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(readFileSync(resolve(ROOT, 'index.html'), 'utf8'))?.[1];
    const rules = new Map(
      policy
        ?.split(';')
        .map((rule) => rule.trim().split(/\s+/))
        .map(([name, ...values]) => [name, values]),
    );
    expect(rules.get('default-src')).toEqual(["'none'"]);
    expect(rules.get('script-src')).toEqual(["'self'"]);
    const allowed = ["'none'", "'self'", "'unsafe-inline'", 'data:', 'blob:'];
    expect([...rules.values()].flat().filter((value) => !allowed.includes(value))).toEqual([]);
  });
});

describe('this test itself', () => {
  it('finds addresses in code and not in comments', () => {
    const text =
      '// see https://a.example/x\nfetch(\'https://b.example/y\');\nconst s = `wss://c.example`; /* http://d.example */\nload("//e.example/z.js");';
    expect(addressesIn(withoutComments(text))).toEqual(['https://b.example/y', 'wss://c.example', '//e.example/z.js']);
  });

  it('knows a namespace from an address', () => {
    expect(addressesIn("'http://www.w3.org/2000/svg' 'http://www.w3.org/2000/svg/x'")).toEqual(['http://www.w3.org/2000/svg/x']);
  });
});
