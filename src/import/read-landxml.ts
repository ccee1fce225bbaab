/** Reads survey data in LandXML: points, surfaces with their breaklines, outlines of parcels are left out. North comes before east. */

import { SaxesParser } from 'saxes';
import { type Gathering, StopReading } from './gathering.ts';
import { issueOf } from './issue-of.ts';
import type { LengthUnit } from './length-unit.ts';
import { MAX_DEPTH } from './limits.ts';
import type { Steps } from './steps.ts';
import { tellCut } from './truncation.ts';

export interface SurveyHead {
  readonly unit: LengthUnit | null;
}

const CHUNK = 65_536;
/** `linearUnit` of the element Units. */
const LINEAR: Readonly<Record<string, LengthUnit>> = {
  meter: 'm',
  centimeter: 'cm',
  millimeter: 'mm',
  kilometer: 'km',
  foot: 'ft',
  ussurveyfoot: 'ftUS',
  inch: 'in',
};
/** Elements that hold coordinates this reader has no use for. */
const LEFT_OUT = new Set(['Alignment', 'Parcel', 'PlanFeature', 'PipeNetwork', 'Roadway', 'Contour', 'GradeModel']);
const IN_3D = new Set(['PntList3D', 'P', 'CgPoint']);

/** Reads all of it into the gathering, in the file's units, east before north. */
export function* readLandXml(text: string, gather: Gathering): Steps<SurveyHead> {
  const reading = new SurveyReading(gather);
  for (let at = 0; at < text.length; at += CHUNK) {
    reading.write(text.slice(at, at + CHUNK));
    yield at / text.length;
  }
  return reading.close();
}

class SurveyReading {
  readonly #gather: Gathering;
  readonly #parser = new SaxesParser({ position: true });
  readonly #open: { readonly name: string; readonly attributes: Readonly<Record<string, string>> }[] = [];
  readonly #bad = { count: 0, found: '' };
  #unit: LengthUnit | null = null;
  #surface = '';
  #faces = 0;
  #kept = 0;
  #text = '';
  #closing = false;
  #cut = false;

