/** The model as GLB: one node per layer and zone, metres, Y up; what it weighs and where it lies stands in the extras. */

import { type Buffer, Document, type Material, WebIO } from '@gltf-transform/core';
import type { SectionSource } from '../mesh/section-source.ts';
import { ROLE_STYLE } from '../model/palette.ts';
import type { Part, PartKind, SolidMesh } from '../model/picture.ts';
import type { Project } from '../project/evaluate-project.ts';
import { type ModelExtras, modelExtras, standingKey } from './model-extras.ts';

/**
 * Writes the finished garden.
 * @param project - evaluated scene
 * @param source - its picture
 * @returns bytes of the file
 */
export async function modelGlb(project: Project, source: SectionSource): Promise<Uint8Array<ArrayBuffer>> {
  const document = new Document();
  document.getRoot().getAsset().generator = 'Loamdeck';
  const extras = modelExtras(project, source);
  const root = document.createNode(source.scene.name).setExtras({ ...extras.model });
  document.getRoot().setDefaultScene(document.createScene(source.scene.name).addChild(root));
  const draft = new Draft(document, source.picture.solids);
  const zones = new Map(
    source.input.zones.map(({ id }, z) => {
      const node = document.createNode(zoneName(source, z)).setExtras({ ...extras.zones[z] });
      root.addChild(node);
      return [id, { node, z }];
    }),
  );
  const taken = new Set<string>();
  source.picture.parts.forEach((part, index) => {
    if (part.stageTo >= 0) return;
    const zone = part.layer >= 0 ? zones.get(part.owner) : undefined;
    const name = freeName(zone === undefined ? partName(part) : `${zoneName(source, zone.z)} / ${part.name}`, taken);
    const node = document.createNode(name).setExtras({ ...extrasOf(part, extras, zone?.z) });
    const mesh = draft.mesh(index, part.kind, name);
    if (mesh !== null) node.setMesh(mesh);
    (zone?.node ?? root).addChild(node);
  });
  return (await new WebIO().writeBinary(document)) as Uint8Array<ArrayBuffer>;
}

function zoneName({ scene, input }: SectionSource, zone: number): string {
  return scene.zones[zone]?.name ?? input.zones[zone].id;
}

const partName = ({ kind, owner }: Part) => (owner === '' ? kind : `${owner} / ${kind}`);

/** The same words twice get a number. */
function freeName(name: string, taken: Set<string>): string {
  let free = name;
  for (let n = 2; taken.has(free); n++) free = `${name} (${n})`;
  taken.add(free);
  return free;
}

function extrasOf(part: Part, extras: ModelExtras, zone: number | undefined): object {
  if (zone !== undefined) return extras.layers[zone][part.layer];
  return { kind: part.kind, ...(extras.objects.get(standingKey(part.kind, part.owner)) ?? {}) };
}

/** Meshes and materials of one document. */
class Draft {
  private readonly buffer: Buffer;
  private readonly materials = new Map<PartKind, Material>();
  private readonly trianglesOf = new Map<number, number[]>();

  constructor(
    private readonly document: Document,
    private readonly solids: SolidMesh,
  ) {
    this.buffer = document.createBuffer();
    for (let t = 0; t < solids.triangles.length; t += 3) {
      const part = solids.parts[solids.triangles[t]];
      const known = this.trianglesOf.get(part);
      if (known) known.push(t);
      else this.trianglesOf.set(part, [t]);
    }
  }

  /** Null for a part without any solid. */
  mesh(part: number, kind: PartKind, name: string): ReturnType<Document['createMesh']> | null {
    const starts = this.trianglesOf.get(part);
    if (starts === undefined) return null;
    const place = new Map<number, number>();
    const indices = new Uint32Array(starts.length * 3);
    starts.forEach((t, i) => {
      for (let k = 0; k < 3; k++) {
        const vertex = this.solids.triangles[t + k];
        const known = place.get(vertex) ?? place.size;
        place.set(vertex, known);
        indices[3 * i + k] = known;
      }
    });
    const vertices = [...place.keys()];
    const accessor = (type: 'VEC3' | 'SCALAR', array: Float32Array<ArrayBuffer> | Uint32Array<ArrayBuffer>) =>
      this.document.createAccessor().setType(type).setArray(array).setBuffer(this.buffer);
    const primitive = this.document
      .createPrimitive()
      .setAttribute('POSITION', accessor('VEC3', this.positions(vertices)))
      .setAttribute('NORMAL', accessor('VEC3', this.normals(vertices)))
      .setIndices(accessor('SCALAR', indices))
      .setMaterial(this.material(kind));
    return this.document.createMesh(name).addPrimitive(primitive);
  }

  /** z up becomes Y up: X = x, Y = z, Z = -y. */
  private positions(vertices: readonly number[]): Float32Array<ArrayBuffer> {
    const { positions } = this.solids;
    return Float32Array.from(vertices.flatMap((v) => [positions[3 * v], positions[3 * v + 2], -positions[3 * v + 1]]));
  }

  private normals(vertices: readonly number[]): Float32Array<ArrayBuffer> {
    const { normals } = this.solids;
    return Float32Array.from(
      vertices.flatMap((v) => {
        const [x, y, z] = [normals[4 * v], normals[4 * v + 1], normals[4 * v + 2]];
        const length = Math.hypot(x, y, z) || 1;
        return [x / length, z / length, -y / length];
      }),
    );
  }

  private material(kind: PartKind): Material {
    const known = this.materials.get(kind);
    if (known !== undefined) return known;
    const [red, green, blue] = linear(ROLE_STYLE[kind].fill);
    const material = this.document
      .createMaterial(kind)
      .setBaseColorFactor([red, green, blue, 1])
      .setRoughnessFactor(0.9)
      .setMetallicFactor(0);
    this.materials.set(kind, material);
    return material;
  }
}

/** Colours of the palette are meant for screens; materials take them linear (IEC 61966-2-1). */
function linear(hex: string): [number, number, number] {
  const at = (start: number) => {
    const value = Number.parseInt(hex.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [at(1), at(3), at(5)];
}
