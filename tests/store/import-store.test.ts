/** The import store with the real importer in the same thread: answers, stopping, languages, a worker that dies. */

import { describe, expect, it, vi } from 'vitest';
import type { Importer, ReadAsk } from '../../src/model/importer.ts';
import { createImportStore } from '../../src/store/import-store.ts';
import { createSceneStore } from '../../src/store/scene-store.ts';
import { createViewStore } from '../../src/store/view-store.ts';
import { createEngine } from '../../src/worker/engine.ts';
import { createImporter } from '../../src/worker/importer.ts';
import { sceneOf } from '../helpers/scene-builder.ts';
import { dxf, inMetres, rectangle } from '../import/dxf-builder.ts';

const UNITLESS = dxf({ entities: [rectangle('Deck', 40_000, 30_000), rectangle('Holes', 1000, 1000, [5000, 5000])] });
const file = (name: string, text: string) => new File([text], name);

/** A store whose workers are counted; `change` puts another importer in. */
function setUp(change: (importer: Importer) => Partial<Importer> = () => ({})) {
  const view = createViewStore();
  const scene = createSceneStore(createEngine(), view);
  const stopped = vi.fn();
  const dies: ((why: Error) => void)[] = [];
  const start = vi.fn(() => {
    const importer = createImporter();
    const crash = new Promise<never>((_, reject) => dies.push(reject));
    return { importer: { ...importer, ...change(importer) }, stop: stopped, crash };
  });
  return { imports: createImportStore(start, scene, view), scene, view, start, stopped, dies };
}

/** Until neither reading nor drafting. */
const settled = ({ imports }: ReturnType<typeof setUp>) =>
  vi.waitFor(() => {
    const { share, drafting, draft } = imports.getState();
    expect([share, drafting, draft === null]).toEqual([null, false, false]);
  });

describe('a drawing', () => {
  it('is read, guessed, asked about; an answer reads it again and keeps chosen roles', async () => {
    const all = setUp();
    expect(await all.imports.getState().open(file('plan.dxf', UNITLESS))).toEqual({ kind: 'drawing' });
    expect(all.imports.getState()).toMatchObject({
      target: 'new',
      roles: { Deck: 'outline', Holes: 'openings' },
      draft: { counts: { outline: 1, openings: 1 } },
    });
    all.imports.getState().setRole('Holes', 'ignore');
    all.imports.getState().answer('unit', 'cm');
    await settled(all);
    const { read, roles, draft } = all.imports.getState();
    expect([read?.box?.maxX, roles, draft?.counts]).toEqual([400, { Deck: 'outline', Holes: 'ignore' }, { outline: 1 }]);
    expect(all.start).toHaveBeenCalledTimes(1);
  });

  it('becomes a scene with its history', async () => {
    const all = setUp();
    await all.imports.getState().open(file('plan.dxf', UNITLESS));
    const taken = await all.imports.getState().take('2026-03-09T10:15Z');
    const { deck, history } = JSON.parse(taken!.sceneText!);
    expect([deck.outline[2], history[0].on]).toEqual([[40, 30], '2026-03-09T10:15Z']);
    expect(history[0].says).toMatch(/^Read from "plan\.dxf"/);
  });

  it('speaks the language chosen, meanwhile or later', async () => {
    const all = setUp();
    const reading = all.imports.getState().open(file('plan.dxf', UNITLESS));
    all.view.getState().setLanguage('de');
    await reading;
    expect(all.imports.getState().read?.questions[0]?.says).toContain('Einheit');
    all.view.getState().setLanguage('en');
    await vi.waitFor(() => expect(all.imports.getState().read?.questions[0]?.says).toContain('unit'));
  });

  it('that lies apart is asked about only where it goes into the open scene', async () => {
    const all = setUp();
    await all.scene.getState().openText('open', JSON.stringify(sceneOf()));
    // The open deck reaches from 0 to 4 and 3; this one is mirrored against it.
    const below = dxf({ header: inMetres, entities: [rectangle('Deck', 4, 3, [0, -3.5])] });
    await all.imports.getState().open(file('below.dxf', below));
    const axes = () => all.imports.getState().read?.questions.find(({ id }) => id === 'axes')?.taken;
    expect([all.imports.getState().target, axes()]).toEqual(['new', 'xy']);
    all.imports.getState().setTarget('into');
    await settled(all);
    expect(axes()).toBe('x-y');
    all.imports.getState().setTarget('new');
    await settled(all);
    expect(axes()).toBe('xy');
  });

  it('levels go into the open scene, else nowhere', async () => {
    const csv = 'Nr;x;y;z\n1;0;0;1.20\n2;4;0;1.25\n3;4;3;1.30\n';
    const all = setUp();
    await all.imports.getState().open(file('levels.csv', csv));
    expect(all.imports.getState()).toMatchObject({ target: 'new', draft: { issues: [{ code: 'OUTLINE_MISSING' }] } });
    await all.scene.getState().openText('open', JSON.stringify(sceneOf()));
    await all.imports.getState().open(file('levels.csv', csv));
    expect(all.imports.getState()).toMatchObject({ target: 'into', draft: { counts: { levels: 3 }, issues: [] } });
  });
});

