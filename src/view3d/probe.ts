/** What tests may read of the 3D view. Nothing here changes anything. */

export interface DrawnHeights {
  readonly owner: string;
  readonly layer: number;
  readonly name: string;
  readonly shown: boolean;
  /** Lift of its lower and its upper surface as the shader has it now [m]. */
  readonly lowerLiftM: number;
  readonly upperLiftM: number;
  /** Lowest and highest vertex as drawn now [m]. */
  readonly lowestM: number;
  readonly highestM: number;
}

export interface DrawnVehicle {
  readonly run: string;
  /** Foot of its front axle, or of its support, as it stands on the screen, local [m]. */
  readonly atM: readonly [number, number, number];
}

/** A view on the page; a new one takes the place of the old. */
export interface ProbeSource {
  /** Draw calls and triangles of the last frame. */
  drawing(): { readonly calls: number; readonly triangles: number };
  memory(): { readonly geometries: number; readonly textures: number };
  cameraPosition(): readonly [number, number, number];
  parts(): readonly DrawnHeights[];
  /** Middle of a cell on the uppermost surface drawn there, from the upper left corner of the canvas [CSS px]. */
  projectCell(cell: number): readonly [number, number] | null;
  /** Vehicles in the picture. */
  vehicles(): readonly DrawnVehicle[];
  /** Corners of the patches of wheels as drawn, from the upper left corner of the canvas [CSS px]. */
  patches(): readonly (readonly (readonly [number, number])[])[];
  /** Height of the water of a blocked outlet as drawn, local; null where none is [m]. */
  waterM(): number | null;
  /** Red, green and blue at points x, y of the canvas [CSS px], all from one fresh drawing. */
  readPixels(points: readonly (readonly [number, number])[]): readonly (readonly [number, number, number])[];
}

export interface ViewProbe {
  /** Frames drawn on the screen since the page was opened. */
  frames: number;
  source: ProbeSource | null;
}

export const viewProbe: ViewProbe = { frames: 0, source: null };
