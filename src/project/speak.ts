/** What was calculated, told in another language: words and names change, no number does. */

import type { Term } from '../model/derivation.ts';
import type { Language } from '../model/language.ts';
import type { CoreLog } from '../model/maps.ts';
import type { Report } from '../model/report.ts';
import type { ReportCoefficient } from '../model/report-water.ts';
import { derivedStageName } from '../model/roles.ts';
import type { RunPose } from '../model/run.ts';
import type { Project } from './evaluate-project.ts';
import { wordFinding } from './finding-text.ts';
import { notChecked } from './not-checked.ts';
import { type Names, namesOf } from './words/names.ts';

/** An evaluated project, as `evaluateProject` gives it, in a language. */
export function speakProject(project: Project, language: Language): Project {
  return language === project.language ? project : { ...project, language, report: reportIn(project, language) };
}

function reportIn(project: Project, language: Language): Report {
  const { scene, report, facts, evaluation } = project;
  const names = namesOf(scene, language);
  const { routes, setUpAreas, water } = report;
  return {
    ...report,
    stages: report.stages.map((stage, s) => {
      return evaluation.plan.stages[s].derived ? { ...stage, name: derivedStageName(stage.name, language) } : stage;
    }),
    ...(routes && {
      routes: routes.map((route) => ({
        ...route,
        country: names.name(route.country),
        ruleName: names.name(route.ruleName),
        source: names.source(route.source),
      })),
    }),
    ...(setUpAreas && { setUpAreas: setUpAreas.map((area) => ({ ...area, standing: area.standing.map(names.name) })) }),
    ...(water && { water: waterIn(water, names) }),
    notChecked: notChecked(scene, language),
    findings: facts.map((fact) => wordFinding(fact, scene, language, names)),
  };
}

type Water = NonNullable<Report['water']>;

function waterIn(water: Water, names: Names): Water {
  const coefficient = ({ c, row, source }: ReportCoefficient): ReportCoefficient => {
    return { c, row: row === null ? null : names.name(row), source: names.source(source) };
  };
  return {
    ...water,
    table: names.name(water.table),
    rain: water.rain && { ...water.rain, source: names.source(water.rain.source) },
    zones: water.zones.map((zone) => ({ ...zone, peak: coefficient(zone.peak), annual: coefficient(zone.annual) })),
  };
}

/** A core log with the names of materials in the language of the project. */
export function speakCoreLog(log: CoreLog, { scene, language }: Pick<Project, 'scene' | 'language'>): CoreLog {
  if (language === 'en') return log;
  const names = namesOf(scene, language);
  return { ...log, layers: log.layers.map((layer) => ({ ...layer, name: names.name(layer.name) })) };
}

/** A vehicle's pressures with the names of materials in the language of the project. */
export function speakPose(pose: RunPose, { scene, language }: Project): RunPose {
  if (language === 'en') return pose;
  const { name } = namesOf(scene, language);
  const wheels = pose.wheels.map((wheel) => ({
    ...wheel,
    grounds: wheel.grounds.map((ground) => ({ ...ground, tops: ground.tops.map((top) => ({ ...top, name: name(top.name) })) })),
  }));
  return { ...pose, wheels };
}

/** A derivation with names of materials and vehicles, and where numbers come from, in the language of the project. */
export function speakTerm(term: Term, project: Project): Term {
  if (project.language === 'en') return term;
  return termIn(term, namesOf(project.scene, project.language));
}

function termIn(term: Term, names: Names): Term {
  const of = term.of === undefined ? {} : { of: names.name(term.of) };
  if ('terms' in term.how) return { ...term, ...of, how: { ...term.how, terms: term.how.terms.map((one) => termIn(one, names)) } };
  const { source } = term.how;
  const text = source.text === undefined ? {} : { text: names.source(source.text) };
  return { ...term, ...of, how: { source: { ...source, ...text } } };
}
