/** What a file is, by its content: its extension may lie. What cannot be read is named, with what to export instead. */

import type { DrawingKind } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import { issueOf } from './issue-of.ts';
import { MAX_BYTES } from './limits.ts';
import type { Advice, FileKind } from './words/en-files.ts';

type Refused = readonly [pattern: RegExp, what: FileKind, advice: Advice];

/** Beginnings of binary files, as `latin1` writes them. */
const BEGINNINGS: readonly Refused[] = [
  [/^AC1[.0][\d.]{2}(?:␀|␁|$)/, 'dwg', 'asDxf'],
  [/^.{1,12} Binary DXF\r\n/, 'binaryDxf', 'asTextDxf'],
  [/^%PDF|^.{0,1000}%PDF-1/s, 'pdf', 'pdf'],
  [/^\xD0\xCF␑\xE0/, 'oldOffice', 'asCsv'],
  [/^\x89PNG|^\xFF\xD8\xFF|^GIF8|^BM.{4}␀␀␀␀|^II\*␀|^MM␀\*|^RIFF.{4}WEBP|^.{4}ftyp(?:hei|mif|avi)/s, 'picture', 'picture'],
  [/^␟\x8B|^7z\xBC\xAF|^Rar!|^BZh\d/, 'packed', 'unpack'],
  [/^glTF/, 'gltf', 'noLayers'],
  [/^␈\t\xFE␂|^\xC8␔\xFE␂/, 'dgn', 'asDxf'],
  [/^␀␀'\n/, 'shapefile', 'geojsonMetres'],
  [/^LASF|^ASTM-E57|^ply\r?\n/, 'scan', 'thinScan'],
];

/** Names inside a ZIP file. */
const PACKED: readonly Refused[] = [
  [/xl\/(?:workbook|worksheets|_rels|styles)/, 'xlsx', 'asCsv'],
  [/\.ifc/i, 'packedIfc', 'unpackIfc'],
  [/\.kml/i, 'packedKml', 'geojson'],
  [/word\/|ppt\/|mimetypeapplication/i, 'office', 'asCsv'],
];

function refuse(what: FileKind, advice: Advice): Issue {
  return issueOf('error', 'FILE_KIND', { what, advice });
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
 * @param bytes - the whole file, or of one that is too long its beginning and end
 * @param length - length of the whole file [bytes]
 * @returns the message, or null where the file is worth decoding
 */
export function refuseBytes(bytes: Uint8Array, length = bytes.length): Issue | null {
  if (bytes.length === 0) return issueOf('error', 'FILE_EMPTY', {});
  const head = latin1(bytes.subarray(0, HEAD_BYTES));
  if (/^PK[␃␅␇]/.test(head)) {
    // The list of names stands at the end of a ZIP file.
    const names = head + latin1(bytes.subarray(Math.max(0, bytes.length - HEAD_BYTES)));
    const found = PACKED.find(([pattern]) => pattern.test(names));
    return found ? refuse(found[1], found[2]) : refuse('zip', 'unpack');
  }
  const found = BEGINNINGS.find(([pattern]) => pattern.test(head));
  if (found) return refuse(found[1], found[2]);
  if (length <= MAX_BYTES) return null;
  return issueOf('error', 'FILE_TOO_LARGE', { sizeMB: Math.round(length / 1e6), most: MAX_BYTES / 1e6 });
}

/**
 * Whether a file is a model by its first line, so that what reads models may be loaded.
 * @param bytes - the whole file
 */
export function looksLikeModel(bytes: Uint8Array): boolean {
  return /^[^\w]{0,16}I\W?S\W?O\W?-/.test(latin1(bytes.subarray(0, 40)));
}

/** What an XML text is, by its first element. */
const ROOTS: readonly Refused[] = [
  [/^(?:kml)$/i, 'kml', 'geojson'],
  [/^(?:gpx)$/i, 'gpx', 'gpx'],
  [/^(?:svg)$/i, 'svg', 'picture'],
  [/^(?:html|!doctype)$/i, 'html', 'html'],
  [/ifc/i, 'ifcXml', 'ifc'],
  [/citymodel|featurecollection/i, 'gml', 'geojsonMetres'],
];

/**
 * What a decoded text is.
 * @param text - the text, without byte-order mark
 * @returns the kind, or the message that refuses it
 */
export function kindOfText(text: string): DrawingKind | Issue {
  const head = text.slice(0, HEAD_BYTES);
  if (/^\s*$/.test(head) && /^\s*$/.test(text)) return issueOf('error', 'FILE_EMPTY:blank', {});
  if (/^(?:\s*999\s*[\r\n][^\r\n]*[\r\n]+)*\s*0\s*[\r\n]+\s*(?:SECTION|EOF)\b/.test(head)) return 'dxf';
  if (/^\s*ISO-10303-21/.test(head)) return kindOfModel(text);
  if (/^\s*[{[]/.test(head)) return kindOfJson(text);
  if (/^\s*</.test(head)) return kindOfXml(head);
  if (/^\{\\rtf/.test(head)) return refuse('rtf', 'asCsv');
  if (head.includes('\0')) return refuse('binary', 'binary');
  if (/^[^\r\n]*\d/m.test(head) || /[;,\t]/.test(head)) return 'table';
  return refuse('noNumbers', 'otherFile');
}

/** Schemas whose slabs and columns are laid out alike. */
const SCHEMAS = /^IFC(?:2X3(?:_TC1|_FINAL)?|4(?:_ADD\d(?:_TC\d)?)?)$/i;

function kindOfModel(text: string): DrawingKind | Issue {
  const schema = /FILE_SCHEMA\s*\(\s*\(\s*'([^']*)'/i.exec(text.slice(0, 20_000))?.[1];
  if (schema === undefined && /=\s*IFC[A-Z]/i.test(text.slice(0, 200_000))) return issueOf('error', 'FILE_KIND:schema', { schema: '' });
  if (schema === undefined || !/^IFC/i.test(schema)) return refuse('step', 'asDxf');
  return SCHEMAS.test(schema.trim()) ? 'ifc' : issueOf('error', 'FILE_KIND:schema', { schema: schema.slice(0, 40) });
}

function kindOfJson(text: string): DrawingKind | Issue {
  const near = text.slice(0, 200_000);
  if (/"format"\s*:\s*"loamdeck-report"/.test(near)) return refuse('report', 'openScene');
  if (/"format"\s*:\s*"loamdeck/.test(near)) return 'scene';
  if (/"type"\s*:\s*"(?:FeatureCollection|Feature|GeometryCollection|(?:Multi)?(?:Point|LineString|Polygon))"/.test(near)) return 'geojson';
  if (/"type"\s*:\s*"Topology"/.test(near)) return refuse('topojson', 'geojsonMetres');
  if (/"type"\s*:\s*"CityJSON"/.test(near)) return refuse('cityjson', 'outlineGeojson');
  if (/"zones"|"buildups"|"deck"/.test(near)) return 'scene';
  return refuse('json', 'otherJson');
}

function kindOfXml(head: string): DrawingKind | Issue {
  const root = /<\s*(?:[\w.-]+:)?([A-Za-z][\w.-]*|!doctype)/i.exec(head.replace(/<\?[\s\S]*?\?>|<!--[\s\S]*?-->/g, ''))?.[1] ?? '';
  if (/^landxml$/i.test(root) || (/^!doctype$/i.test(root) && /<!doctype\s+landxml/i.test(head))) return 'landxml';
  if (/^!doctype$/i.test(root) && !/<!doctype\s+html/i.test(head)) return 'landxml';
  const found = ROOTS.find(([pattern]) => pattern.test(root));
  return found ? refuse(found[1], found[2]) : issueOf('error', 'FILE_KIND:xml', { root: root.slice(0, 40) });
}
