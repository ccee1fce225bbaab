/** The catalogue's materials, forms of vegetation and vehicles for those who choose from them. */

import { MATERIALS } from '../catalogue/materials.ts';
import { SUBSTRATE_DEPTHS } from '../catalogue/rule-limits.ts';
import { VEGETATION_FORMS } from '../catalogue/vegetation.ts';
import { VEHICLES } from '../catalogue/vehicles.ts';
import type { CatalogueMaterial, MaterialNumber } from '../model/catalogue.ts';
import type { CatalogueView, MaterialView, VegetationView } from '../model/catalogue-view.ts';
import type { Language } from '../model/language.ts';
import { sourceLine } from '../model/source.ts';
import { type Names, namesOf } from './words/names.ts';

/** The whole catalogue in a language. */
export function catalogueView(language: Language): CatalogueView {
  const names = namesOf(null, language);
  return {
    materials: MATERIALS.map((material) => materialView(material, names)),
    vegetation: vegetationViews(names),
    vehicles: VEHICLES.map(({ id, name }) => ({ id, name: names.name(name) })),
  };
}

function materialView({ sources, ...material }: CatalogueMaterial, names: Names): MaterialView {
  return {
    material: { ...material, name: names.name(material.name) },
    sources: Object.entries(sources).map(([number, source]) => ({
      number: number as MaterialNumber,
      text: names.source(sourceLine(source)),
    })),
  };
}

/** Every form that has a weight or a least depth. */
function vegetationViews(names: Names): VegetationView[] {
  const weights = new Map(VEGETATION_FORMS.map(({ form, kNm2 }) => [form, kNm2]));
  const depths = new Map(SUBSTRATE_DEPTHS.map(({ form, leastMm }) => [form, leastMm]));
  return [...new Set([...depths.keys(), ...weights.keys()])].map((form) => ({
    form,
    name: names.name(form),
    kNm2: weights.get(form) ?? null,
    leastMm: depths.get(form) ?? null,
  }));
}