  constructor(gather: Gathering) {
    this.#gather = gather;
    this.#parser.on('opentag', ({ name, attributes }) => this.#opened(name.replace(/^.*:/, ''), attributes as Record<string, string>));
    this.#parser.on('closetag', ({ name }) => this.#closed(name.replace(/^.*:/, '')));
    this.#parser.on('text', (piece) => {
      this.#text = piece;
    });
    this.#parser.on('doctype', (doctype) => {
      if (/<!ENTITY/i.test(doctype)) {
        throw new StopReading(issueOf('error', 'XML_ENTITIES', {}));
      }
    });
    this.#parser.on('error', (error) => this.#broken(error.message));
  }

  write(chunk: string): void {
    if (!this.#cut) this.#parser.write(chunk);
  }

  #broken(message: string): void {
    if (this.#closing) {
      this.#cut = true;
      return;
    }
    const problem = message.replace(/^\d+:\d+: /, '').slice(0, 100);
    throw new StopReading(issueOf('error', 'XML_DAMAGED', { line: this.#parser.line, problem }));
  }

  #opened(name: string, attributes: Readonly<Record<string, string>>): void {
    this.#open.push({ name, attributes });
    this.#text = '';
    if (this.#open.length > MAX_DEPTH) throw new StopReading(issueOf('error', 'TOO_DEEP', { most: MAX_DEPTH }));
    if (name === 'Metric' || name === 'Imperial') this.#unit = LINEAR[(attributes.linearUnit ?? '').toLowerCase()] ?? this.#unit;
    else if (name === 'Surface') {
      this.#surface = this.#gather.layerName(attributes.name ?? 'surface');
      this.#faces = 0;
    }
  }

  #closed(name: string): void {
    const inside = (outer: string) => this.#open.some((element) => element.name === outer);
    const { attributes } = this.#open[this.#open.length - 1] ?? { attributes: {} };
    if (LEFT_OUT.has(name)) this.#gather.ignored('survey', name, null);
    else if ([...LEFT_OUT].some(inside)) this.#text = '';
    else if (name === 'CgPoint') this.#point(attributes);
    else if (name === 'P' && inside('Pnts')) this.#numbers(3, (n, e, z) => this.#spot(this.#surface, [e, n, z ?? null]));
    else if (name === 'PntList3D' || name === 'PntList2D') this.#list(IN_3D.has(name) ? 3 : 2, inside);
    else if (name === 'F' && inside('Faces')) this.#faces += attributes.i === '1' ? 0 : 1;
    else if (name === 'Surface' && this.#faces > 0)
      this.#gather.mend('FACES_TO_POINTS', { count: this.#faces, surface: this.#surface }, this.#surface);
    this.#text = '';
    this.#open.pop();
  }

  #point(attributes: Readonly<Record<string, string>>): void {
    // A point may be a mere reference to another.
    if (this.#text.trim() === '') return;
    const layer = this.#gather.layerName(attributes.featureRef ?? attributes.code ?? 'CgPoints');
    const name = this.#gather.text(attributes.name ?? attributes.oID ?? '');
    const values = this.#text.trim().split(/\s+/).map(Number);
    if (values.length < 2 || !values.every(fits)) {
      this.#badNumber();
      return;
    }
    const [y, x, z] = values;
    this.#gather.add({ kind: 'point', layer, x, y, z: z ?? null, ...(name === '' ? {} : { name }) });
    this.#gather.used(layer, 'CgPoint');
    this.#kept += 1;
  }

  #spot(layer: string, [x, y, z]: readonly [number, number, number | null]): void {
    this.#gather.add({ kind: 'point', layer, x, y, z });
    this.#gather.used(layer, 'point of the surface');
    this.#kept += 1;
  }

  #list(size: 2 | 3, inside: (outer: string) => boolean): void {
    const layer = this.#surface || 'survey';
    if (inside('DataPoints')) {
      this.#numbers(size, (n, e, z) => this.#spot(layer, [e, n, z ?? null]));
      return;
    }
    const isEdge = inside('Boundary');
    if (!isEdge && !inside('Breakline')) {
      this.#gather.ignored(layer, 'list of points');
      return;
    }
    const points: number[] = [];
    const levels: number[] = [];
    const whole = this.#numbers(size, (n, e, z) => {
      points.push(e, n);
      if (z !== undefined) levels.push(z);
    });
    if (!whole || points.length < 4) return;
    const lineLayer = isEdge ? this.#gather.layerName(`${layer} boundary`) : layer;
    const leveled = levels.length === points.length / 2;
    this.#gather.add({
      kind: 'path',
      layer: lineLayer,
      closed: false,
      points,
      levels: leveled ? levels : null,
      curves: null,
      loose: isEdge,
    });
    this.#gather.used(lineLayer, isEdge ? 'Boundary' : 'Breakline');
    this.#kept += 1;
  }

  /** Hands on each group of numbers; false where the text does not come out even. */
  #numbers(size: 2 | 3, take: (n: number, e: number, z?: number) => void): boolean {
    const values = this.#text.trim().split(/\s+/).map(Number);
    if (values.length % size !== 0 || !values.every(fits)) {
      this.#badNumber();
      return false;
    }
    for (let i = 0; i < values.length; i += size) take(values[i], values[i + 1], size === 3 ? values[i + 2] : undefined);
    return true;
  }

  #badNumber(): void {
    this.#bad.count += 1;
    if (this.#bad.found === '') this.#bad.found = this.#text.trim().slice(0, 40);
  }

  close(): SurveyHead {
    this.#closing = true;
    const { line } = this.#parser;
    this.#parser.close();
    if (this.#cut && !tellCut(this.#gather, this.#kept, { unit: 'line', at: line })) this.#gather.shapes.length = 0;
    if (this.#bad.count > 0) {
      this.#gather.warning('NUMBER_BAD:survey', { ...this.#bad });
    }
    if (this.#kept > 0) this.#gather.mend('NORTH_EAST', {});
    return { unit: this.#unit };
  }
}

function fits(value: number): boolean {
  return Math.abs(value) <= 1e12;
}
