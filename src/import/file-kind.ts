/** What a file is, by its content: its extension may lie. What cannot be read is named, with what to export instead. */

import type { DrawingKind } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import { issueOf } from './gathering.ts';
import { MAX_BYTES } from './limits.ts';

const EXPECTED = 'a drawing as DXF, areas as GeoJSON, points as CSV or LandXML, or a scene (*.scene.json)';
const AS_DXF = 'Please export DXF 2007 or later, as text.';
const AS_CSV = 'Save the sheet with the points as CSV.';
const UNPACK = 'Unpack it and choose the one file in it that holds the drawing or the points.';
const AS_PICTURE = 'A picture holds no coordinates: ask for the drawing as DXF; as an underlay to draw on, open it as a picture.';

/** Beginnings of binary files, as `latin1` writes them. */
const BEGINNINGS: readonly (readonly [RegExp, string, string])[] = [
  [/^AC1[.0][\d.]{2}(?:␀|␁|$)/, 'a DWG drawing', AS_DXF],
  [/^.{1,12} Binary DXF\r\n/, 'a drawing in the binary form of DXF', 'Export it again as DXF in text form (ASCII).'],
  [/^%PDF|^.{0,1000}%PDF-1/s, 'a PDF document', 'Ask for the drawing as DXF: lines of a PDF have no layers and often no scale.'],
  [/^\xD0\xCF␑\xE0/, 'an older office document, e.g. a spreadsheet', AS_CSV],
  [/^\x89PNG|^\xFF\xD8\xFF|^GIF8|^BM.{4}␀␀␀␀|^II\*␀|^MM␀\*|^RIFF.{4}WEBP|^.{4}ftyp(?:hei|mif|avi)/s, 'a picture', AS_PICTURE],
  [/^␟\x8B|^7z\xBC\xAF|^Rar!|^BZh\d/, 'a packed file', UNPACK],
  [/^glTF/, 'a 3D model in glTF', 'It has no layers to pick from: export the outline as DXF.'],
  [/^␈\t\xFE␂|^\xC8␔\xFE␂/, 'a DGN drawing', AS_DXF],
  [/^␀␀'\n/, 'a shapefile', 'Export it as GeoJSON in metres.'],
  [/^LASF|^ASTM-E57|^ply\r?\n/, 'a point cloud of a scan', 'Reduce it to a grid or to spot levels and save those as CSV: x, y, z.'],
];

/** Names inside a ZIP file. */
const PACKED: readonly (readonly [RegExp, string, string])[] = [
  [/xl\/(?:workbook|worksheets|_rels|styles)/, 'a spreadsheet (xlsx)', AS_CSV],
  [/\.ifc/i, 'a packed IFC model', 'Unpack it; then export the slab outlines as DXF and the columns as DXF or CSV.'],
  [/\.kml/i, 'a packed KML map', 'Export it as GeoJSON.'],
  [/word\/|ppt\/|mimetypeapplication/i, 'an office document', AS_CSV],
];

function refuse(got: string, mend: string): Issue {
  return issueOf('FILE_KIND', 'error', { got, expected: EXPECTED, mend });
}

/** Bytes looked at. */
const HEAD_BYTES = 4096;

/** Control characters become their pictures (␀ for 0), all but tab and line ends. */
function latin1(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) =>
    String.fromCharCode(byte < 0x20 && byte !== 9 && byte !== 10 && byte !== 13 ? 0x2400 + byte : byte),
  ).join('');
}

/**
 * Refuses what no text is, and what is too long.
 * @param bytes - the whole file
 * @returns the message, or null where the file is worth decoding
 */
export function refuseBytes(bytes: Uint8Array): Issue | null {
  if (bytes.length === 0) {
    const mend = 'Save or send the file again, or open an earlier copy.';
    return issueOf('FILE_EMPTY', 'error', { got: 'an empty file (0 bytes)', expected: EXPECTED, mend });
  }
  const head = latin1(bytes.subarray(0, HEAD_BYTES));
  if (/^PK[␃␅␇]/.test(head)) {
    // The list of names stands at the end of a ZIP file.
    const names = head + latin1(bytes.subarray(Math.max(0, bytes.length - HEAD_BYTES)));
    const found = PACKED.find(([pattern]) => pattern.test(names));
    return found ? refuse(found[1], found[2]) : refuse('a ZIP archive', UNPACK);
  }
  const found = BEGINNINGS.find(([pattern]) => pattern.test(head));
  if (found) return refuse(found[1], found[2]);
  if (bytes.length <= MAX_BYTES) return null;
  return issueOf('FILE_TOO_LARGE', 'error', {
    got: `${Math.round(bytes.length / 1e6)} MB`,
    expected: `at most ${MAX_BYTES / 1e6} MB`,
    mend: 'Too large here: export only the layers of the deck.',
  });
}

