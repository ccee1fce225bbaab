/** Hangs the deck into the canvas: one model, one director, frames on demand. */

import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useState } from 'react';
import type { PerspectiveCamera } from 'three';
import { BayLabels, type BayNote } from './bay-labels.ts';
import type { DeckDirector } from './deck-director.ts';
import { type LastFrame, probeSource } from './deck-probe.ts';
import { viewProbe } from './probe.ts';

export interface DeckSceneProps {
  readonly director: DeckDirector;
  readonly overlay: HTMLElement;
  readonly bayNote: BayNote | null;
}

export function DeckScene({ director, overlay, bayNote }: DeckSceneProps) {
  const gl = useThree((state) => state.gl);
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const sheet = useThree((state) => state.scene);
  const size = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  const [labels, setLabels] = useState<BayLabels | null>(null);

  useEffect(() => {
    const made = new BayLabels(overlay);
    setLabels(made);
    return () => made.dispose();
  }, [overlay]);

  useEffect(() => {
    labels?.setNote(bayNote);
    invalidate();
  }, [labels, bayNote, invalidate]);

  useEffect(() => {
    if (labels === null) return;
    const easel = { gl, camera, sheet, invalidate: () => invalidate() };
    const last: LastFrame = { calls: 0, triangles: 0 };
    const source = probeSource(director, easel, last);
    viewProbe.source = source;
    sheet.onAfterRender = () => {
      last.calls = gl.info.render.calls;
      last.triangles = gl.info.render.triangles;
    };
    const stop = director.start(easel, labels);
    return () => {
      stop();
      if (viewProbe.source === source) viewProbe.source = null;
    };
  }, [director, labels, gl, camera, sheet, invalidate]);

  useEffect(() => director.resize(size.width, size.height), [director, size.width, size.height]);

  useFrame(() => {
    director.frame(performance.now());
    viewProbe.frames++;
  });

  return <primitive object={director.model.root} />;
}
