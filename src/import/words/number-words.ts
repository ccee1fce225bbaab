/** Numbers, sizes and places inside sentences on drawings, in English and German. */

import { countDe, countEn } from '../../model/count-text.ts';

export { countDe, countEn };

/** Rounded, without zeros at the end. */
const short = (value: number, decimals: number) => String(Number(value.toFixed(decimals)));

export const numberEn = (value: number, decimals = 3) => short(value, decimals);
export const numberDe = (value: number, decimals = 3) => short(value, decimals).replace('.', ',');

export interface Size {
  readonly width: number;
  readonly height: number;
}

export const sizeEn = ({ width, height }: Size) => `${short(width, 2)} × ${short(height, 2)}`;
export const sizeDe = (size: Size) => sizeEn(size).replaceAll('.', ',');

export interface Place {
  readonly x: number;
  readonly y: number;
}

export const placeEn = ({ x, y }: Place, decimals = 3) => `(${short(x, decimals)}, ${short(y, decimals)})`;
export const placeDe = ({ x, y }: Place, decimals = 3) => `(${numberDe(x, decimals)}; ${numberDe(y, decimals)})`;

/** With zeros at the end, as places are read off a plan. */
export const spotEn = ({ x, y }: Place) => `(${x.toFixed(2)}, ${y.toFixed(2)})`;
export const spotDe = ({ x, y }: Place) => `(${x.toFixed(2).replace('.', ',')}; ${y.toFixed(2).replace('.', ',')})`;

/** All of several things; of two "both". */
export const allEn = (count: number, more: string) => (count === 2 ? `Both ${more}` : `All ${countEn(count)} ${more}`);
export const allDe = (count: number, more: string) => (count === 2 ? `Beide ${more}` : `Alle ${countDe(count)} ${more}`);

/** Count with its noun. */
export const someEn = (count: number, one: string, more: string) => `${countEn(count)} ${count === 1 ? one : more}`;
export const someDe = (count: number, one: string, more: string) => `${countDe(count)} ${count === 1 ? one : more}`;
