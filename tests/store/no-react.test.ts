/** The stores work where React can't be had. */

import { expect, it, vi } from 'vitest';
import { emptyEngine } from './fake-engine.ts';

const { refuse } = vi.hoisted(() => ({
  refuse: (name: string) => () => {
    throw new Error(`${name} was loaded`);
  },
}));
vi.mock('react', refuse('react'));
vi.mock('react-dom', refuse('react-dom'));

it('without React both stores load and work', async () => {
  // Test files share their modules: what another one has loaded would not be loaded again.
  vi.resetModules();
  // Vitest wraps what a mock throws; either way nothing of React comes through.
  await expect(import('react')).rejects.toThrow();
  const { createViewStore } = await import('../../src/store/view-store.ts');
  const { createSceneStore } = await import('../../src/store/scene-store.ts');
  const view = createViewStore();
  const scene = createSceneStore(emptyEngine(), view);
  view.getState().setExplode(0.4);
  await scene.getState().openText('a', '');
  expect([view.getState().explode, scene.getState().status]).toEqual([0.4, 'empty']);
});
