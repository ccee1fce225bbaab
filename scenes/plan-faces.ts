/** Cuts a plan drawn as lines into faces whose outlines share every vertex, rounded to the millimetre. */

export type Point = readonly [number, number];
export interface Face {
  readonly outline: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  readonly areaM2: number;
}

const roundMm = (value: number): number => Math.round(value * 1000) / 1000;
const keyOf = ([x, y]: Point): string => `${roundMm(x)} ${roundMm(y)}`;

/** Faces between lines. Every end of a line must lie on another line: a loose end is an error in the drawing. */
export function planFaces(lines: readonly (readonly Point[])[]): Face[] {
  const nodes = new Map<string, { at: Point; next: Set<string> }>();
  const nodeAt = (at: Point): string => {
    const key = keyOf(at);
    if (!nodes.has(key)) nodes.set(key, { at: [roundMm(at[0]), roundMm(at[1])], next: new Set() });
    return key;
  };
  for (const piece of splitSegments(lines)) {
    const [a, b] = [nodeAt(piece[0]), nodeAt(piece[1])];
    if (a === b) continue;
    nodes.get(a)?.next.add(b);
    nodes.get(b)?.next.add(a);
  }
  for (const [key, node] of nodes) if (node.next.size < 2) throw new RangeError(`planFaces: loose end at ${key}`);
  return facesOf(nodes);
}

/** Segments cut where they cross or touch each other. */
function splitSegments(lines: readonly (readonly Point[])[]): [Point, Point][] {
  const segments = lines.flatMap((line) => line.slice(1).map((to, i): [Point, Point] => [line[i] as Point, to]));
  const cuts = segments.map(([from, to]) => [from, to]);
  for (let i = 0; i < segments.length; i++) {
    for (let j = i + 1; j < segments.length; j++) {
      for (const at of meetings(segments[i] as [Point, Point], segments[j] as [Point, Point])) {
        cuts[i]?.push(at);
        cuts[j]?.push(at);
      }
    }
  }
  return segments.flatMap(([from, to], i) => {
    const along = (p: Point): number => (p[0] - from[0]) * (to[0] - from[0]) + (p[1] - from[1]) * (to[1] - from[1]);
    const sorted = (cuts[i] as Point[]).sort((p, q) => along(p) - along(q));
    return sorted.slice(1).map((p, k): [Point, Point] => [sorted[k] as Point, p]);
  });
}

function meetings([a, b]: [Point, Point], [c, d]: [Point, Point]): Point[] {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const near = (p: Point, [from, to]: [Point, Point]): boolean => {
    const [wx, wy] = [to[0] - from[0], to[1] - from[1]];
    const t = ((p[0] - from[0]) * wx + (p[1] - from[1]) * wy) / (wx * wx + wy * wy);
    return t > 0 && t < 1 && Math.hypot(from[0] + t * wx - p[0], from[1] + t * wy - p[1]) < 0.0008;
  };
  const touching = [c, d].filter((p) => near(p, [a, b])).concat([a, b].filter((p) => near(p, [c, d])));
  if (touching.length > 0) return touching;
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-9) return [];
  const s = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / cross;
  const t = ((c[0] - a[0]) * uy - (c[1] - a[1]) * ux) / cross;
  return s > 0 && s < 1 && t > 0 && t < 1 ? [[a[0] + s * ux, a[1] + s * uy]] : [];
}

function facesOf(nodes: ReadonlyMap<string, { at: Point; next: ReadonlySet<string> }>): Face[] {
  const place = (key: string): Point => (nodes.get(key) as { at: Point }).at;
  const turned = new Map<string, string[]>();
  for (const [key, node] of nodes) {
    const angle = (to: string): number => Math.atan2(place(to)[1] - node.at[1], place(to)[0] - node.at[0]);
    turned.set(
      key,
      [...node.next].sort((p, q) => angle(p) - angle(q)),
    );
  }
  const seen = new Set<string>();
  const loops: Point[][] = [];
  for (const [start, node] of nodes) {
    for (const second of node.next) {
      if (seen.has(`${start}|${second}`)) continue;
      const loop: Point[] = [];
      let [from, to] = [start, second];
      while (!seen.has(`${from}|${to}`)) {
        seen.add(`${from}|${to}`);
        loop.push(place(from));
        const fan = turned.get(to) as string[];
        const next = fan[(fan.indexOf(from) + fan.length - 1) % fan.length] as string;
        [from, to] = [to, next];
      }
      loops.push(loop);
    }
  }
  const outer = loops.filter((loop) => areaOf(loop) > 0).map((outline) => ({ outline, holes: [] as Point[][] }));
  for (const island of loops.filter((loop) => areaOf(loop) < 0)) {
    const inside = outer
      .filter(({ outline }) => !outline.some((p) => keyOf(p) === keyOf(island[0] as Point)) && contains(outline, island[0] as Point))
      .sort((p, q) => areaOf(p.outline) - areaOf(q.outline));
    inside[0]?.holes.push([...island].reverse());
  }
  return outer.map(({ outline, holes }) => ({
    outline,
    holes,
    areaM2: areaOf(outline) - holes.reduce((sum, hole) => sum + areaOf(hole), 0),
  }));
}

/** Signed area, taken from the first point so that large coordinates lose nothing. */
export function areaOf(ring: readonly Point[]): number {
  const [x0, y0] = ring[0] as Point;
  return ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length] as Point;
    return sum + ((x - x0) * (nextY - y0) - (nextX - x0) * (y - y0)) / 2;
  }, 0);
}

export function contains(ring: readonly Point[], [x, y]: Point): boolean {
  let inside = false;
  ring.forEach(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length] as Point;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}

/** The face a point lies in. */
export function faceAt(faces: readonly Face[], at: Point): Face {
  const found = faces.filter(({ outline, holes }) => contains(outline, at) && !holes.some((hole) => contains(hole, at)));
  if (found.length !== 1) throw new RangeError(`faceAt: ${found.length} faces at ${at}`);
  return found[0] as Face;
}

/** Part of an ellipse as a polyline; angles counter-clockwise from +x [°]. */
export function arc(centre: Point, radii: Point, [fromDeg, toDeg]: Point, steps: number): Point[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = ((fromDeg + ((toDeg - fromDeg) * i) / steps) * Math.PI) / 180;
    return [roundMm(centre[0] + radii[0] * Math.cos(angle)), roundMm(centre[1] + radii[1] * Math.sin(angle))] as const;
  });
}

export function rectangle([x0, y0]: Point, [x1, y1]: Point): Point[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
    [x0, y0],
  ];
}

/** The line from one point towards another, ending where it first meets one of the polylines. */
export function until(from: Point, towards: Point, polylines: readonly (readonly Point[])[]): Point[] {
  const far = (p: Point): number => Math.hypot(p[0] - from[0], p[1] - from[1]);
  const met = polylines
    .flatMap((line) => line.slice(1).flatMap((to, i) => meetings([from, towards], [line[i] as Point, to])))
    .filter((p) => far(p) > 0.002)
    .sort((p, q) => far(p) - far(q));
  if (met[0] === undefined) throw new RangeError(`until: nothing met from ${from} to ${towards}`);
  return [from, met[0]];
}
