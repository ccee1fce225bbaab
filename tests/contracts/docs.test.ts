/** Every exported function of the pure folders says what goes in, what comes out, in which unit, and from where. */

import { describe, expect, it } from 'vitest';
import { type ExportedFunction, exportedFunctions } from './exported-functions.ts';
import { codeOnly, readSource, sourceFiles } from './source-text.ts';

const UNIT = /\[(-|m|m²|m³|mm|kN|kPa|kN\/m|kN\/m²|kN\/m³|kg|kg\/m²|kg\/m³|l\/m²|l\/s|°|%|ms)\]/;

/** What a function's doc comment lacks, one sentence each. */
function faultsOf(one: ExportedFunction): string[] {
  const parts = one.doc.split(/^(?=@\w)/m);
  const tags = parts.filter((part) => part.startsWith('@'));
  const tagged = (name: string) => tags.filter((tag) => new RegExp(`^@${name}\\b`).test(tag));
  const params = tagged('param');
  const returns = tagged('returns');
  const sources = tagged('source').map((tag) => tag.replace(/^@source\s*/, '').trim());
  const documented = params.map((tag) => /^@param\s+(\w+)\s+-\s+\S/.exec(tag)?.[1]);
  const faults: string[] = [];
  const must = (holds: boolean, fault: string) => {
    if (!holds) faults.push(`${one.name}: ${fault}`);
  };
  must(/^[^@]*\w/.test(parts[0]!) && !tags.includes(parts[0]!), 'no sentence says what it does');
  must(
    documented.length === one.params.length &&
      one.params.every((name, i) => documented[i] !== undefined && (name ?? documented[i]) === documented[i]),
    `@param lines name (${documented.join(', ')}), the parameters are (${one.params.map((name) => name ?? 'any name').join(', ')})`,
  );
  for (const tag of params) must(UNIT.test(tag), `no unit in "${tag.trim()}"`);
  must(returns.length === (one.returnsNothing ? 0 : 1), one.returnsNothing ? 'returns nothing, so no @returns' : 'one @returns');
  for (const tag of returns) must(UNIT.test(tag), `no unit in "${tag.trim()}"`);
  must(!one.throwsItself || tagged('throws').length > 0, 'throws, but no @throws says when');
  must(sources.length === 1 && sources[0] !== '', 'one @source');
  for (const source of sources) must(!/^none\b/.test(source) || /^none: (geometry|arithmetic)\b/.test(source), `@source "${source}"`);
  return faults;
}

const faultsIn = (text: string) => exportedFunctions(text).flatMap(faultsOf);

