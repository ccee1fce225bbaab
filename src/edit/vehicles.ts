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
 * Adds a vehicle.
 * @param scene - scene
 * @param vehicle - all of it
 */
export const addVehicle = ({ vehicles = [] }: SceneFile, vehicle: SceneVehicle): ScenePatch => ({ vehicles: [...vehicles, vehicle] });

/**
 * Changes a vehicle.
 * @param scene - scene
 * @param id - vehicle
 * @param change - gives it anew, from what it is
 */
export function changeVehicle({ vehicles = [] }: SceneFile, id: string, change: (vehicle: SceneVehicle) => SceneVehicle): ScenePatch {
  return { vehicles: vehicles.map((vehicle) => (vehicle.id === id ? change(vehicle) : vehicle)) };
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
