/** Hangs the deck into the canvas: one model, one director, frames on demand. */

import { CameraControls } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { PerspectiveCamera } from 'three';
import { BayLabels, type BayNote } from './bay-labels.ts';
import type { DeckDirector, DeckLabels } from './deck-director.ts';
import { type LastFrame, probeSource } from './deck-probe.ts';
import { FieldLabels } from './field-labels.ts';
import { type LayerWords, LiftLabels } from './lift-labels.ts';
import { viewProbe } from './probe.ts';
import { dotsPerPixel, REST_MS, Sharpness } from './sharpness.ts';
import type { SiteWords } from './site-overlay.ts';
import type { WaterWords } from './water-marks.ts';

export interface DeckSceneProps {
  readonly director: DeckDirector;
  readonly overlay: HTMLElement;
  readonly bayNote: BayNote | null;
  readonly siteWords: SiteWords | null;
  readonly waterWords: WaterWords | null;
  readonly layerWords: LayerWords | null;
}

export function DeckScene({ director, overlay, bayNote, siteWords, waterWords, layerWords }: DeckSceneProps) {
  const gl = useThree((state) => state.gl);
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const sheet = useThree((state) => state.scene);
  const size = useThree((state) => state.size);
  const clock = useThree((state) => state.clock);
  const invalidate = useThree((state) => state.invalidate);
  const sharpness = useSharpness();
  const [labels, setLabels] = useState<DeckLabels | null>(null);
  const [controls, setControls] = useState<CameraControls | null>(null);

  useEffect(() => {
    const made = { bays: new BayLabels(overlay), field: new FieldLabels(overlay) };
    const lift = new LiftLabels(overlay);
    director.walk.setLabels(lift);
    setLabels(made);
    return () => {
      director.walk.setLabels(null);
      lift.dispose();
      made.field.dispose();
      made.bays.dispose();
    };
  }, [overlay, director]);

  useEffect(() => {
    labels?.bays.setNote(bayNote);
    if (siteWords !== null) director.site.setWords(siteWords);
    if (waterWords !== null) director.water.setWords(waterWords);
    if (layerWords !== null) director.walk.setWords(layerWords);
    director.reword();
    invalidate();
  }, [labels, director, bayNote, siteWords, waterWords, layerWords, invalidate]);

  const ask = useCallback(() => {
    sharpness.asked();
    director.walk.pace.asked(performance.now());
    invalidate();
  }, [sharpness, director, invalidate]);

  useEffect(() => {
    if (labels === null || controls === null) return;
    const easel = { gl, camera, sheet, controls, invalidate: ask, startClock: () => clock.getDelta() };
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
  }, [director, labels, controls, gl, camera, sheet, clock, ask]);

  useEffect(() => director.resize(size.width, size.height), [director, size.width, size.height]);

  useFrame(() => {
    const nowMs = performance.now();
    // First: what the director asks for is the next frame already.
    sharpness.drawn(nowMs);
    director.frame(nowMs);
    viewProbe.frames++;
  });

  return (
    <>
      <CameraControls ref={setControls} onChange={ask} />
      <primitive object={director.model.root} />
    </>
  );
}

/** Lets a slow machine keep up with the hands. */
function useSharpness(): { readonly asked: () => void; readonly drawn: (nowMs: number) => void } {
  const setDpr = useThree((state) => state.setDpr);
  const [sharpness] = useState(() => new Sharpness(dotsPerPixel()));
  const ratio = useRef(dotsPerPixel());
  const resting = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(resting.current), []);
  return useMemo(() => {
    const change = (to: number) => {
      if (to !== ratio.current) setDpr(to);
      ratio.current = to;
    };
    return {
      asked: () => sharpness.asked(performance.now()),
      drawn: (nowMs) => {
        change(sharpness.frame(nowMs));
        clearTimeout(resting.current);
        if (ratio.current < dotsPerPixel()) resting.current = setTimeout(() => change(sharpness.rest()), REST_MS);
      },
    };
  }, [sharpness, setDpr]);
}