describe('doc comments', () => {
  it.each([...sourceFiles('core'), ...sourceFiles('mesh')])('src/%s', (file) => {
    expect(faultsIn(readSource(file))).toEqual([]);
  });

  it.each([...sourceFiles('core'), ...sourceFiles('mesh')])('src/%s hides no exported function from this test', (file) => {
    const code = codeOnly(readSource(file));
    const names = [...code.matchAll(/\bexport\s+(?:async\s+)?function\W+(\w+)/g)].map((match) => match[1]);
    expect(exportedFunctions(readSource(file)).map((one) => one.name)).toEqual(expect.arrayContaining(names));
    expect(code, 'export a function where it is declared').not.toMatch(/\bexport\s*\{/);
    expect(code, 'class methods are not looked at here').not.toMatch(/\bexport\s+(abstract\s+)?class\b/);
  });
});

const GOOD = `/**
 * Spreads a load.
 *
 * @param loadKN - load [kN]
 * @param sidesM - length and width [m],
 *   not zero
 * @returns pressure [kN/m²]
 * @throws RangeError if a side is not positive
 * @source none: arithmetic
 */
export function spreadLoad(loadKN: number, sidesM: [number, number]): number {
  if (!(sidesM[0] > 0)) throw new RangeError('spreadLoad: sidesM must be positive');
  return loadKN / sidesM[0] / sidesM[1];
}
`;

describe('this test itself', () => {
  it('passes a complete doc comment', () => {
    expect(faultsIn(GOOD)).toEqual([]);
  });

  it.each([
    ['no comment at all', GOOD.slice(GOOD.indexOf('export')), 5],
    ['another comment in between', GOOD.replace('export', '/* aside */\nexport'), 5],
    ['no sentence', GOOD.replace(' * Spreads a load.\n', ''), 1],
    ['a parameter left out', GOOD.replace(' * @param loadKN - load [kN]\n', ''), 1],
    ['a parameter misspelt', GOOD.replace('@param loadKN', '@param loadKn'), 1],
    ['no dash after the name', GOOD.replace('loadKN - load', 'loadKN load'), 1],
    ['a parameter too many', GOOD.replace(' * @returns', ' * @param more - more [-]\n * @returns'), 1],
    ['the wrong order', GOOD.replace('loadKN: number, sidesM: [number, number]', 'sidesM: [number, number], loadKN: number'), 1],
    ['no unit on a parameter', GOOD.replace('load [kN]', 'load in kN'), 1],
    ['a unit not in the list', GOOD.replace('load [kN]', 'load [kgf]'), 1],
    ['no unit on the result', GOOD.replace('pressure [kN/m²]', 'pressure'), 1],
    ['no result', GOOD.replace(' * @returns pressure [kN/m²]\n', ''), 1],
    ['a throw that is not told', GOOD.replace(/ \* @throws.*\n/, ''), 1],
    ['no source', GOOD.replace(' * @source none: arithmetic\n', ''), 1],
    ['an empty source', GOOD.replace('@source none: arithmetic', '@source'), 1],
    ['two sources', GOOD.replace(' */', ' * @source none: geometry\n */'), 1],
    ['an excuse for a source', GOOD.replace('none: arithmetic', 'none: obvious'), 1],
  ])('finds %s', (_, text, faults) => {
    expect(faultsIn(text)).toHaveLength(faults);
  });

  it('lets a function that returns nothing have no @returns', () => {
    const text = GOOD.replace(': number {', ': void {');
    expect(faultsIn(text)).toEqual(['spreadLoad: returns nothing, so no @returns']);
    expect(faultsIn(text.replace(' * @returns pressure [kN/m²]\n', ''))).toEqual([]);
  });

  it.each<[string, (string | null)[]]>([
    ['export function f(): number {', []],
    ['export function f(\n  a: number,\n  b: string,\n): number {', ['a', 'b']],
    ['export function f(a = 3, b: number = g(1, 2), c?: string): number {', ['a', 'b', 'c']],
    ['export function f(a: Map<string, Array<[number, string]>>, b: { x: number; y: [number, number] }): void {', ['a', 'b']],
    ['export function f<T extends Record<string, number>, U = Map<string, T>>(a: T, b: U): void {', ['a', 'b']],
    ['export function f(a: (x: number, y: number) => void, b: number): void {', ['a', 'b']],
    ['export function f({ a, b }: { a: number; b: number }, [c, d]: number[], ...rest: number[]): void {', [null, null, 'rest']],
    ["export function f(a: 'x,y' | \"(\" = ')', /* b: number, */ c: number): void {", ['a', 'c']],
    ['export function f(\n  a: number, // first, of two\n  b: number,\n): void {', ['a', 'b']],
    ['export async function f(a: Promise<Map<string, number>>): Promise<void> {', ['a']],
    ['export function* f(a: number): Generator<number, void, unknown> {', ['a']],
    ['export const f = (a: number, b: number): number => {', ['a', 'b']],
    ['export const f = <T,>(a: readonly T[]): T => {', ['a']],
    ['export function f(a: number): { x: number; y: { z: number } } {', ['a']],
  ])('reads the parameters of %s', (head, params) => {
    expect(exportedFunctions(`${head} throw new RangeError(')'); }`)).toMatchObject([{ name: 'f', params, throwsItself: true }]);
  });

  it('is not misled by text that only looks like a function, a comment or the end of one', () => {
    const text = [
      "const a = 'export function no(a) {}';",
      'const b = /["`]/;',
      '// export function no(a) {}',
      'export const c = (1 + 2) * 3;',
      'const d = `',
      'export function no(a) {}`;',
      'export function yes(a: number): number {',
      "  return a / 2 + '/*'.length / 1;",
      '}',
      'export function also(b: number): number {',
      '  return b;',
      '}',
    ].join('\n');
    expect(exportedFunctions(text)).toMatchObject([
      { name: 'yes', params: ['a'], throwsItself: false },
      { name: 'also', params: ['b'], throwsItself: false },
    ]);
  });
});
