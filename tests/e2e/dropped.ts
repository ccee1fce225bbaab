/** Files dropped on the running app, one after the other, and what it says to each. */

import type { Page } from 'playwright-core';
import type { Answers, DrawingBox, LayerRoles } from '../../src/model/drawing.ts';
import type { Issue } from '../../src/model/issue.ts';
import './app-state.ts';

export interface DroppedFile {
  readonly name: string;
  /** Content as base64. */
  readonly content: string;
  readonly answers?: Answers;
  readonly roles?: LayerRoles;
  readonly around?: DrawingBox;
}

/** What stands on the page afterwards. */
export interface Outcome {
  readonly kind: 'drawing' | 'refused' | 'scene';
  /** Sentences as shown. */
  readonly issues: readonly string[];
  readonly mends: readonly string[];
  readonly open: readonly string[];
  readonly warnings: readonly Issue[];
  readonly findings: readonly string[];
}

/** Each file as a person drops it; answers and roles are put in, and the page is closed again. */
export function dropAll(page: Page, files: readonly DroppedFile[]): Promise<Outcome[]> {
  return page.evaluate(async (all) => {
    const { scene, imports } = window.__loamdeck;
    const until = async (done: () => boolean) => {
      while (!done()) await new Promise((resume) => setTimeout(resume, 5));
    };
    const texts = (css: string) => [...document.querySelectorAll(css)].map((element) => element.textContent ?? '');
    const drop = (name: string, content: string) => {
      const dataTransfer = new DataTransfer();
      const bytes = Uint8Array.from(atob(content), (character) => character.charCodeAt(0));
      dataTransfer.items.add(new File([bytes], name));
      window.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
    };
    const settled = () => imports().read !== null && imports().share === null && !imports().drafting;
    const REFUSAL = 'dialog[aria-labelledby="refusal-title"]';
    const outcomes: Outcome[] = [];
    for (const { name, content, answers = {}, roles, around } of all) {
      const before = scene().snapshot;
      const none = { issues: [], mends: [], open: [], warnings: [], findings: [] };
      drop(name, content);
      await until(() => settled() || scene().refused !== null || scene().snapshot !== before);
      if (scene().refused !== null) {
        await until(() => document.querySelector(`${REFUSAL} .issue`) !== null);
        outcomes.push({ ...none, kind: 'refused', issues: texts(`${REFUSAL} .issue`) });
        scene().dismissRefusal();
        await until(() => document.querySelector(REFUSAL) === null);
      } else if (scene().snapshot !== before) {
        const { warnings, notes, snapshot } = scene();
        const findings = snapshot!.report.findings.map(({ rule, says }) => `${rule}: ${says}`);
        outcomes.push({ ...none, kind: 'scene', warnings, mends: notes, findings });
      } else {
        if (around === undefined) imports().setTarget('new');
        else imports().setTarget('into');
        for (const [question, value] of Object.entries(answers)) imports().answer(question, value);
        for (const layer of imports().read!.layers) imports().setRole(layer.name, roles?.[layer.name] ?? 'ignore');
        await until(settled);
        // The page loads when it is first needed, and follows its store in the next task.
        await until(() => document.querySelector('.import-check') !== null);
        await new Promise((resume) => setTimeout(resume, 0));
        outcomes.push({
          ...none,
          kind: 'drawing',
          issues: texts('.import-check .issue'),
          mends: texts('.import-mends li'),
          open: imports()
            .read!.questions.filter(({ answered, certain }) => !answered && !certain)
            .map(({ id }) => id),
        });
        imports().close();
      }
    }
    return outcomes;
  }, files);
}
