/** What zones that are about to be made are built up as: asked, never taken for granted. */

import { t } from '../text/text.ts';
import { buildUpFor } from './begin-build-up.ts';
import { usePlan } from './plan-context.ts';
import { ReferenceField } from './ReferenceFields.tsx';
import { useSceneFile } from './use-drawn-lists.ts';

/** The choice, as it was last made for a new zone. */
export function useZoneBuildUp(): string {
  const scene = useSceneFile();
  const given = usePlan((state) => state.given.zone) as { readonly buildup?: string } | undefined;
  return scene === null ? '' : buildUpFor(scene, given?.buildup);
}

export function ZoneBuildUp() {
  const given = usePlan((state) => state.given.zone);
  const give = usePlan((state) => state.give);
  const choice = useZoneBuildUp();
  return (
    <div className="pe-field" data-type="reference">
      <span className="pe-field-name">{t.draw.field('buildup')}</span>
      <ReferenceField
        label={t.draw.field('buildup')}
        to="build-up"
        value={choice}
        onSet={(buildup) => give('zone', { ...given, buildup })}
      />
    </div>
  );
}
