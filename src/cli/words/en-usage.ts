/** Help of the command line, and why a call is refused. */

import { EXPORT_TABLES } from '../../model/export-table.ts';
import { LIGHTEN_AIMS } from '../../model/lighten.ts';

export const USAGE_EN = `Use: npm run --silent check -- FILE [--json] [--cell M] [--variant ID] [--language en|de]
     npm run --silent export -- FILE [--table NAME | --xlsx OUT] [--language en|de]
     npm run --silent export -- FILE --section X,Y,X,Y (--svg OUT | --dxf OUT) [--scale N] [--heights N] [--stage ID]
     npm run --silent export -- FILE --plan (--svg OUT | --dxf OUT) [--scale N] [--section X,Y,X,Y]
     npm run --silent export -- FILE --glb OUT
     npm run --silent export -- FILE --html OUT [--language en|de] [--section X,Y,X,Y]
     npm run --silent sources -- [FILE] [--language en|de]
     npm run --silent diff -- A B [--json] [--language en|de]
     npm run --silent lighten -- FILE [--by cost|weight|change] [--zones A,B] [--locked A,B] [--out NEW] [--json] [--language en|de]
     npm run --silent import -- FILE [--answer ID=VALUE]… [--answers FILE] [--role LAYER=ROLE]… [--deck SCENE] [--scene OUT] [--json] [--language en|de]

check: loads, depths, levels, findings
  FILE           a scene file (*.scene.json)
  --json         the report as JSON, and nothing else, on standard output
  --cell M       side of the grid's cells in metres (0.05 to 2) instead of the scene's own
  --variant ID   judges a variant kept in the file instead of the scheme it shows
  --language L   en, or de: headings, findings, messages and names in German
export: a table as CSV on standard output
  --table NAME   ${EXPORT_TABLES.join(', ')} (the first, where left out)
  --xlsx OUT     all tables as a workbook, written to the file OUT
  --language L   en, or de: German headings, semicolons and decimal commas
  --section LINE section along a line: x,y,x,y … in metres of the file (--section=-1,2,… where the first is negative)
  --plan         plan of the deck; with --section its line is marked
  --svg OUT      drawing in millimetres on paper, written to the file OUT
  --dxf OUT      the same in metres
  --scale N      1:N (50 for sections, 100 for plans, where left out)
  --heights N    draws the heights of a section N times as large (SVG only)
  --stage ID     section at the end of a stage instead of the finished garden
  --date D       date in the title block, today's where left out
  --html OUT     handover: everything known of the scene in one page that opens without a server
  --glb OUT      the finished garden as a model: metres, Y up, one node per layer and zone
sources: where every number of catalogue and rules comes from, and with a FILE what in it rests on each
diff: each change from scene file A to B once, changes of the load plan first; then bays and zones that come out otherwise
                 exit code 1: B has a stop finding, as with check
lighten: other fills and thicknesses for zones too heavy for their bays, finished levels kept; or the limit in the way
  --by AIM       ${LIGHTEN_AIMS.join(', ')}: least price, least weight, least volume exchanged (all, where left out)
  --zones A,B    zones to lighten instead of those over their bays
  --locked A,B   zones that stay as they are
  --out NEW      writes the scene of the first answer to NEW
                 exit code 1: a limit is still broken; nothing can help there
import: reads a drawing (DXF), a building model (IFC), a map (GeoJSON), points (CSV, LandXML); nothing is changed without being said
  --answer I=V   answer to a question, by its id; may stand several times
  --answers FILE the same from a JSON file: { "unit": "mm" }
  --role L=R     what a layer is: outline, openings, bays, zones, edges, columns, outlets, levels, trees, axes, ignore
  --deck SCENE   a scene whose deck the drawing should fit: shows whether axes are exchanged or mirrored
  --language L   en, or de: questions, changes, messages and the history of the draft in German
  --scene OUT    writes the part of a scene that the file holds to OUT
                 exit code 1 here: a question is open, the best guess was taken

Exit code 0: no stop finding; 1: at least one; 2: the file can't be read or is not valid.
Compares entered loads with entered limits. Not a structural check.
`;

export const REFUSALS_EN = {
  noCommand: (found: string, known: string) => `There is no command "${found}"; there are: ${known}.`,
  /** `said`: by the reader of arguments, in English. */
  notUnderstood: (said: string) => `The call was not understood: ${said}`,
  /** By its code; null for what is not known here. */
  option: (code: string | undefined, flag: string): string | null => {
    if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `The call was not understood: there is no option "${flag}".`;
    if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE')
      return `The call was not understood: "${flag}" takes a value, or stands alone; a value that begins with - is written as ${flag}=VALUE.`;
    return null;
  },
  noOption: (command: string, flag: string) => `The call was not understood: "${command}" has no option "--${flag}"`,
  oneScene: (given: number) => `One scene file was expected, ${given === 0 ? 'none was' : `${given} were`} given.`,
  oneFile: (given: number) =>
    `One file was expected, ${given === 0 ? 'none was' : `${given} were`} given. Read several files one after the other.`,
  twoScenes: (given: number) => `Two scene files were expected, ${given} given: the one before, then the one after.`,
  language: (found: string) => `--language takes en or de, found "${found}".`,
  cell: (found: string) => `--cell takes metres from 0.05 to 2 with a decimal point, found "${found}".`,
  outputs: (flags: readonly string[]) => `--${flags.join(' and --')} exclude each other: each makes a file or a table of its own.`,
  ofDrawing: (flag: string) => `--${flag} belongs to a drawing: say --svg OUT or --dxf OUT too.`,
  notWithHtml: (flag: string) => `--${flag} belongs to a drawing; --html writes the plan at its own scale.`,
  notWithGlb: (flag: string) => `--${flag} belongs to a drawing; --glb writes the whole model.`,
  ofSection: (flag: string) => `--${flag} belongs to a section; a plan has none.`,
  table: (found: string) => `--table takes one of: ${EXPORT_TABLES.join(', ')}; found "${found}".`,
  line: (found: string) => `--section takes x,y of two points or more, in metres with decimal points; found "${found}".`,
  whatToDraw: '--svg and --dxf draw a section or a plan: say --section X,Y,X,Y or --plan.',
  scale: (found: string) => `--scale takes N of 1:N, a number above 0; found "${found}".`,
  heights: (found: string) => `--heights takes a number above 0; found "${found}".`,
  heightsForSvg: '--heights is for --svg: a DXF is always true in height.',
  noStage: (found: string, known: string) => `There is no stage "${found}"; there are: ${known}.`,
  ofLighten: (flag: string) => `--${flag} belongs to lighten.`,
  by: (found: string) => `--by takes one of: ${LIGHTEN_AIMS.join(', ')}; found "${found}".`,
  answer: '--answer takes ID=VALUE, for example --answer unit=mm.',
  role: '--role takes LAYER=ROLE, for example --role Deck=outline.',
  sceneNeedsRole: '--scene needs --role LAYER=ROLE: what is the outline of the deck?',
};

export type RefusalWords = typeof REFUSALS_EN;
