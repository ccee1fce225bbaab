/** What the plan editor keeps in the history of a load plan is understood again, in either language. */

import { describe, expect, it } from 'vitest';
import { editionsInHistory } from '../../src/scene/load-plan-editions.ts';
import { de } from '../../src/ui/text/de.ts';
import { en } from '../../src/ui/text/en.ts';
import { sceneOf } from '../helpers/scene-builder.ts';

describe.each([en, de])('%#', ({ draw }) => {
  it.each([null, '2026-11-02'])('with the date %s', (date) => {
    const says = draw.bays.entered({ document: 'load plan', revision: 'C', date }, 'A1, A2');
    expect(says).toMatch(/A1, A2$/);
    expect(editionsInHistory(sceneOf({ history: [{ says }] }), 'load plan')).toEqual([{ revision: 'C', date }]);
  });
});
