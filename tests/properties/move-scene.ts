/** The same scene elsewhere: every coordinate through one mapping, bearings turned with it. */

import type {
  Point3M,
  PointM,
  SceneFile,
  SceneFinish,
  SceneLevels,
  SceneObject,
  SceneStage,
  SceneZone,
} from '../../src/model/scene-file.ts';

interface Move {
  readonly point: (point: PointM) => PointM;
  /** Turn, counter-clockwise [°]. */
  readonly turnDeg: number;
}

function moveScene(scene: SceneFile, { point, turnDeg }: Move): SceneFile {
  const ring = (points: readonly PointM[]) => points.map(point);
  const spot = ([x, y, z]: Point3M): Point3M => [...point([x, y]), z];
  const net = (levels: SceneLevels): SceneLevels => ({
    ...levels,
    spots: levels.spots.map(spot),
    ...(levels.breaklines && { breaklines: levels.breaklines.map((line) => line.map(spot)) }),
  });
  const finish = (given: SceneFinish): SceneFinish => {
    if (given.kind === 'plane') return { ...given, at: spot(given.at), towardsDeg: (given.towardsDeg - turnDeg) % 360 };
    return given.kind === 'spots' ? { kind: 'spots', ...net(given) } : given;
  };
  const zone = (given: SceneZone): SceneZone => ({
    ...given,
    outline: ring(given.outline),
    ...(given.holes && { holes: given.holes.map(ring) }),
    ...(given.finish && { finish: finish(given.finish) }),
  });
  const object = (given: SceneObject): SceneObject => {
    if (given.kind === 'tree') return { ...given, at: point(given.at) };
    return given.kind === 'block' ? { ...given, outline: ring(given.outline) } : { ...given, line: ring(given.line) };
  };
  const stage = (given: SceneStage): SceneStage => ({
    ...given,
    ...(given.stockpiles && { stockpiles: given.stockpiles.map((pile) => ({ ...pile, outline: ring(pile.outline) })) }),
  });
  const { deck } = scene;
  return {
    ...scene,
    deck: {
      ...deck,
      outline: ring(deck.outline),
      ...(deck.openings && { openings: deck.openings.map(ring) }),
      ...(deck.levels && { levels: net(deck.levels) }),
      bays: deck.bays.map((bay) => ({ ...bay, outline: ring(bay.outline) })),
    },
    zones: scene.zones.map(zone),
    ...(scene.objects && { objects: scene.objects.map(object) }),
    ...(scene.stages && { stages: scene.stages.map(stage) }),
  };
}

export function shifted(scene: SceneFile, dx: number, dy: number): SceneFile {
  return moveScene(scene, { point: ([x, y]) => [x + dx, y + dy], turnDeg: 0 });
}

/** A quarter turn counter-clockwise about the origin, exact to the bit. */
export function turnedQuarter(scene: SceneFile): SceneFile {
  return moveScene(scene, { point: ([x, y]) => [-y, x], turnDeg: 90 });
}

/** Turned counter-clockwise about a point. */
export function turned(scene: SceneFile, deg: number, [ox, oy]: PointM): SceneFile {
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  const point = ([x, y]: PointM): PointM => [ox + cos * (x - ox) - sin * (y - oy), oy + sin * (x - ox) + cos * (y - oy)];
  return moveScene(scene, { point, turnDeg: deg });
}
