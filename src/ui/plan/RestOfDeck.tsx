/** What no zone, or no bay, covers made into new ones; of zones it is asked what they are built up as. */

import { type FormEvent, useState } from 'react';
import { remainderFilled } from '../../edit/fit-areas.ts';
import { t } from '../text/text.ts';
import { madeWithBuildUp } from './begin-build-up.ts';
import { chosenBy, stepOfParts, usePlanEdits } from './use-plan-edits.ts';
import { useZoneBuildUp, ZoneBuildUp } from './ZoneBuildUp.tsx';

export function RestOfDeck() {
  const edits = usePlanEdits();
  const buildUp = useZoneBuildUp();
  const [asks, setAsks] = useState(false);
  const makeBays = () =>
    void edits.run(
      (scene) => remainderFilled(scene, 'bay'),
      (made) => stepOfParts('add', chosenBy(made)),
    );
  const makeZones = (event: FormEvent) => {
    event.preventDefault();
    void edits
      .run(
        (scene) => madeWithBuildUp(scene, buildUp, (now, buildup) => remainderFilled(now, 'zone', { buildup })),
        (made) => stepOfParts('add', chosenBy(made)),
      )
      .then(() => setAsks(false));
  };
  return (
    <>
      <button type="button" className="button" aria-expanded={asks} onClick={() => setAsks(!asks)}>
        {t.draw.parts.rest}
      </button>
      <button type="button" className="button" onClick={makeBays}>
        {t.draw.parts.restBays}
      </button>
      {asks && (
        <form className="pe-rest" aria-label={t.draw.parts.rest} onSubmit={makeZones}>
          <ZoneBuildUp />
          <button type="submit" className="button button-main">
            {t.draw.parts.restGo}
          </button>
        </form>
      )}
    </>
  );
}
