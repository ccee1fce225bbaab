/** Kinds of files that can't be read, and what to ask for instead. */

export const FILE_KINDS_EN = {
  dwg: 'a DWG drawing',
  binaryDxf: 'a drawing in the binary form of DXF',
  pdf: 'a PDF document',
  oldOffice: 'an older office document, e.g. a spreadsheet',
  picture: 'a picture',
  packed: 'a packed file',
  gltf: 'a 3D model in glTF',
  dgn: 'a DGN drawing',
  shapefile: 'a shapefile',
  scan: 'a point cloud of a scan',
  xlsx: 'a spreadsheet (xlsx)',
  packedIfc: 'a packed IFC model',
  packedKml: 'a packed KML map',
  office: 'an office document',
  zip: 'a ZIP archive',
  kml: 'a KML map',
  gpx: 'a track in GPX',
  svg: 'a picture in SVG',
  html: 'a web page',
  ifcXml: 'an IFC model as XML',
  gml: 'a map in GML',
  rtf: 'a text document (RTF)',
  binary: 'binary data',
  noNumbers: 'a text without numbers',
  step: 'a STEP model',
  report: 'a report, the result of a check',
  topojson: 'a map in TopoJSON',
  cityjson: 'a city model in CityJSON',
  json: 'JSON of another kind',
} as const;

export type FileKind = keyof typeof FILE_KINDS_EN;

export const ADVICE_EN = {
  asDxf: 'Please export DXF 2007 or later, as text.',
  asTextDxf: 'Export it again as DXF in text form (ASCII).',
  asCsv: 'Save the sheet with the points as CSV.',
  unpack: 'Unpack it and choose the one file in it that holds the drawing or the points.',
  picture: 'A picture holds no coordinates: ask for the drawing as DXF; as an underlay to draw on, open it as a picture.',
  pdf: 'Ask for the drawing as DXF: lines of a PDF have no layers and often no scale.',
  noLayers: 'It has no layers to pick from: export the outline as DXF.',
  geojsonMetres: 'Export it as GeoJSON in metres.',
  geojson: 'Export it as GeoJSON.',
  outlineGeojson: 'Export the outline as GeoJSON in metres.',
  thinScan: 'Reduce it to a grid or to spot levels and save those as CSV: x, y, z.',
  unpackIfc: 'Unpack it and choose the file in it that ends in .ifc.',
  ifc: 'Export it as IFC in its text form (*.ifc, IFC4 or IFC2X3).',
  gpx: 'Levels of such devices are off by metres; ask for the survey as CSV.',
  html: 'What was saved is the page about the file, not the file: download it again.',
  binary: 'Ask what program wrote it, and for an export as DXF or CSV.',
  otherFile: 'Choose the file that holds the drawing or the points.',
  openScene: 'Open the scene it was made from.',
  otherJson: 'Choose a map in GeoJSON or a scene (*.scene.json).',
} as const;

export type Advice = keyof typeof ADVICE_EN;
