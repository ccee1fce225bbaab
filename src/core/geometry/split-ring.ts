/** A simple polygon cut in two by a straight line: whole, simple pieces on either side, however many. */

/** Straight line: points with nx·x + ny·y = offset; n has length 1. */
export interface StraightLine {
  readonly nx: number;
  readonly ny: number;
  readonly offset: number;
}

export interface SplitRing {
  /** Pieces with nx·x + ny·y below the offset; x y per vertex, counter-clockwise. */
  readonly below: readonly (readonly number[])[];
  readonly above: readonly (readonly number[])[];
}

/** Vertices nearer to the line than this lie on it [m]. */
const ON_LINE_M = 1e-8;

interface Walked {
  readonly points: readonly number[];
  /** Distance of each vertex from the line, 0 where it lies on it. */
  readonly distances: readonly number[];
}

/**
 * Splits a ring. Both sides get the very same points on the line, so that their pieces meet without gap or overlap.
 * @param ring - simple polygon, x y per vertex, counter-clockwise, near the origin [m]
 * @param line - straight line, distances from it in metres [m]
 * @returns pieces on either side [m]
 * @source none: geometry; chains of vertices on one side, their ends joined in order along the line
 */
export function splitRing(ring: readonly number[], line: StraightLine): SplitRing {
  const walked = withCrossings(ring, line);
  return { below: piecesOf(walked, line, -1), above: piecesOf(walked, line, 1) };
}

function withCrossings(ring: readonly number[], { nx, ny, offset }: StraightLine): Walked {
  const distanceOf = (i: number) => {
    const distance = nx * ring[i] + ny * ring[i + 1] - offset;
    return Math.abs(distance) <= ON_LINE_M ? 0 : distance;
  };
  const points: number[] = [];
  const distances: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    const [here, next] = [distanceOf(i), distanceOf(j)];
    points.push(ring[i], ring[i + 1]);
    distances.push(here);
    if (here * next >= 0) continue;
    const share = here / (here - next);
    points.push(ring[i] + share * (ring[j] - ring[i]), ring[i + 1] + share * (ring[j + 1] - ring[i + 1]));
    distances.push(0);
  }
  return { points, distances };
}

interface Chain {
  /** Vertices strictly on the side and the vertex on the line before and after them. */
  readonly vertices: readonly number[];
  /** Place along the line of its first and last vertex. */
  readonly from: number;
  readonly to: number;
}

function piecesOf({ points, distances }: Walked, line: StraightLine, side: 1 | -1): number[][] {
  const count = distances.length;
  const isOn = (i: number) => distances[i % count] * side > 0;
  const start = distances.findIndex((_, i) => !isOn(i));
  if (start === -1) return [[...points]];
  // Seen with the side to the left, the line runs this way.
  const along = (i: number) => side * (line.ny * points[2 * (i % count)] - line.nx * points[2 * (i % count) + 1]);
  const chains: Chain[] = [];
  for (let i = start; i < start + count; i++) {
    if (isOn(i) || !isOn(i + 1)) continue;
    const vertices = [i % count];
    let end = i + 1;
    for (; isOn(end); end++) vertices.push(end % count);
    vertices.push(end % count);
    chains.push({ vertices, from: along(i), to: along(end) });
    i = end - 1;
  }
  return joinChains(chains, points);
}

/** With the side to the left, the boundary runs forward along the line from an end to the next beginning: in order, each end meets its beginning. */
function joinChains(chains: readonly Chain[], points: readonly number[]): number[][] {
  const byEnd = chains.map((_, i) => i).sort((a, b) => chains[a].to - chains[b].to);
  const byStart = chains.map((_, i) => i).sort((a, b) => chains[a].from - chains[b].from);
  const next = new Map(byEnd.map((chain, k) => [chain, byStart[k]]));
  const done = new Set<number>();
  const pieces: number[][] = [];
  for (let first = 0; first < chains.length; first++) {
    if (done.has(first)) continue;
    const piece: number[] = [];
    for (let at = first; !done.has(at); at = next.get(at)!) {
      done.add(at);
      for (const vertex of chains[at].vertices) put(piece, points[2 * vertex], points[2 * vertex + 1]);
    }
    if (piece.length > 2 && piece[0] === piece[piece.length - 2] && piece[1] === piece[piece.length - 1]) piece.length -= 2;
    if (piece.length >= 6) pieces.push(piece);
  }
  return pieces;
}

function put(piece: number[], x: number, y: number): void {
  const last = piece.length - 2;
  if (last >= 0 && piece[last] === x && piece[last + 1] === y) return;
  piece.push(x, y);
}
