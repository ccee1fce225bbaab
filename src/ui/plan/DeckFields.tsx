/** What holds for the whole deck and the scene: name, slab, membrane, cell size, rain. */

import { partIn, withParts } from '../../edit/part-values.ts';
import type { ScenePatch } from '../../model/history.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { type FieldSpec, fieldsOf, SCENE_FIELDS } from '../facts/plan-fields.ts';
import { t } from '../text/text.ts';
import { PartFields } from './PartFields.tsx';
import { usePlanEdits } from './use-plan-edits.ts';

const DECK = { part: 'outline', id: 'outline' } as const;

/** Where nothing is said of the rain, both rains are given together: one alone is no rain to calculate with. */
function withSceneValue(scene: SceneFile, make: (entry: object) => object): ScenePatch {
  const next = make(scene) as SceneFile;
  const keys = (['name', 'grid', 'rain'] as const).filter((key) => next[key] !== scene[key]);
  return Object.fromEntries(keys.map((key) => [key, key === 'rain' ? wholeRain(next) : (next[key] ?? null)]));
}

function wholeRain({ rain }: SceneFile): SceneFile['rain'] | null {
  if (rain === undefined) return null;
  const known = rain.designLpsHa ?? rain.extremeLpsHa;
  return { ...rain, designLpsHa: rain.designLpsHa ?? known, extremeLpsHa: rain.extremeLpsHa ?? known };
}

export function DeckFields({ scene }: { readonly scene: SceneFile }) {
  const edits = usePlanEdits();
  const changeScene = (make: (entry: object) => object, path: string) =>
    void edits.run((now) => ({ patch: withSceneValue(now, make) }), {
      act: 'change',
      part: path.startsWith('rain') ? 'rain' : 'scene',
      names: [],
    });
  const changeDeck = (make: (entry: object) => object) =>
    void edits.run((now) => ({ patch: withParts(now, [DECK], make) }), { act: 'change', part: 'outline', names: [] });
  const required = (fields: readonly FieldSpec[]) => fields.map((field) => (field.path === 'name' ? { ...field, optional: false } : field));
  return (
    <section>
      <h4 className="block-title">{t.draw.fieldWords.deck}</h4>
      <PartFields part="scene" fields={required(SCENE_FIELDS)} entries={[scene]} onChange={changeScene} />
      <PartFields part="outline" fields={fieldsOf('outline')} entries={[partIn(scene, DECK) ?? {}]} onChange={changeDeck} />
    </section>
  );
}
