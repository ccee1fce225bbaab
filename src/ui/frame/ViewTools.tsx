/** Explode, cut away, set points of view, help: a narrow column at the right of the model. */

import { useState } from 'react';
import { Icon, type IconName } from '../parts/Icon.tsx';
import { en as t } from '../text/en.ts';
import { useView } from '../use-stores.ts';
import { CutTool } from './CutTool.tsx';
import { ExplodeTool } from './ExplodeTool.tsx';
import { KeysHelp } from './KeysHelp.tsx';

const LOOKS: readonly { readonly to: 'home' | 'plan' | 'side'; readonly icon: IconName }[] = [
  { to: 'home', icon: 'home' },
  { to: 'plan', icon: 'plan' },
  { to: 'side', icon: 'side' },
];

/** `flat`: there is only the plan, so nothing to explode, cut or turn. */
export function ViewTools({ flat }: { readonly flat: boolean }) {
  const moveCamera = useView((state) => state.moveCamera);
  const [help, setHelp] = useState(false);
  return (
    <section className="view-tools" aria-label={t.tools.title}>
      {!flat && (
        <>
          <div className="tool-group sheet">
            {LOOKS.map(({ to, icon }) => (
              <button key={to} type="button" className="tool-button" onClick={() => moveCamera(to)}>
                <Icon name={icon} />
                {t.tools[to]}
              </button>
            ))}
          </div>
          <CutTool />
          <ExplodeTool />
        </>
      )}
      <div className="tool-group sheet">
        <button type="button" className="tool-button" onClick={() => setHelp(true)}>
          <Icon name="keys" />
          {t.tools.help}
        </button>
      </div>
      {help && <KeysHelp onClose={() => setHelp(false)} />}
    </section>
  );
}
