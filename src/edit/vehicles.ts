/** Machines of the scene's own: added, changed, taken out. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneFile, SceneVehicle } from '../model/scene-file.ts';
import { nextId } from './next-id.ts';

export type SceneAxle = SceneVehicle['axles'][number];

export const nextVehicleId = ({ vehicles = [] }: SceneFile): string =>
  nextId(
    'M',
    vehicles.map(({ id }) => id),
  );

/**
 * Adds a vehicle, or exchanges the one of its id.
 * @param scene - scene
 * @param vehicle - all of it
 */
export function setVehicle({ vehicles = [] }: SceneFile, vehicle: SceneVehicle): ScenePatch {
  const at = vehicles.findIndex(({ id }) => id === vehicle.id);
  return { vehicles: at < 0 ? [...vehicles, vehicle] : vehicles.with(at, vehicle) };
}

/**
 * Takes a vehicle out. Where something still drives as it, the check of the scene refuses that and names the place.
 * @param scene - scene
 * @param id - vehicle
 */
export function removeVehicle({ vehicles = [] }: SceneFile, id: string): ScenePatch {
  const left = vehicles.filter((vehicle) => vehicle.id !== id);
  return { vehicles: left.length > 0 ? left : null };
}
