/**
 * The handover: one page that opens without a server, without script and without a request, with everything that is known of the
 * scene, and with the files themselves, checksums beside them.
 */

import type { SectionSource } from '../mesh/section-source.ts';
import { dayIn } from '../model/date-text.ts';
import type { ExportedFile, ExportLanguage, HandoverOptions } from '../model/engine.ts';
import { EXPORT_TABLES } from '../model/export-table.ts';
import type { Finding } from '../model/finding.ts';
import type { SourceUse } from '../model/source.ts';
import type { Project } from '../project/evaluate-project.ts';
import { type ExportTable, exportTable } from '../project/export-tables.ts';
import { sourceUses } from '../project/source-uses.ts';
import { speakProject } from '../project/speak.ts';
import { stageViews } from '../project/stage-views.ts';
import { exportDrawn } from './drawn-file.ts';
import { exportFile } from './export-file.ts';
import { fileName } from './file-name.ts';
import { HANDOVER_STYLE } from './handover-style.ts';
import { HANDOVER_WORDS, type HandoverWords } from './handover-words.ts';
import { dataAddress, htmlTable, sha256 } from './html.ts';
import { markupText } from './markup.ts';
import { numberOn } from './sheet-words.ts';

interface Chapter {
  readonly id: string;
  readonly title: string;
  readonly html: string;
}

interface On {
  readonly project: Project;
  readonly source: SectionSource;
  readonly options: HandoverOptions;
  readonly words: HandoverWords;
}

/**
 * Writes the page.
 * @param of - evaluated scene and its picture
 * @param options - language, date, pictures, line of a section
 * @returns name, media type and bytes
 */
export async function exportHandover(
  { project, source }: { readonly project: Project; readonly source: SectionSource },
  options: HandoverOptions,
): Promise<ExportedFile> {
  const on: On = { project: speakProject(project, options.language), source, options, words: HANDOVER_WORDS[options.language] };
  const files = await handoverFiles(on);
  const chapters = [
    findingsChapter(on),
    ...picturesChapter(on),
    ...drawnChapters(on, files),
    holdsChapter(on),
    ...tableChapters(on),
    sourcesChapter(on),
    await filesChapter(on, files),
  ];
  return { name: fileName(project.scene, 'handover', 'html'), mediaType: 'text/html', bytes: new TextEncoder().encode(page(on, chapters)) };
}

/** Scripts, frames and requests are forbidden; pictures and files stand in the page itself. */
const POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

