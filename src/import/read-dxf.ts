/** Reads a drawing in DXF (text form): units, layers, blocks and entities. */

import { type Block, placeBlocks } from './dxf-blocks.ts';
import { type BlockInsert, type EntitySink, readEntity } from './dxf-entities.ts';
import { BadNumber, Entity, TagReader } from './dxf-tags.ts';
import type { Gathering } from './gathering.ts';
import { DXF_UNITS, type LengthUnit } from './length-unit.ts';
import { partOf, type Steps } from './steps.ts';
import { tellCut } from './truncation.ts';
import { notedKind } from './words/kind-words.ts';

export interface DxfHead {
  /** Unit that the file gives, or null. */
  readonly unit: LengthUnit | null;
}

/** Pairs between two steps. */
const STEP = 5000;

/** Reads all of it into the gathering, in the file's units. */
export function* readDxf(text: string, gather: Gathering): Steps<DxfHead> {
  const reading = new DxfReading(text, gather);
  yield* partOf(reading.run(), 0, 0.8);
  yield* partOf(placeBlocks(reading.inserts, reading.blocks, gather), 0.8, 1);
  return { unit: DXF_UNITS[reading.unitCode] ?? null };
}

class DxfReading {
  readonly inserts: BlockInsert[] = [];
  readonly blocks = new Map<string, Block>();
  unitCode = 0;
  readonly #tags: TagReader;
  readonly #gather: Gathering;
  #section = '';
  #variable = '';
  #entity: Entity | null = null;
  #vertices: Entity[] = [];
  #polyline: Entity | null = null;
  #block: Block | null = null;
  #bad = { count: 0, line: 0, found: '' };
  #read = 0;

  constructor(text: string, gather: Gathering) {
    this.#tags = new TagReader(text);
    this.#gather = gather;
  }

  *run(): Steps<void> {
    const tags = this.#tags;
    let steps = 0;
    while (tags.next()) {
      if (tags.code === 0) this.#begin(tags.value);
      else if (this.#entity !== null) this.#entity.push(tags.code, tags.value);
      else this.#headTag(tags.code, tags.value);
      steps += 1;
      if (steps % STEP === 0) yield tags.share;
    }
    // The entity at which the text is cut off is not whole.
    if (!tags.cut && tags.damagedLine === null) this.#endEntity();
    this.#endPolyline();
    this.#tellDamage();
  }

  #headTag(code: number, value: string): void {
    if (code === 2 && this.#section === '?') this.#section = value.toUpperCase();
    else if (code === 9) this.#variable = value;
    else if (code === 70 && this.#variable === '$INSUNITS') this.unitCode = Number(value);
  }

  #begin(type: string): void {
    this.#endEntity();
    if (type === 'SECTION') {
      this.#endPolyline();
      this.#section = '?';
    } else if (type === 'ENDSEC') {
      this.#endPolyline();
      this.#section = '';
    } else if (this.#section === 'TABLES' || this.#section === 'BLOCKS' || this.#section === 'ENTITIES') {
      this.#entity = new Entity(type, this.#tags.line);
    }
  }

  #endEntity(): void {
    const entity = this.#entity;
    this.#entity = null;
    if (entity === null) return;
    try {
      if (this.#section === 'TABLES') this.#tableEntry(entity);
      else this.#drawn(entity);
    } catch (error) {
      if (!(error instanceof BadNumber)) throw error;
      if (this.#bad.count === 0) this.#bad = { count: 0, line: entity.line, found: error.found };
      this.#bad.count += 1;
      this.#gather.ignored(this.#gather.layerName(entity.text(8, '0')), entity.type, 'with a bad number');
    }
  }

  #tableEntry(entity: Entity): void {
    if (entity.type !== 'LAYER') return;
    const frozen = (entity.number(70) & 1) === 1;
    if (entity.text(2) !== '') this.#gather.layer(this.#gather.layerName(entity.text(2))).hidden = frozen || entity.number(62, 7) < 0;
  }

  #drawn(entity: Entity): void {
    if (entity.type === 'VERTEX' && this.#polyline !== null) {
      this.#vertices.push(entity);
      return;
    }
    this.#endPolyline();
    if (entity.type === 'BLOCK') this.#beginBlock(entity);
    else if (entity.type === 'ENDBLK') this.#block = null;
    else if (entity.type === 'POLYLINE') this.#polyline = entity;
    else if (this.#section !== 'BLOCKS' || this.#block !== null) {
      this.#countRead();
      readEntity(entity, this.#sink);
    }
  }

  #beginBlock(entity: Entity): void {
    const name = entity.text(2);
    const isReference = (entity.number(70) & 4) !== 0;
    this.#block = { base: [entity.number(10), entity.number(20)], isReference, shapes: [], inserts: [] };
    // The two spaces of the drawing are blocks by name only.
    if (!/^[*$](?:MODEL|PAPER)_?SPACE/i.test(name)) this.blocks.set(name.toUpperCase(), this.#block);
  }

  #endPolyline(): void {
    const polyline = this.#polyline;
    this.#polyline = null;
    const vertices = this.#vertices;
    this.#vertices = [];
    if (polyline === null) return;
    this.#countRead();
    readEntity(polyline, this.#sink, vertices);
  }

  #countRead(): void {
    this.#read += 1;
  }

  readonly #sink: EntitySink = {
    used: (shapes, layer, kind) => {
      this.#gather.used(layer, this.#block === null ? kind : notedKind(kind, 'in a block'));
      if (this.#block !== null) this.#block.shapes.push(...shapes);
      else for (const shape of shapes) this.#gather.add(shape);
    },
    ignored: (layer, kind, note) => this.#gather.ignored(layer, kind, note),
    insert: (insert) => (this.#block?.inserts ?? this.inserts).push(insert),
    layerName: (raw) => this.#gather.layerName(raw),
    text: (raw) => this.#gather.text(raw),
  };

  #tellDamage(): void {
    const { count, line, found } = this.#bad;
    if (count > 0) {
      this.#gather.warning('NUMBER_BAD', { count, found }, { line });
    }
    const tags = this.#tags;
    if (tags.damagedLine !== null) {
      this.#gather.error('DXF_DAMAGED', { found: this.#gather.text(tags.damagedLine), count: this.#read }, { line: tags.line });
    } else if (tags.cut) {
      tellCut(this.#gather, this.#read, { unit: 'line', at: tags.line });
    }
  }
}
