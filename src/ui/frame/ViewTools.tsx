/** Explode, cut away, set points of view, help: a narrow column beside the model. */

import { useState } from 'react';
import { Icon, type IconName } from '../parts/Icon.tsx';
import { useSection } from '../section/use-section.ts';
import { t } from '../text/text.ts';
import { useLayout } from '../use-media.ts';
import { useScene, useView } from '../use-stores.ts';
import { ExplodeTool } from './ExplodeTool.tsx';
import { KeysHelp } from './KeysHelp.tsx';

const LOOKS: readonly { readonly to: 'home' | 'plan' | 'side'; readonly icon: IconName }[] = [
  { to: 'home', icon: 'home' },
  { to: 'plan', icon: 'plan' },
  { to: 'side', icon: 'side' },
];

interface Props {
  /** There is only the plan, so nothing to explode, cut or turn. */
  readonly flat: boolean;
  /** The explode slider stands here too. */
  readonly explode: boolean;
}

export function ViewTools({ flat, explode }: Props) {
  const moveCamera = useView((state) => state.moveCamera);
  const { on: cut, lookDeg } = useView((state) => state.cut);
  const setCut = useView((state) => state.setCut);
  const stage = useView((state) => state.stage);
  const hasAreas = useScene((state) => (state.snapshot?.scene.setUpAreas?.length ?? 0) > 0);
  const [help, setHelp] = useState(false);
  const toggleCut = () => {
    setCut({ on: !cut });
    if (!cut) moveCamera({ lookDeg });
  };
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
          <SavedViewsTool />
          <div className="tool-group sheet">
            <button type="button" className="tool-button" aria-pressed={cut} onClick={toggleCut}>
              <Icon name="cut" />
              {t.tools.cut}
            </button>
          </div>
          {(stage !== null || hasAreas) && <SiteTool />}
          {explode && <ExplodeTool lying={false} />}
        </>
      )}
      <SectionTool />
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

/**
 * Views kept in the scene: to go to, and to keep another. The editor has them among its pages; on a phone their page would cover the
 * model, and the walkthrough has them too.
 */
function SavedViewsTool() {
  const editing = useView((state) => state.editor !== null);
  const edit = useView((state) => state.edit);
  const phone = useLayout() === 'phone';
  if (phone || editing) return null;
  const open = () => {
    edit('views');
    // This button is gone then; work goes on in the editor, once it is there.
    requestAnimationFrame(() => document.getElementById('edit-views')?.focus());
  };
  return (
    <div className="tool-group sheet">
      <button type="button" className="tool-button" title={t.savedViews.toolTitle} onClick={open}>
        <Icon name="eye" />
        {t.savedViews.tool}
      </button>
    </div>
  );
}

/** Also without 3D: its line is tapped on a plan of its own. */
function SectionTool() {
  const shown = useView((state) => state.section !== null || state.sectionPoints !== null);
  const { draw, close } = useSection();
  return (
    <div className="tool-group sheet">
      <button type="button" className="tool-button" aria-pressed={shown} title={t.section.toolTitle} onClick={shown ? close : draw}>
        <Icon name="section" />
        {t.section.tool}
      </button>
    </div>
  );
}

/** Ways, access points, reach and open edges on the model; they belong to a stage. */
function SiteTool() {
  const on = useView((state) => state.sitePlan);
  const setOn = useView((state) => state.setSitePlan);
  return (
    <div className="tool-group sheet">
      <button type="button" className="tool-button" aria-pressed={on} title={t.site.planTitle} onClick={() => setOn(!on)}>
        <Icon name="site" />
        {t.site.plan}
      </button>
    </div>
  );
}
