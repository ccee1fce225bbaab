/** JSON Schema of the scene file, for editors that complete and mark scene files. */

import { z } from 'zod';
import { sceneFileSchema } from './schema.ts';

/**
 * Makes the JSON Schema (draft 2020-12) of the scene file.
 * @returns the schema as a JSON value
 */
export function sceneJsonSchema(): object {
  const { $schema, ...rest } = z.toJSONSchema(sceneFileSchema, { target: 'draft-2020-12' });
  return { $schema, $id: 'loamdeck-scene-1', title: 'Loamdeck scene, version 1', ...rest };
}
