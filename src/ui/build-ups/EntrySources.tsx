/** Where each number of a material of the catalogue comes from. */

import type { MaterialView } from '../../model/catalogue-view.ts';
import { t } from '../text/text.ts';

export function EntrySources({ entry: { sources } }: { readonly entry: MaterialView }) {
  const { materials } = t;
  return (
    <>
      <h4 className="block-title">{materials.sources}</h4>
      <dl className="facts bu-sources">
        {sources.map(({ number, text }) => (
          <div key={number}>
            <dt>{materials.numbers[number]}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
