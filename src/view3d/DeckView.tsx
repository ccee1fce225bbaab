/** The 3D view of the deck: canvas, keys, labels, and what happens when the graphics fail. */

import { Canvas } from '@react-three/fiber';
import { Component, type KeyboardEvent, type ReactNode, useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { PAPER } from '../model/palette.ts';
import type { SceneStore } from '../store/scene-store.ts';
import type { ViewStore } from '../store/view-store.ts';
import type { BayNote } from './bay-labels.ts';
import { FIELD_OF_VIEW_DEG } from './camera-fit.ts';
import { canDraw, watchContext } from './context-watch.ts';
import { DeckScene } from './DeckScene.tsx';
import { DeckDirector } from './deck-director.ts';
import type { LayerWords } from './lift-labels.ts';
import { dotsPerPixel } from './sharpness.ts';
import type { SiteWords } from './site-overlay.ts';
import type { WaterWords } from './water-marks.ts';
import './deck-view.css';

const CAMERA = { up: [0, 0, 1], fov: FIELD_OF_VIEW_DEG } as const;

export interface DeckViewProps {
  readonly scene: SceneStore;
  readonly view: ViewStore;
  /** Name of the view for those who do not see it. */
  readonly label?: string;
  /** Second line of a bay's label: what it may carry. */
  readonly bayNote?: BayNote;
  /** What stands on access points and areas. */
  readonly siteWords?: SiteWords;
  /** What stands on outlets and overflows. */
  readonly waterWords?: WaterWords;
  /** What stands beside a lifted layer. */
  readonly layerWords?: LayerWords;
}

export function DeckView(props: DeckViewProps) {
  const { view } = props;
  const canvas = useStore(view, (state) => state.canvas);
  const [able, setAble] = useState<boolean | null>(null);
  useEffect(() => {
    const can = canDraw();
    setAble(can);
    if (!can) view.getState().setCanvas('unavailable');
  }, [view]);
  if (able !== true || canvas === 'unavailable') return null;
  return (
    <FailureGuard onFailure={() => view.getState().setCanvas('unavailable')}>
      <DeckCanvas {...props} />
    </FailureGuard>
  );
}

function DeckCanvas({ scene, view, label = 'Model of the deck', bayNote, siteWords, waterWords, layerWords }: DeckViewProps) {
  const [director] = useState(() => new DeckDirector(scene, view));
  const [overlay, setOverlay] = useState<HTMLElement | null>(null);
  const [canvas, setCanvas] = useState<HTMLCanvasElement | null>(null);

  useEffect(() => () => director.dispose(), [director]);

  useEffect(() => {
    if (canvas === null) return;
    const { setCanvas: tell } = view.getState();
    tell('ready');
    return watchContext(canvas, {
      lost: () => tell('lost'),
      // The stores' change makes the director draw: everything is sent to the GPU anew from the arrays it keeps.
      restored: () => tell('ready'),
      gaveUp: () => tell('unavailable'),
    });
  }, [canvas, view]);

  const onKeyDown = (event: KeyboardEvent) => {
    if (director.key(event)) event.preventDefault();
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys of the view work while it has the focus
    <div className="deck-view" role="application" aria-label={label} tabIndex={0} onKeyDown={onKeyDown}>
      <Canvas
        frameloop="demand"
        flat
        camera={CAMERA}
        dpr={dotsPerPixel()}
        gl={{ antialias: true, powerPreference: 'default' }}
        onCreated={({ gl }) => setCanvas(gl.domElement)}
      >
        <color attach="background" args={[PAPER]} />
        {overlay && (
          <DeckScene
            director={director}
            overlay={overlay}
            bayNote={bayNote ?? null}
            siteWords={siteWords ?? null}
            waterWords={waterWords ?? null}
            layerWords={layerWords ?? null}
          />
        )}
      </Canvas>
      <div ref={setOverlay} className="deck-labels" aria-hidden="true" />
    </div>
  );
}

interface FailureGuardProps {
  readonly onFailure: () => void;
  readonly children: ReactNode;
}

/** A canvas that cannot be made must not take the tables with it. */
class FailureGuard extends Component<FailureGuardProps, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override componentDidCatch() {
    this.props.onFailure();
  }

  override render() {
    return this.state.failed ? null : this.props.children;
  }
}