describe('what is no drawing', () => {
  it('a scene is handed on, with what was done to read it', async () => {
    const { imports } = setUp();
    const text = JSON.stringify(sceneOf());
    const utf16 = new Uint8Array(2 + 2 * text.length);
    utf16.set([0xff, 0xfe]);
    for (let i = 0; i < text.length; i++) utf16[2 + 2 * i] = text.charCodeAt(i);
    const opened = await imports.getState().open(new File([utf16], 'own.scene.json'));
    expect(opened).toMatchObject({ kind: 'scene', text, mends: [{ code: 'TEXT_DECODED' }] });
    expect(imports.getState().file).toBeNull();
  });

  it('anything else is refused', async () => {
    const opened = await setUp().imports.getState().open(file('plan.dwg', 'AC1032\0\0\0'));
    expect(opened).toMatchObject({ kind: 'refused', issues: [{ code: 'FILE_KIND' }] });
  });

  it('too large a file is refused by its ends alone', async () => {
    const large = (head: string) => {
      const part = (text: string) => new Blob([text]);
      const blob = {
        name: 'big',
        size: 5e8,
        slice: (from: number) => part(from === 0 ? head : '0'),
        arrayBuffer: () => Promise.reject(new Error('was read')),
      };
      return blob as unknown as File;
    };
    expect(await setUp().imports.getState().open(large('0\nSECTION\n'))).toMatchObject({
      issues: [{ code: 'FILE_TOO_LARGE', got: '500 MB' }],
    });
    expect(await setUp().imports.getState().open(large('AC1032\0'))).toMatchObject({
      issues: [{ code: 'FILE_KIND', got: 'a DWG drawing' }],
    });
  });

  it('a file that is gone cannot be read', async () => {
    const gone = { name: 'gone', size: 5, arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')) } as unknown as File;
    expect(await setUp().imports.getState().open(gone)).toEqual({ kind: 'unreadable' });
  });
});

describe('stopping', () => {
  const never = () => ({
    open: (_: Blob, __: string, ___: ReadAsk, onProgress: (share: number) => void) => new Promise<never>(() => onProgress(0.35)),
  });

  it('ends the worker, and the next file gets a new one', async () => {
    const all = setUp(never);
    const reading = all.imports.getState().open(file('large.dxf', '0'));
    expect(all.imports.getState()).toMatchObject({ share: 0.35, file: { name: 'large.dxf', bytes: 1 } });
    all.imports.getState().close();
    expect([all.stopped.mock.calls.length, all.imports.getState().file]).toEqual([1, null]);
    void reading;
    void all.imports.getState().open(file('other.dxf', '0'));
    expect(all.start).toHaveBeenCalledTimes(2);
  });

  it('a page that only shows keeps its worker for the next file', async () => {
    const all = setUp();
    await all.imports.getState().open(file('plan.dxf', UNITLESS));
    all.imports.getState().close();
    await all.imports.getState().open(file('plan.dxf', UNITLESS));
    expect([all.stopped.mock.calls.length, all.start.mock.calls.length]).toEqual([0, 1]);
  });

  it('a worker that dies is told, and the app goes on', async () => {
    const all = setUp(never);
    const reading = all.imports.getState().open(file('large.dxf', '0'));
    all.dies[0]!(new Error('out of memory'));
    expect(await reading).toEqual({ kind: 'crashed' });
    expect(all.imports.getState().file).toBeNull();
  });
});
