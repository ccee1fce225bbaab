/** What was found in a scene file, in English: by what is meant, with its values. */

import { countEn } from '../../model/count-text.ts';
import type { Phrase } from '../../model/issue.ts';
import { KINDS_EN as KINDS, type Kind } from './kinds.ts';
import { namesEn as names } from './names.ts';
import type { Names, Tell, Text } from './phrase-values.ts';

export const FOUND_EN = {
  furtherMessages: (v: { readonly n: number }) => (v.n === 1 ? `${countEn(v.n)} further message` : `${countEn(v.n)} further messages`),
  materialTwoWeights: (v: { readonly id: Text }) => `material "${v.id}" with "density" and "areal"`,
  materialNoWeight: (v: { readonly id: Text }) => `material "${v.id}" without a weight`,
  saturatedBelowDry: (v: { readonly a: Text; readonly b: Text; readonly id: Text }) => `${v.a} saturated below ${v.b} dry for "${v.id}"`,
  noLayers: (v: { readonly id: Text }) => `no layers in build-up "${v.id}"`,
  secondRange: (v: { readonly id: Text; readonly first: Text }) =>
    `a second thickness range in build-up "${v.id}", the first at ${v.first}`,
  noThickness: (v: { readonly id: Text }) => `no thickness for "${v.id}", neither here nor on the material`,
  thickMm: (v: { readonly a: Text; readonly b: Text }) => `${v.a} mm, that is ${v.b} m`,
  rangeFor: (v: { readonly id: Text }) => `a thickness range for "${v.id}"`,
  thicknessFor: (v: { readonly a: Text; readonly id: Text; readonly b: Text }) => `${v.a} mm for "${v.id}", which is ${v.b} mm thick`,
  sheetAsInfill: (v: { readonly id: Text }) => `"${v.id}" as infill, a sheet or element`,
  infillFirst: (_: object) => 'an infill as the first layer',
  infillNoVoids: (v: { readonly id: Text; readonly below: Text }) => `"${v.id}" as infill on "${v.below}", which has no voids to fill`,
  shortBreakline: (v: { readonly n: number }) =>
    v.n === 1
      ? `a breakline of ${v.n} point, fewer than two of them at different places`
      : `a breakline of ${v.n} points, fewer than two of them at different places`,
  noLevels: (_: object) => 'no levels',
  levelsOnLine: (v: { readonly n: number }) =>
    v.n === 1 ? `${v.n} level at one place or on one line` : `${v.n} levels at one place or on one line`,
  levelsElsewhere: (v: { readonly at: Text; readonly a: Text; readonly b: Text }) =>
    `two levels at ${v.at}: ${v.a} here and ${v.b} elsewhere`,
  levelsInLine: (v: { readonly at: Text; readonly a: Text; readonly b: Text; readonly line: Text }) =>
    `two levels at ${v.at}: ${v.a} here and ${v.b} in line ${v.line}`,
  breaklinesCrossInLine: (v: { readonly at: Text; readonly a: Text; readonly b: Text; readonly line: Text }) =>
    `breaklines crossing at ${v.at} with levels ${v.a} and ${v.b}, the other in line ${v.line}`,
  breaklinesCross: (v: { readonly at: Text; readonly a: Text; readonly b: Text }) =>
    `breaklines crossing at ${v.at} with levels ${v.a} and ${v.b}`,
  idAgainInLine: (v: { readonly id: Text; readonly first: Text; readonly line: Text }) =>
    `the id "${v.id}" again, first at ${v.first} (line ${v.line})`,
  idAgain: (v: { readonly id: Text; readonly first: Text }) => `the id "${v.id}" again, first at ${v.first}`,
  fewerThanTwo: (v: { readonly n: number; readonly name: Phrase }, tell: Tell) =>
    v.n === 1
      ? `${v.n} point, fewer than two of them different, for ${tell(v.name)}`
      : `${v.n} points, fewer than two of them different, for ${tell(v.name)}`,
  fewerThanThree: (v: { readonly n: number; readonly name: Phrase }, tell: Tell) =>
    v.n === 1
      ? `${v.n} point, fewer than three of them different, for ${tell(v.name)}`
      : `${v.n} points, fewer than three of them different, for ${tell(v.name)}`,
  pointsIn: (v: { readonly n: Text; readonly name: Phrase }, tell: Tell) => `${countEn(v.n)} points in ${tell(v.name)}`,
  enclosesNothing: (v: { readonly name: Phrase }, tell: Tell) =>
    `${tell(v.name)} enclosing no area: its points lie on one line or on top of each other`,
  crossesItself: (v: { readonly name: Phrase; readonly at: Text; readonly a: Text; readonly b: Text }, tell: Tell) =>
    `the edge of ${tell(v.name)} crossing itself near ${v.at}, edges ${v.a} and ${v.b}`,
  runsOverItself: (v: { readonly name: Phrase; readonly at: Text; readonly a: Text; readonly b: Text }, tell: Tell) =>
    `the edge of ${tell(v.name)} running over itself at ${v.at}, edges ${v.a} and ${v.b}`,
  touchesItself: (v: { readonly name: Phrase; readonly at: Text; readonly a: Text; readonly b: Text }, tell: Tell) =>
    `the edge of ${tell(v.name)} touching itself at ${v.at}, edges ${v.a} and ${v.b}`,
  runsAlong: (v: { readonly name: Phrase; readonly other: Phrase; readonly at: Text }, tell: Tell) =>
    `${tell(v.name)} running along ${tell(v.other)} at ${v.at}`,
  liesOutside: (v: { readonly name: Phrase; readonly other: Phrase; readonly at: Text }, tell: Tell) =>
    `${tell(v.name)} lying outside ${tell(v.other)}, at ${v.at}`,
  liesInside: (v: { readonly name: Phrase; readonly other: Phrase; readonly at: Text }, tell: Tell) =>
    `${tell(v.name)} lying inside ${tell(v.other)}, at ${v.at}`,
  bayNoLimit: (v: { readonly id: Text }) => `bay "${v.id}" without a permitted load`,
  treeKg: (v: { readonly n: Text; readonly id: Text }) => `${v.n} kg for tree "${v.id}"`,
  rainBelowDesign: (v: { readonly a: Text; readonly b: Text }) => `extreme rain ${v.a} below design rain ${v.b}`,
  pileNoDensity: (v: { readonly id: Text; readonly material: Text }) => `stockpile "${v.id}" of "${v.material}", which has no density`,
  zonesNoRoles: (v: { readonly id: Text }) => `zones without roles in stage "${v.id}"`,
  placesNothing: (v: { readonly id: Text }) => `an entry that places nothing in stage "${v.id}"`,
  stemOnSlab: (v: { readonly a: Text; readonly b: Text; readonly id: Text }) =>
    `a stem of ${v.a} m on a base slab of ${v.b} m for retaining edge "${v.id}"`,
  slabInWall: (v: { readonly a: Text; readonly b: Text; readonly id: Text }) =>
    `a base slab ${v.a} m thick in a wall of ${v.b} m for retaining edge "${v.id}"`,
  yearMm: (v: { readonly n: Text }) => `${v.n} mm a year`,
  poresBeside: (v: { readonly a: Text; readonly b: Text; readonly id: Text }) => `${v.a} % beside ${v.b} % of water held by "${v.id}"`,
  speedFor: (v: { readonly n: Text; readonly id: Text }) => `${v.n} m/s for "${v.id}"`,
  crossesNear: (v: { readonly name: Phrase; readonly other: Phrase; readonly at: Text }, tell: Tell) =>
    `${tell(v.name)} crossing ${tell(v.other)} near ${v.at}`,
  deckOf: (v: { readonly a: Text; readonly b: Text }) => `a deck of ${v.a} × ${v.b} m`,
  kindZip: (_: object) => 'a ZIP archive or a file packed like one, e.g. a spreadsheet',
  kindPdf: (_: object) => 'a PDF document',
  kindDwg: (_: object) => 'a DWG drawing',
  kindDxf: (_: object) => 'a DXF drawing',
  kindIfc: (_: object) => 'an IFC or STEP model',
  kindGltfBinary: (_: object) => 'a binary glTF model',
  kindXml: (_: object) => 'an XML or HTML text',
  kindRtf: (_: object) => 'an RTF document',
  kindPicture: (_: object) => 'a picture or another binary file',
  keyAgain: (v: { readonly key: Text; readonly line: Text }) => `the key "${v.key}" again, first in line ${v.line}`,
  theKey: (v: { readonly key: Text }) => `the key "${v.key}"`,
  noKey: (v: { readonly key: Text }) => `no "${v.key}"`,
  numbersFound: (v: { readonly n: Text; readonly list: Phrase }, tell: Tell) => `${countEn(v.n)} numbers: ${tell(v.list)}`,
  entriesFound: (v: { readonly n: number; readonly list: Phrase }, tell: Tell) =>
    v.n === 1 ? `${countEn(v.n)} entry: ${tell(v.list)}` : `${countEn(v.n)} entries: ${tell(v.list)}`,
  listOf: (v: { readonly n: Text }) => `a list of ${countEn(v.n)} entries`,
  emptyObject: (_: object) => 'an empty object { }',
  objectWith: (v: { readonly keys: Names }) => `an object with ${names(v.keys)}`,
  bracketsInside: (v: { readonly n: Text }) => `more than ${v.n} brackets inside each other`,
  endOfTextIn: (v: { readonly n: Text; readonly c: Text; readonly path: Text }) =>
    `the end of the text at byte ${v.n}, column ${v.c} inside ${v.path}`,
  endOfText: (v: { readonly n: Text; readonly c: Text }) => `the end of the text at byte ${v.n}, column ${v.c}`,
  lineEndInText: (_: object) => 'the end of the line in the middle of a text',
  tabInText: (_: object) => 'a tab inside a text',
  controlInText: (v: { readonly n: Text }) => `the control character ${v.n} inside a text`,
  commaBefore: (v: { readonly mark: Text }) => `a comma before the closing ${v.mark}`,
  aComment: (v: { readonly text: Text }) => `a comment: ${v.text}`,
  charactersFound: (v: { readonly n: Text }) => `${countEn(v.n)} characters`,
  emptyFile: (_: object) => 'an empty file (0 bytes)',
  blankFile: (_: object) => 'a file with nothing but blanks',
  binaryFile: (_: object) => 'binary data or text in UTF-16',
  versionFound: (v: { readonly v: Phrase }, tell: Tell) => `version ${tell(v.v)}`,
  noFormatKind: (v: { readonly kind: Phrase }, tell: Tell) => `no "format"; this seems to be ${tell(v.kind)}`,
  formatKind: (v: { readonly f: Phrase; readonly kind: Phrase }, tell: Tell) => `format ${tell(v.f)}; this seems to be ${tell(v.kind)}`,
  formatFound: (v: { readonly f: Phrase }, tell: Tell) => `format ${tell(v.f)}`,
  isReport: (_: object) => 'a report, the result of a check, not the scene it was made from',
  isGeoJson: (_: object) => 'a map in GeoJSON',
  isCityJson: (_: object) => 'a city model in CityJSON',
  isGltf: (_: object) => 'a glTF model',
  isSchema: (_: object) => 'a JSON Schema',
  isPackageList: (_: object) => 'the package list of a program',
  pointsFound: (v: { readonly n: Text }) => `${countEn(v.n)} points`,
  lettersLost: (v: { readonly line: Text }) => `letters that could not be read, the first in line ${v.line}`,
  deckInCells: (v: { readonly a: Text; readonly b: Text; readonly c: Text; readonly n: Text }) =>
    `${v.a} m × ${v.b} m in cells of ${v.c} m, ${countEn(v.n)} cells`,
  /** Numbers and what the file itself holds: the same in every language. */
  asIs: (v: { readonly text: Text }) => `${v.text}`,
  unknownThing: (v: { readonly what: Kind; readonly id: Text }) => `the ${KINDS[v.what].bare} "${v.id}"`,
  densityFor: (v: { readonly value: Text; readonly id: Text }) => `${v.value} kg/m³ for "${v.id}"`,
};
