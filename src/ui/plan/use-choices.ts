/** What fields can refer to: build-ups of the scene and to begin with, vehicles and materials of scene and catalogue. */

import { useEffect, useState } from 'react';
import { TEMPLATE_IDS } from '../../edit/build-ups-templates.ts';
import type { CatalogueView } from '../../model/catalogue-view.ts';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { TEMPLATE_MARK } from './begin-build-up.ts';

export interface Choice {
  readonly id: string;
  readonly name: string;
}

export interface ChoiceGroup {
  readonly label: string;
  readonly choices: readonly Choice[];
}

function useCatalogue(): CatalogueView | null {
  const ask = useScene((state) => state.catalogue);
  const language = useView((state) => state.language);
  const [catalogue, setCatalogue] = useState<CatalogueView | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: names are told anew in another language
  useEffect(() => {
    let isWanted = true;
    void ask().then((found) => {
      if (isWanted) setCatalogue(found);
    });
    return () => {
      isWanted = false;
    };
  }, [ask, language]);
  return catalogue;
}

/** An entry of the scene stands for that of the catalogue with the same id. */
function own(scene: readonly Choice[], others: readonly Choice[]): readonly Choice[] {
  const ids = new Set(scene.map(({ id }) => id));
  return others.filter(({ id }) => !ids.has(id));
}

export function useChoices(to: 'build-up' | 'vehicle' | 'material'): readonly ChoiceGroup[] {
  const scene = useScene((state) => state.snapshot?.scene);
  const catalogue = useCatalogue();
  const { ofScene, ofCatalogue, templates } = t.draw.fieldWords;
  if (to === 'build-up') {
    const begin = TEMPLATE_IDS.map((id) => ({ id: TEMPLATE_MARK + id, name: t.buildUps.template.words[id].name }));
    return [
      { label: ofScene, choices: scene?.buildups ?? [] },
      { label: templates, choices: begin },
    ];
  }
  const ours: readonly Choice[] = (to === 'vehicle' ? scene?.vehicles : scene?.materials) ?? [];
  const theirs: readonly Choice[] = (to === 'vehicle' ? catalogue?.vehicles : catalogue?.materials.map(({ material }) => material)) ?? [];
  return [
    { label: ofScene, choices: ours },
    { label: ofCatalogue, choices: own(ours, theirs) },
  ];
}
