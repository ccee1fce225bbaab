/** Entry of the worker that reads files: its own, so that reading never holds up the calculation. */

import { expose } from 'comlink';
import { createImporter } from './importer.ts';

expose(createImporter());
