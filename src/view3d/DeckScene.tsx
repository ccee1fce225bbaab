/** Hangs the deck into the canvas: one model, one director, frames on demand. */

import { CameraControls } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { PerspectiveCamera } from 'three';
import { BayLabels, type BayNote } from './bay-labels.ts';
import type { DeckDirector, DeckLabels } from './deck-director.ts';
import { type LastFrame, probeSource } from './deck-probe.ts';
import { FieldLabels } from './field-labels.ts';
import { FrameCost } from './frame-cost.ts';
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
  const [cost] = useState(() => new FrameCost());
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

  useEffect(() => {
    if (labels === null || controls === null) return;
    const easel = { gl, camera, sheet, controls, invalidate, startClock: () => clock.getDelta() };
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
  }, [director, labels, controls, gl, camera, sheet, clock, invalidate]);

  useEffect(() => director.resize(size.width, size.height), [director, size.width, size.height]);

  useFrame(() => {
    const nowMs = performance.now();
    const tookMs = cost.begin(nowMs);
    sharpness(tookMs);
    director.walk.took(tookMs);
    director.frame(nowMs);
    viewProbe.frames++;
  });

  return (
    <>
      <CameraControls ref={setControls} onChange={() => invalidate()} />
      <primitive object={director.model.root} />
    </>
  );
}

/** Lets a slow machine keep up with the hands. */
function useSharpness(): (tookMs: number) => void {
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
    return (tookMs) => {
      change(sharpness.frame(tookMs));
      clearTimeout(resting.current);
      // Between two slow frames the picture does not stand still.
      const restMs = Math.max(REST_MS, 2 * tookMs);
      if (ratio.current < dotsPerPixel()) resting.current = setTimeout(() => change(sharpness.rest()), restMs);
    };
  }, [sharpness, setDpr]);
}
