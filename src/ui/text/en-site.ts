/** Sentences of the site: how places are reached, open edges, lanes, retaining walls. */

import type { MapKind, ReachClass } from '../../model/maps.ts';
import type { SceneAccessPoint } from '../../model/scene-file.ts';
import { areaText, numberText } from '../format.ts';
import { many } from './en-words.ts';

const REACH: Readonly<Record<ReachClass, string>> = {
  driven: 'Plant drives there',
  lifted: 'By crane or hose only',
  unreached: 'Not reached',
  idle: 'Nothing to bring in this stage',
};

const REACH_SHORT: Readonly<Record<ReachClass, string>> = {
  driven: 'driven to',
  lifted: 'crane or hose',
  unreached: 'not reached',
  idle: 'nothing to bring',
};

const isReach = (id: string): id is ReachClass => id in REACH;

/** Maps of named classes. */
export const classes = {
  /** In a legend. Classes that have no words of their own are named by their id, like outlets. */
  name: (kind: MapKind, id: string) => (kind === 'reach' && isReach(id) ? REACH[id] : id),
  /** In a table. */
  short: (kind: MapKind, id: string) => (kind === 'reach' && isReach(id) ? REACH_SHORT[id] : id),
  area: (name: string, areaM2: number) => `${name}: ${areaText(areaM2)}`,
  caption: (quantity: string, stage: string) => `${quantity}. ${stage}.`,
  shown: (shown: number, all: number) => `${numberText(shown, 0)} of ${many(all, 'cell', 'cells')} shown`,
  everywhere: 'Whole deck',
  head: 'Class',
} as const;

const ACCESS: Readonly<Record<SceneAccessPoint['kind'], string>> = { ramp: 'ramp', crane: 'crane', blower: 'hose', gate: 'gate' };

export const site = {
  /** On the post of an access point. */
  post: ({ id, kind }: SceneAccessPoint) => `${id} ${ACCESS[kind]}`,
  plan: 'Site',
  planTitle: 'Site plan: ways of machines, access points, reach and open edges, while a stage is shown',
  band: 'within 2 m of an open edge',
  arrows: 'Arrows: laid from far to near, so that nothing laid is driven on',
  towards: (bearingDeg: number) => `laid towards ${numberText(bearingDeg, 0)}°`,
  reachGarden: 'Reach belongs to a stage: choose one on the rail. In the finished garden nothing more is brought.',
  reachNoAccess: 'The file names no gate, ramp, crane or hose, so reach is not looked at.',
  reachDerived: 'These stages are derived from the build-ups, so reach is not looked at.',
} as const;