/** What an XML text is, by its first element. */
const ROOTS: readonly (readonly [RegExp, string, string])[] = [
  [/^(?:kml)$/i, 'a KML map', 'Export it as GeoJSON.'],
  [/^(?:gpx)$/i, 'a track in GPX', 'Levels of such devices are off by metres; ask for the survey as CSV.'],
  [/^(?:svg)$/i, 'a picture in SVG', AS_PICTURE],
  [/^(?:html|!doctype)$/i, 'a web page', 'What was saved is the page about the file, not the file: download it again.'],
  [/ifc/i, 'an IFC model as XML', 'Export the slab outlines as DXF and the columns as DXF or CSV.'],
  [/citymodel|featurecollection/i, 'a map in GML', 'Export it as GeoJSON in metres.'],
];

/**
 * What a decoded text is.
 * @param text - the text, without byte-order mark
 * @returns the kind, or the message that refuses it
 */
export function kindOfText(text: string): DrawingKind | Issue {
  const head = text.slice(0, HEAD_BYTES);
  if (/^\s*$/.test(head) && /^\s*$/.test(text)) {
    const mend = 'Save or send the file again, or open an earlier copy.';
    return issueOf('FILE_EMPTY', 'error', { got: 'a file with nothing but blanks', expected: EXPECTED, mend });
  }
  if (/^(?:\s*999\s*[\r\n][^\r\n]*[\r\n]+)*\s*0\s*[\r\n]+\s*(?:SECTION|EOF)\b/.test(head)) return 'dxf';
  if (/^\s*ISO-10303-21/.test(head)) return refuseModel(text);
  if (/^\s*[{[]/.test(head)) return kindOfJson(text);
  if (/^\s*</.test(head)) return kindOfXml(head);
  if (/^\{\\rtf/.test(head)) return refuse('a text document (RTF)', AS_CSV);
  if (head.includes('\0')) return refuse('binary data', 'Ask what program wrote it, and for an export as DXF or CSV.');
  if (/^[^\r\n]*\d/m.test(head) || /[;,\t]/.test(head)) return 'table';
  return refuse('a text without numbers', 'Choose the file that holds the drawing or the points.');
}

/** Counts what would be of use, so that the message helps to pick the export. */
function refuseModel(text: string): Issue {
  if (!/FILE_SCHEMA\s*\(\s*\(\s*'IFC/i.test(text.slice(0, 20_000))) return refuse('a STEP model', AS_DXF);
  const count = (type: string) => text.split(`${type}(`).length - 1;
  const [slabs, columns] = [count('IFCSLAB'), count('IFCCOLUMN')];
  return refuse(
    `an IFC model with ${slabs} ${slabs === 1 ? 'slab' : 'slabs'} and ${columns} ${columns === 1 ? 'column' : 'columns'}`,
    slabs === 0
      ? 'It holds no slab: ask for the structural model, or for the deck outline as DXF.'
      : 'Models are not read here: export the plan of the deck slab as DXF (outline, openings, columns, axes), its levels as CSV.',
  );
}

function kindOfJson(text: string): DrawingKind | Issue {
  const near = text.slice(0, 200_000);
  if (/"format"\s*:\s*"loamdeck-report"/.test(near)) return refuse('a report, the result of a check', 'Open the scene it was made from.');
  if (/"format"\s*:\s*"loamdeck/.test(near)) return 'scene';
  if (/"type"\s*:\s*"(?:FeatureCollection|Feature|GeometryCollection|(?:Multi)?(?:Point|LineString|Polygon))"/.test(near)) return 'geojson';
  if (/"type"\s*:\s*"Topology"/.test(near)) return refuse('a map in TopoJSON', 'Export it as GeoJSON in metres.');
  if (/"type"\s*:\s*"CityJSON"/.test(near)) return refuse('a city model in CityJSON', 'Export the outline as GeoJSON in metres.');
  if (/"zones"|"buildups"|"deck"/.test(near)) return 'scene';
  return refuse('JSON of another kind', 'Choose a map in GeoJSON or a scene (*.scene.json).');
}

function kindOfXml(head: string): DrawingKind | Issue {
  const root = /<\s*(?:[\w.-]+:)?([A-Za-z][\w.-]*|!doctype)/i.exec(head.replace(/<\?[\s\S]*?\?>|<!--[\s\S]*?-->/g, ''))?.[1] ?? '';
  if (/^landxml$/i.test(root) || (/^!doctype$/i.test(root) && /<!doctype\s+landxml/i.test(head))) return 'landxml';
  if (/^!doctype$/i.test(root) && !/<!doctype\s+html/i.test(head)) return 'landxml';
  const found = ROOTS.find(([pattern]) => pattern.test(root));
  return found ? refuse(found[1], found[2]) : refuse(`XML of another kind (${root.slice(0, 40)})`, 'Ask for LandXML, DXF or CSV.');
}
