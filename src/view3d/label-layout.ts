/** Places labels beside the model, each with a leader to what it names: none on the model, none on another. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface LabelBox {
  /** What the label names, on the screen [CSS px]. */
  readonly anchor: Point;
  readonly width: number;
  readonly height: number;
}

export interface LabelPlace {
  /** Upper left corner. */
  readonly x: number;
  readonly y: number;
  readonly side: 'left' | 'right';
}

export interface LabelRoom {
  readonly width: number;
  readonly height: number;
  /** Points round the model on the screen; labels keep clear of the shape they span. */
  readonly outline: readonly Point[];
}

const GAP_PX = 3;
const CLEAR_PX = 14;
const MARGIN_PX = 6;

/** Corners of the smallest convex shape round some points, counter-clockwise where y goes up. */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (run: readonly Point[]) => {
    const chain: Point[] = [];
    for (const point of run) {
      while (chain.length >= 2 && turn(chain[chain.length - 2], chain[chain.length - 1], point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return sorted.length < 3 ? sorted : [...half(sorted), ...half(sorted.reverse())];
}

function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** Leftmost and rightmost of a convex shape between two heights; null where it is not that high or low. */
export function extent(hull: readonly Point[], top: number, bottom: number): readonly [number, number] | null {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  hull.forEach((a, i) => {
    const b = hull[(i + 1) % hull.length];
    const [low, high] = a.y < b.y ? [a, b] : [b, a];
    if (low.y > bottom || high.y < top) return;
    for (const y of [Math.max(top, low.y), Math.min(bottom, high.y)]) {
      const x = high.y === low.y ? high.x : low.x + ((y - low.y) / (high.y - low.y)) * (high.x - low.x);
      least = Math.min(least, x, high.y === low.y ? low.x : x);
      most = Math.max(most, x, high.y === low.y ? low.x : x);
    }
  });
  return least <= most ? [least, most] : null;
}

/** A row beside the model that a label may take. */
interface Row {
  readonly top: number;
  readonly x: number;
}

/** One place per label; null for a label without room, which is then not shown. */
export function labelPlaces(labels: readonly LabelBox[], room: LabelRoom): (LabelPlace | null)[] {
  const hull = convexHull(room.outline);
  const middle = hull.reduce((sum, point) => sum + point.x, 0) / Math.max(1, hull.length);
  const places: (LabelPlace | null)[] = labels.map(() => null);
  for (const side of ['left', 'right'] as const) {
    const mine = labels
      .map((label, i) => ({ label, i }))
      .filter(({ label }) => inSight(label.anchor, room) && label.anchor.x < middle === (side === 'left'))
      .sort((a, b) => a.label.anchor.y - b.label.anchor.y);
    const width = Math.max(0, ...mine.map(({ label }) => label.width));
    const height = Math.max(0, ...mine.map(({ label }) => label.height));
    const rows = freeRows(hull, room, { side, width, height });
    const chosen = rowsFor(
      mine.map(({ label }) => label.anchor.y - height / 2),
      rows.map((row) => row.top),
    );
    mine.forEach(({ label, i }, k) => {
      const row = rows[chosen[k]];
      if (row === undefined) return;
      // Right-hand edges of the labels on the left stand in line with the model's.
      places[i] = { x: side === 'left' ? row.x + width - label.width : row.x, y: row.top, side };
    });
  }
  return places;
}

/** Rows beside the model, from the top, in which a label of this size has room. */
function freeRows(hull: readonly Point[], room: LabelRoom, label: { side: 'left' | 'right'; width: number; height: number }): Row[] {
  const rows: Row[] = [];
  if (label.height === 0) return rows;
  for (let top = MARGIN_PX; top + label.height <= room.height - MARGIN_PX; top += label.height + GAP_PX) {
    const span = extent(hull, top - GAP_PX, top + label.height + GAP_PX);
    if (span === null) continue;
    const x = label.side === 'left' ? span[0] - CLEAR_PX - label.width : span[1] + CLEAR_PX;
    if (x >= MARGIN_PX && x + label.width <= room.width - MARGIN_PX) rows.push({ top, x });
  }
  return rows;
}

function inSight(point: Point, room: LabelRoom): boolean {
  return point.x >= 0 && point.x <= room.width && point.y >= 0 && point.y <= room.height;
}

/** Cost of leaving a label out [px²]; more than any way across a screen. */
const LEFT_OUT = 1e9;

/**
 * Gives labels to rows in the same order, so that leaders do not cross, with the shortest way over all.
 * @param wanted - heights the labels would like, rising
 * @param rows - heights of the free rows, rising
 * @returns row of each label; -1 where there are too few
 */
export function rowsFor(wanted: readonly number[], rows: readonly number[]): number[] {
  // best[i][k]: least cost of the labels from i on with the rows from k on.
  const best = Array.from({ length: wanted.length + 1 }, () => new Float64Array(rows.length + 1));
  for (let i = wanted.length - 1; i >= 0; i--) {
    for (let k = rows.length; k >= 0; k--) {
      const without = LEFT_OUT + best[i + 1][k];
      const later = k < rows.length ? best[i][k + 1] : Number.POSITIVE_INFINITY;
      const here = k < rows.length ? (rows[k] - wanted[i]) ** 2 + best[i + 1][k + 1] : Number.POSITIVE_INFINITY;
      best[i][k] = Math.min(without, later, here);
    }
  }
  const chosen: number[] = [];
  let k = 0;
  for (let i = 0; i < wanted.length; i++) {
    while (k < rows.length && best[i][k] === best[i][k + 1]) k++;
    const takes = k < rows.length && best[i][k] === (rows[k] - wanted[i]) ** 2 + best[i + 1][k + 1];
    chosen.push(takes ? k : -1);
    if (takes) k++;
  }
  return chosen;
}
