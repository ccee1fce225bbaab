/** Every fault of a scene that has a message of its own. */

import { BUILD_UP_CASES, SITE_CASES } from './build-up-cases.ts';
import { SHAPE_OF_FILE_CASES } from './key-cases.ts';
import { LEVEL_CASES } from './level-cases.ts';
import { NAME_CASES } from './name-cases.ts';
import { SET_UP_CASES } from './set-up-cases.ts';
import { SHAPE_CASES } from './shape-cases.ts';
import { WALL_CASES } from './wall-cases.ts';
import { WATER_CASES } from './water-cases.ts';

export const SCENE_CASES = [
  ...SHAPE_OF_FILE_CASES,
  ...NAME_CASES,
  ...SHAPE_CASES,
  ...LEVEL_CASES,
  ...BUILD_UP_CASES,
  ...SITE_CASES,
  ...WALL_CASES,
  ...WATER_CASES,
  ...SET_UP_CASES,
];
