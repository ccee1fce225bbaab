/** The schema and the model say the same, and the JSON Schema helps editors. */

import { describe, expect, expectTypeOf, it } from 'vitest';
import type { z } from 'zod';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { sceneJsonSchema } from '../../src/scene/json-schema.ts';
import { sceneFileSchema } from '../../src/scene/schema.ts';
import { fullScene, type Json, minimalScene } from './scenes.ts';

type Frozen<T> = T extends object ? { readonly [K in keyof T]: Frozen<T[K]> } : T;

it('the schema’s type is the model’s type', () => {
  expectTypeOf<Frozen<z.infer<typeof sceneFileSchema>>>().toEqualTypeOf<Frozen<SceneFile>>();
});

describe('JSON Schema', () => {
  const schema: Json = sceneJsonSchema();

  it('says which draft, which file and what is required', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.$id).toBe('loamdeck-scene-1');
    expect(schema.title).toContain('Loamdeck');
    // contract.md, section 1: "Only format, version, name, deck.outline, deck.bays, buildups, zones are required."
    expect([...schema.required].sort()).toEqual(['buildups', 'deck', 'format', 'name', 'version', 'zones']);
    expect([...schema.properties.deck.required].sort()).toEqual(['bays', 'outline']);
    expect(schema.additionalProperties).toBe(false);
  });

  it('describes every key, and gives numbers their unit', () => {
    const silent: string[] = [];
    const walk = (node: Json, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      for (const [key, child] of Object.entries<Json>(node.properties ?? {})) {
        if (typeof child.description !== 'string') silent.push(`${path}.${key}`);
        else if (child.type === 'number' && child.const === undefined && !/\[.+\]$/.test(child.description))
          silent.push(`${path}.${key} without unit`);
        if (/(M|Mm|KN|KNm2|Lm2|Lps|Kg|KPa|Deg|Percent|kNm|kNm2)$/.test(key) && !/\[.+\]/.test(child.description) && child.type === 'number')
          silent.push(`${path}.${key} unit`);
      }
      for (const [key, child] of Object.entries(node)) walk(child, `${path}.${key}`);
    };
    walk(schema, '');
    expect(silent).toEqual([]);
  });

  it('is plain JSON', () => {
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });
});

it('accepts the full and the smallest scene', () => {
  expect(sceneFileSchema.safeParse(fullScene()).success).toBe(true);
  expect(sceneFileSchema.safeParse(minimalScene()).success).toBe(true);
});
