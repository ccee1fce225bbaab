/** Colours as other eyes and other surfaces show them: deficient colour vision, grey print, contrast, how far two look apart. */

export type Rgb = readonly [number, number, number];
export type Lab = readonly [number, number, number];
type Matrix = readonly [Rgb, Rgb, Rgb];

/**
 * Full loss of one kind of cone, on linear RGB. Source: Machado, Oliveira, Fernandes, "A Physiologically-based Model for
 * Simulation of Color Vision Deficiency", IEEE TVCG 15 (2009), doi 10.1109/TVCG.2009.113, matrices for severity 1.0.
 * Grade: secondary (as two open packages of colour tools print them, alike to the last digit; the page of the authors not opened).
 */
const MACHADO: Readonly<Record<'protan' | 'deutan' | 'tritan', Matrix>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Relative luminance of linear sRGB: WCAG 2.2, definition "relative luminance". */
const LUMINANCE: Rgb = [0.2126, 0.7152, 0.0722];

export const EYES = ['all', 'protan', 'deutan', 'tritan', 'grey'] as const;
export type Eye = (typeof EYES)[number];

/** Linear shares of `#RRGGBB`, by IEC 61966-2-1. */
export function linear(hex: string): Rgb {
  const bits = Number.parseInt(hex.slice(1), 16);
  return [bits >> 16, (bits >> 8) & 255, bits & 255].map((byte) => {
    const share = byte / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Rgb;
}

const dot = (a: Rgb, b: Rgb) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export function luminance(hex: string): number {
  return dot(LUMINANCE, linear(hex));
}

/** Ratio of WCAG 2.2, 1 … 21. */
export function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((p, q) => p - q) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/** Linear RGB as such an eye tells it apart. */
export function seenBy(eye: Eye, hex: string): Rgb {
  const rgb = linear(hex);
  if (eye === 'all') return rgb;
  if (eye === 'grey') {
    const grey = dot(LUMINANCE, rgb);
    return [grey, grey, grey];
  }
  return MACHADO[eye].map((row) => Math.min(1, Math.max(0, dot(row, rgb)))) as unknown as Rgb;
}

/** CIELAB under D65, from linear sRGB (IEC 61966-2-1 primaries). */
export function lab(rgb: Rgb): Lab {
  const x = dot([0.4124564, 0.3575761, 0.1804375], rgb) / 0.95047;
  const y = dot([0.2126729, 0.7151522, 0.072175], rgb);
  const z = dot([0.0193339, 0.119192, 0.9503041], rgb) / 1.08883;
  const [fx, fy, fz] = [x, y, z].map((t) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116)) as [number, number, number];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

const RAD = Math.PI / 180;
const hue = (b: number, a: number) => (a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / RAD + 360) % 360);

/** Mean of two hues [°], the short way round; of a colour without hue, the other one. */
function meanHue(h1: number, h2: number, chromatic: boolean): number {
  if (!chromatic) return h1 + h2;
  if (Math.abs(h1 - h2) <= 180) return (h1 + h2) / 2;
  return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
}

function hueStep(h1: number, h2: number, chromatic: boolean): number {
  if (!chromatic) return 0;
  const step = h2 - h1;
  return step > 180 ? step - 360 : step < -180 ? step + 360 : step;
}

/** Colour difference ΔE2000, after Sharma, Wu, Dalal, Color Research and Application 30 (2005) 21-30; kL = kC = kH = 1. */
export function difference2000([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const far7 = 25 ** 7;
  const mean7 = ((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2) ** 7;
  const stretch = 1.5 - 0.5 * Math.sqrt(mean7 / (mean7 + far7));
  const [c1, c2] = [Math.hypot(stretch * a1, b1), Math.hypot(stretch * a2, b2)];
  const [h1, h2] = [hue(b1, stretch * a1), hue(b2, stretch * a2)];
  const chromatic = c1 * c2 !== 0;
  const [l, c, h] = [(l1 + l2) / 2, (c1 + c2) / 2, meanHue(h1, h2, chromatic)];
  const t =
    1 -
    0.17 * Math.cos((h - 30) * RAD) +
    0.24 * Math.cos(2 * h * RAD) +
    0.32 * Math.cos((3 * h + 6) * RAD) -
    0.2 * Math.cos((4 * h - 63) * RAD);
  const dl = (l2 - l1) / (1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2));
  const dc = (c2 - c1) / (1 + 0.045 * c);
  const dh = (2 * Math.sqrt(c1 * c2) * Math.sin((hueStep(h1, h2, chromatic) / 2) * RAD)) / (1 + 0.015 * c * t);
  const turn = -2 * Math.sqrt(c ** 7 / (c ** 7 + far7)) * Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * RAD);
  return Math.sqrt(dl * dl + dc * dc + dh * dh + turn * dc * dh);
}

/** How far two colours look apart to such an eye. */
export function apart(eye: Eye, a: string, b: string): number {
  return difference2000(lab(seenBy(eye, a)), lab(seenBy(eye, b)));
}
