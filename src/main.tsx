/** Starts the app: worker, stores, panels, and the 3D view once the panels stand. */

import '@fontsource/barlow/latin-400.css';
import '@fontsource/barlow/latin-500.css';
import '@fontsource/barlow/latin-600.css';
import '@fontsource/barlow-condensed/latin-500.css';
import '@fontsource/barlow-condensed/latin-600.css';
import { proxy, type Remote, wrap } from 'comlink';
import { lazy, StrictMode, Suspense, useMemo } from 'react';
import { createRoot } from 'react-dom/client';
import { useStore } from 'zustand';
import type { Engine } from './model/engine.ts';
import type { Importer } from './model/importer.ts';
import type { Language } from './model/language.ts';
import type { Lightener } from './model/lightener.ts';
import type { SceneSetUpArea } from './model/scene-file.ts';
import { createImportStore, type ImportWorker } from './store/import-store.ts';
import type { LightenWorker } from './store/lightening.ts';
import { createSceneStore } from './store/scene-store.ts';
import { createViewStore } from './store/view-store.ts';
import { App } from './ui/App.tsx';
import { shownBy } from './ui/address.ts';
import { isLink } from './ui/file/scene-link.ts';
import { keptUnits } from './ui/kept-units.ts';
import { followLanguage, startLanguage } from './ui/language.ts';
import { t, textsOf } from './ui/text/text.ts';
import { viewProbe } from './view3d/probe.ts';

const files = import.meta.glob<string>('/scenes/*.scene.json', { query: '?raw', import: 'default' });
/** Small first: the newcomer's scene is the one that opens. */
const DEMO_ORDER = ['terrace', 'courtyard', 'problem-deck', 'district'];
const demos = Object.entries(files)
  .map(([path, load]) => ({ id: path.slice('/scenes/'.length, -'.scene.json'.length), load }))
  .sort((a, b) => DEMO_ORDER.indexOf(a.id) - DEMO_ORDER.indexOf(b.id))
  .map(({ id, load }) => ({
    id,
    load,
    get name() {
      return t.scenes.demoName(id);
    },
  }));

const engine: Remote<Engine> = wrap<Engine>(new Worker(new URL('./worker/main.ts', import.meta.url), { type: 'module' }));
const view = createViewStore(startLanguage(), keptUnits());
followLanguage(view);
const scene = createSceneStore(engine, view, startLightener);
const imports = createImportStore(startImporter, scene, view);

const DeckView = lazy(() => import('./view3d/DeckView.tsx').then((module) => ({ default: module.DeckView })));

/** The model with its words in the language spoken; new words never make a new canvas. */
function Deck() {
  const language = useStore(view, (state) => state.language);
  const words = useMemo(() => wordsOfModel(language), [language]);
  return (
    <Suspense fallback={null}>
      <DeckView scene={scene} view={view} {...words} />
    </Suspense>
  );
}

const wordsOfModel = (language: Language) => {
  const { tools, bays, site, areas, classes, water, walk } = textsOf(language);
  return {
    label: tools.region,
    bayNote: bays.note,
    siteWords: { post: site.post, area: ({ id, kind }: SceneSetUpArea) => areas.label(id, kind), mapClass: classes.onModel },
    waterWords: water.marks,
    layerWords: walk.layer,
  };
};

const root = document.getElementById('root');
if (root === null) throw new Error('main: index.html has no element with the id "root"');
createRoot(root).render(
  <StrictMode>
    <App scene={scene} view={view} imports={imports} demos={demos} canvas={<Deck />} />
  </StrictMode>,
);

const wanted = new URLSearchParams(location.search).get('scene') ?? DEMO_ORDER[0];
const first = demos.find((demo) => demo.id === wanted) ?? demos[0];
// The scene of a link is opened by the page itself, with a word where the link is damaged.
if (first && !isLink(location.hash)) void open(first);

/** Its worker comes with the first file. */
function startImporter(): ImportWorker {
  const worker = new Worker(new URL('./worker/import-main.ts', import.meta.url), { type: 'module' });
  const remote = wrap<Importer>(worker);
  const importer: Importer = {
    open: (file, name, ask, onProgress) => remote.open(file, name, ask, proxy(onProgress)),
    again: (ask, onProgress) => remote.again(ask, proxy(onProgress)),
    told: (language) => remote.told(language),
    draft: (ask) => remote.draft(ask),
    take: (ask, on) => remote.take(ask, on),
    forget: () => remote.forget(),
  };
  return { importer, crash: crashOf(worker), stop: () => worker.terminate() };
}

/** Its worker comes with each search and goes with it. */
function startLightener(): LightenWorker {
  const worker = new Worker(new URL('./worker/lighten-main.ts', import.meta.url), { type: 'module' });
  const remote = wrap<Lightener>(worker);
  const lightener: Lightener = { lighten: (ask, onProgress) => remote.lighten(ask, proxy(onProgress)) };
  return { lightener, crash: crashOf(worker), stop: () => worker.terminate() };
}

function crashOf(worker: Worker): Promise<never> {
  return new Promise<never>((_, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message)));
  });
}

async function open(demo: (typeof demos)[number]): Promise<void> {
  await scene.getState().openText(demo.name, await demo.load());
  const show = shownBy(new URLSearchParams(location.search).get('show') ?? '');
  if (show?.kind === 'walk') view.getState().startWalk();
  if (show?.kind === 'talk') view.getState().showCard(0);
  if (show?.kind === 'edit') view.getState().edit(show.editor);
  if (show?.kind === 'sheet') view.getState().showSheet(show.sheet);
}

// Once everything is shown: keeping the app on the device must not slow its start.
if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  // Where the browser refuses, the app works as long as there is a network.
  window.addEventListener('load', () => void navigator.serviceWorker.register(`${import.meta.env.BASE_URL}sw.js`).catch(() => null));
}

/** For tests in a real browser: read only, so that they compare numbers and not pictures alone. */
Object.defineProperty(window, '__loamdeck', {
  value: {
    scene: () => scene.getState(),
    view: () => view.getState(),
    imports: () => imports.getState(),
    probe: viewProbe,
    get ready() {
      const { canvas } = view.getState();
      // On a phone the editor takes the model's room: it is first drawn when it is seen.
      const isHidden = document.querySelector('.view-canvas')?.checkVisibility() === false;
      return scene.getState().status === 'ready' && (canvas === 'ready' || canvas === 'unavailable' || isHidden);
    },
  },
});
