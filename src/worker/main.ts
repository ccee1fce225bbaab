/** Entry of the worker: offers the engine to the page. */

import { expose } from 'comlink';
import { createEngine } from './engine.ts';

expose(createEngine());
