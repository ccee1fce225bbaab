/** A fault put into the full scene, and the message it must give. */

import type { SceneIssueCode } from '../../src/scene/issue-codes.ts';
import type { Json } from './scenes.ts';

export interface SceneCase {
  readonly fault: string;
  readonly code: SceneIssueCode;
  readonly path: string;
  readonly says: readonly string[];
  /** Changes the full scene. */
  readonly put: (scene: Json) => void;
  /** Default: error. */
  readonly level?: 'warning';
}
