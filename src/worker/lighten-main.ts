/** Entry of the worker that lightens: its own, so that a search never holds up the calculation and can be ended. */

import { expose } from 'comlink';
import { createLightener } from './lightener.ts';

expose(createLightener());
