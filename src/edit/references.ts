/** Renaming and removing parts, with all that refers to them. */

import type { EditPart, ScenePatch } from '../model/history.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';

/** A part that refers to another. */
export interface Use extends Selected {}

/**
 * Who refers to a part: zones to a build-up, layers, stockpiles and probes to a material, stages to zones and objects, bays, routes, set-up areas and plant to a vehicle.
 * @param scene - the scene
 * @param part - kind of the part referred to
 * @param id - its id
 * @returns the parts that name it, each once
 */
export declare function usesOf(scene: SceneFile, part: EditPart, id: string): readonly Use[];

/**
 * Gives a part another id and carries all references along. Whether the id is free and well formed is for the check of the scene to say.
 * @param scene - the scene
 * @param part - kind of the part; openings, levels, plant and layers have no id and stay
 * @param from - id it has
 * @param to - id it gets
 * @returns what changes
 */
export declare function renamed(scene: SceneFile, part: EditPart, from: string, to: string): ScenePatch;

/**
 * Takes parts out, and out of what stages place. A build-up, material or vehicle that is still used elsewhere goes too, and the check of the scene
 * then refuses and names who uses it (see `usesOf`). The outline of the deck stays.
 * @param scene - the scene
 * @param selected - the parts; indices (openings, levels, plant) as they stand now
 * @returns what changes
 */
export declare function removed(scene: SceneFile, selected: readonly Selected[]): ScenePatch;
