/** The two stores for every component below the app. */

import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { ImportActions, ImportState, ImportStore } from '../store/import-store.ts';
import type { SceneActions, SceneState, SceneStore } from '../store/scene-store.ts';
import type { ViewActions, ViewState, ViewStore } from '../store/view-store.ts';

export interface Stores {
  readonly scene: SceneStore;
  readonly view: ViewStore;
  readonly imports: ImportStore;
}

export const StoresContext = createContext<Stores | null>(null);

export function useStores(): Stores {
  const stores = useContext(StoresContext);
  if (stores === null) throw new RangeError('useStores: must be used below <App>');
  return stores;
}

export function useScene<T>(select: (state: SceneState & SceneActions) => T): T {
  return useStore(useStores().scene, select);
}

export function useView<T>(select: (state: ViewState & ViewActions) => T): T {
  return useStore(useStores().view, select);
}

export function useImports<T>(select: (state: ImportState & ImportActions) => T): T {
  return useStore(useStores().imports, select);
}
