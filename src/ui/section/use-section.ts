/** Starts, shows and moves sections; the cut of the model goes with a straight one, and one taken from the cut goes with it. */

import { useEffect, useMemo } from 'react';
import type { PointM } from '../../model/scene-file.ts';
import { cutOfLine, lineOfCut } from '../facts/section-line.ts';
import { useScene, useStores, useView } from '../use-stores.ts';

export interface SectionActs {
  /** Begins to take points, from those of the section shown. */
  draw(): void;
  show(line: readonly PointM[]): void;
  /** Where the cut of the model stands. */
  showOfCut(): void;
  close(): void;
}

export function useSection(): SectionActs {
  const { scene, view } = useStores();
  return useMemo(
    () => ({
      draw: () => view.getState().drawSection([]),
      show: (line) => {
        const { snapshot } = scene.getState();
        const state = view.getState();
        state.showSection({ line, ofCut: false });
        if (snapshot === null) return;
        const cut = cutOfLine(line, snapshot.originM, snapshot.picture.boundsM);
        state.setCut(cut === null ? { on: false } : { on: true, ...cut });
        if (cut !== null) state.moveCamera({ lookDeg: cut.lookDeg });
      },
      showOfCut: () => {
        const { snapshot } = scene.getState();
        const state = view.getState();
        if (snapshot !== null) state.showSection({ line: lineOfCut(state.cut, snapshot.originM, snapshot.picture.boundsM), ofCut: true });
      },
      close: () => view.getState().closeSection(),
    }),
    [scene, view],
  );
}

/** A section taken from the cut goes with it; once the cut is off it stays where it is. */
export function useSectionOfCut(): void {
  const { view } = useStores();
  const cut = useView((state) => state.cut);
  const ofCut = useView((state) => state.section?.ofCut === true);
  const originM = useScene((state) => state.snapshot?.originM);
  const bounds = useScene((state) => state.snapshot?.picture.boundsM);
  useEffect(() => {
    const { section, showSection } = view.getState();
    if (!ofCut || section === null || originM === undefined || bounds === undefined) return;
    if (!cut.on) {
      showSection({ line: section.line, ofCut: false });
      return;
    }
    const line = lineOfCut(cut, originM, bounds);
    if (JSON.stringify(line) !== JSON.stringify(section.line)) showSection({ line, ofCut: true });
  }, [view, cut, ofCut, originM, bounds]);
}
