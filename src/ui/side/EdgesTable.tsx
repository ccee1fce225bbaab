/** Sills and upstands: least height of the membrane above the finished level, what is required, what is missing; and retaining edges. */

import { useMemo } from 'react';
import { type ListedEdge, listEdges } from '../facts/edge-list.ts';
import { listWalls } from '../facts/site-list.ts';
import { cellText } from '../format.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene } from '../use-stores.ts';
import { WallFacts } from './WallFacts.tsx';

const AROUND_M = 6;
const KINDS = ['threshold', 'upstand'] as const;

export function EdgesTable() {
  const edges = useScene((state) => state.snapshot?.report.edges);
  const scene = useScene((state) => state.snapshot?.scene);
  const listed = useMemo(() => (edges && scene ? listEdges(edges, scene) : []), [edges, scene]);
  return (
    <div className="sheet-parts">
      <p>{listed.length === 0 ? t.edges.none : t.edges.says}</p>
      {KINDS.map((kind) => (
        <EdgeKind key={kind} kind={kind} edges={listed.filter((edge) => edge.kind === kind)} />
      ))}
      <Walls />
    </div>
  );
}

function Walls() {
  const report = useScene((state) => state.snapshot?.report);
  const scene = useScene((state) => state.snapshot?.scene);
  const walls = useMemo(() => (report && scene ? listWalls(report, scene) : []), [report, scene]);
  if (walls.length === 0) return null;
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.walls.title(walls.length)}</h2>
      <p className="small">{t.walls.says}</p>
      {walls.map((wall) => (
        <WallFacts key={wall.id} wall={wall} />
      ))}
    </section>
  );
}

interface EdgeKindProps {
  readonly kind: ListedEdge['kind'];
  readonly edges: readonly ListedEdge[];
}

function EdgeKind({ kind, edges }: EdgeKindProps) {
  if (edges.length === 0) return null;
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.edges.kind(kind, edges.length)}</h2>
      <table className="numbers edges">
        <caption className="unseen">{t.edges.caption}</caption>
        <TableHead heads={[t.edges.edge, t.edges.least, t.edges.required, t.edges.missing]} />
        <tbody>
          {edges.map((edge) => (
            <EdgeRow key={edge.id} edge={edge} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Whole millimetres; what lacks a part of one is not shown as enough. */
const shownMm = (valueMm: number, missingMm: number) => (missingMm > 0 ? Math.floor(valueMm) : Math.round(valueMm));

function EdgeRow({ edge }: { readonly edge: ListedEdge }) {
  const { id, at, kind, leastUpstandMm, requiredMm, missingMm, drainedChannel } = edge;
  const go = useGo();
  return (
    <tr className="bay-row" data-missing={missingMm > 0} onClick={() => at && go.toPoint(at, AROUND_M)}>
      <th scope="row">
        <button type="button" className="row-button" disabled={at === null} aria-label={t.edges.pick(id)}>
          {id}
        </button>
        <span className="small block">{at ? t.findings.at(...at) : t.edges.nothing}</span>
        {kind === 'threshold' && <span className="small block">{drainedChannel ? t.edges.channel : t.edges.noChannel}</span>}
      </th>
      <td>{leastUpstandMm === null ? '–' : cellText(shownMm(leastUpstandMm, missingMm), 'mm')}</td>
      <td>{cellText(requiredMm, 'mm')}</td>
      <td className="edge-missing">
        {missingMm > 0 ? cellText(requiredMm - shownMm(requiredMm - missingMm, missingMm), 'mm') : t.edges.enough}
      </td>
    </tr>
  );
}
