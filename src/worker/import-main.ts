/** Entry of the worker that reads files: its own, so that reading never holds up the calculation. */

import { expose } from 'comlink';
import wasmUrl from 'web-ifc/web-ifc.wasm?url';
import { loadMesher } from '../import/ifc/web-ifc-mesher.ts';
import { createImporter } from './importer.ts';

expose(createImporter(() => loadMesher(wasmUrl)));
