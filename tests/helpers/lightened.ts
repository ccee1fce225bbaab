/** Lightening with its solver loaded, for tests. */

import { lighten as lightenWith } from '../../src/lighten/lighten.ts';
import { loadSolver } from '../../src/lighten/solver.ts';
import type { LightenAnswer, LightenOptions } from '../../src/model/lighten.ts';
import type { Project } from '../../src/project/evaluate-project.ts';

export const SOLVER = await loadSolver();

export const lighten = (project: Project, options?: LightenOptions): LightenAnswer => lightenWith(SOLVER, project, options);
