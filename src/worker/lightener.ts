/** Lightens a scene away from the engine: it evaluates the text for itself, so that the model and its numbers go on meanwhile. */

import { lighten } from '../lighten/lighten.ts';
import { loadSolver } from '../lighten/solver.ts';
import type { Lightener } from '../model/lightener.ts';
import { readProject } from '../project/evaluate-project.ts';
import { speakProject } from '../project/speak.ts';

export function createLightener(): Lightener {
  return {
    async lighten({ text, language, options }, onProgress) {
      const { project } = readProject(text);
      if (project === null) throw new RangeError('createLightener: the scene does not open');
      return lighten(await loadSolver(), speakProject(project, language), options, onProgress);
    },
  };
}