function page({ project, options, words }: On, chapters: readonly Chapter[]): string {
  const title = markupText(words.title(project.scene.name));
  const entries = chapters.map(({ id, title: text }) => `<li><a href="#${id}">${markupText(text)}</a></li>`).join('');
  return [
    '<!doctype html>',
    `<html lang="${options.language}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<link rel="icon" href="data:,">',
    `<title>${title}</title>`,
    `<style>${HANDOVER_STYLE}</style>`,
    '</head>',
    '<body>',
    `<header><h1>${title}</h1><p>${markupText(words.madeOn(options.date))}</p><p><strong>${markupText(words.says)}</strong></p></header>`,
    `<nav aria-label="${markupText(words.contents)}"><ol>${entries}</ol></nav>`,
    '<main>',
    ...chapters.map(({ id, title: text, html }) => `<section id="${id}"><h2>${markupText(text)}</h2>\n${html}\n</section>`),
    '</main>',
    `<footer><p>${markupText(words.says)}</p></footer>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** The scene first: everything else follows from it. */
async function handoverFiles({ project, source, options }: On): Promise<ExportedFile[]> {
  const { language, date, line, pictures } = options;
  const of = { project, source };
  const lined = line === undefined ? {} : { line };
  return [
    await exportFile('scene json', project, language),
    await exportFile('report json', project, language),
    await exportFile('take-off xlsx', project, language),
    await exportDrawn('plan svg', of, { language, date, ...lined }),
    ...(line === undefined ? [] : [await exportDrawn('section svg', of, { language, date, line })]),
    ...pictures.map(({ bytes }, i) => ({ name: fileName(project.scene, `picture-${i + 1}`, 'png'), mediaType: 'image/png', bytes })),
  ];
}

function findingsChapter({ project, words }: On): Chapter {
  const { findings, notChecked } = project.report;
  const count = (severity: Finding['severity']) => findings.filter((one) => one.severity === severity).length;
  const rows = findings.map((one) => [words.severity[one.severity], one.says, placeOf(one, words), one.source, one.rule]);
  const table = rows.length === 0 ? paragraph(words.noFinding) : htmlTable(words.findingHeads, rows);
  const rest = notChecked.length === 0 ? '' : paragraph(words.notChecked(notChecked.join('; ')));
  return {
    id: 'findings',
    title: words.findings,
    html: `${paragraph(words.counts(count('stop'), count('check'), count('note')))}${table}${rest}`,
  };
}

const paragraph = (text: string) => `<p>${markupText(text)}</p>`;

function placeOf({ where }: Finding, words: HandoverWords): string {
  const named = words.place(where.zone ?? '', where.bay ?? '', where.stage ?? '', where.object ?? '');
  const at = where.at === undefined ? '' : `x ${where.at[0].toFixed(2)}, y ${where.at[1].toFixed(2)}`;
  return [named, at].filter(Boolean).join('; ');
}

function picturesChapter({ options, words }: On): Chapter[] {
  const { pictures } = options;
  if (pictures.length === 0) return [];
  const figures = pictures.map(({ caption, bytes }) => {
    const text = markupText(caption);
    return `<figure><img src="${dataAddress('image/png', bytes)}" alt="${text}"><figcaption>${text}</figcaption></figure>`;
  });
  return [{ id: 'pictures', title: words.pictures, html: figures.join('\n') }];
}

/** Drawings stand in the page as pictures, so that what one defines cannot change another. */
function drawnChapters({ words }: On, files: readonly ExportedFile[]): Chapter[] {
  const [plan, section] = files.filter(({ mediaType }) => mediaType === 'image/svg+xml');
  const chapter = (id: string, title: string, file: ExportedFile | undefined): Chapter[] =>
    file === undefined
      ? []
      : [{ id, title, html: `<div class="d"><img src="${dataAddress(file.mediaType, file.bytes)}" alt="${markupText(title)}"></div>` }];
  return [...chapter('plan', words.plan, plan), ...chapter('section', words.section, section)];
}

function holdsChapter({ project, options, words }: On): Chapter {
  const rows = stageViews(project).flatMap(({ name, holdPoints }) =>
    holdPoints.map(({ id, says, releasedBy, on, evidence }) => {
      return [name, id, says, on === '' ? words.open : releasedBy, dayIn(on, options.language), evidence];
    }),
  );
  return { id: 'holds', title: words.holds, html: rows.length === 0 ? paragraph(words.noHolds) : htmlTable(words.holdHeads, rows) };
}

function tableChapters({ project, options }: On): Chapter[] {
  return EXPORT_TABLES.map((id) => exportTable(id, project.scene, project.report, options.language))
    .filter(({ rows }) => rows.length > 0)
    .map((table) => ({ id: `table-${table.id.replaceAll(' ', '-')}`, title: table.title, html: tableHtml(table, options.language) }));
}

function tableHtml({ columns, rows, note }: ExportTable, language: ExportLanguage): string {
  const cell = (value: string | number | null, column: number) =>
    typeof value === 'number' ? numberOn(value, columns[column].decimals ?? 0, language) : (value ?? '');
  const heads = columns.map(({ head }) => head);
  const right = columns.map(({ decimals }) => decimals !== null);
  return `${htmlTable(
    heads,
    rows.map((row) => row.map(cell)),
    right,
  )}<p class="s">${markupText(note)}</p>`;
}

function sourcesChapter({ project, options, words }: On): Chapter {
  const groups = new Map<string, { readonly use: SourceUse; readonly numbers: string[] }>();
  for (const use of sourceUses(project.scene, options.language)) {
    if (use.usedIn.length === 0) continue;
    const { document, place, url, grade } = use.source;
    const key = JSON.stringify([grade, document, place, url]);
    const group = groups.get(key) ?? { use, numbers: [] };
    group.numbers.push(`${use.entry} ${use.number}`);
    groups.set(key, group);
  }
  const rows = [...groups.values()].map(({ use: { source }, numbers }) => [
    words.grade[source.grade],
    [source.document, source.place, source.url].filter(Boolean).join(', '),
    [...new Set(numbers)].join(', '),
  ]);
  return { id: 'sources', title: words.sources, html: htmlTable(words.sourceHeads, rows) };
}

async function filesChapter({ options, words }: On, files: readonly ExportedFile[]): Promise<Chapter> {
  const rows = await Promise.all(
    files.map(async ({ name, mediaType, bytes }) => {
      const link = `<a href="${dataAddress(mediaType, bytes)}" download="${markupText(name)}">${markupText(name)}</a>`;
      const size = words.bytes(numberOn(bytes.length, 0, options.language));
      const sum = (await sha256(bytes)) ?? words.noChecksum;
      return `<tr><td>${link}</td><td class="n">${markupText(size)}</td><td class="c">${markupText(sum)}</td></tr>`;
    }),
  );
  const heads = words.fileHeads.map((text) => `<th scope="col">${markupText(text)}</th>`).join('');
  const table = `<div class="t"><table><thead><tr>${heads}</tr></thead><tbody>\n${rows.join('\n')}\n</tbody></table></div>`;
  return { id: 'files', title: words.files, html: `${paragraph(words.filesSay)}${table}` };
}
