/** Name and short name of a build-up. */

import type { BuildUpView } from '../../model/engine.ts';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import type { BuildUpEdits } from './use-build-up.ts';

interface Props {
  readonly buildUp: BuildUpView;
  readonly edits: BuildUpEdits;
  readonly onChoose: (id: string) => void;
}

export function BuildUpNames({ buildUp: { id, name }, edits, onChoose }: Props) {
  const { buildUps } = t;
  const rename = async (to: string) => {
    if (await edits.rename(to)) onChoose(to);
  };
  return (
    <div className="bu-names">
      <div className="bu-field">
        <span>{buildUps.name}</span>
        <TextField label={buildUps.name} value={name} required onCommit={(to) => void edits.change({ name: to })} />
      </div>
      <div className="bu-field bu-field-short" title={buildUps.idSays}>
        <span>{buildUps.id}</span>
        <TextField label={buildUps.id} value={id} required onCommit={(to) => void rename(to)} />
      </div>
    </div>
  );
}
