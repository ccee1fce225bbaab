/** What the cards of the toolbox talk say; the printed page says the same, smaller. */

import type { Snapshot } from '../../model/engine.ts';
import { isUnusual } from '../facts/heap-board.ts';
import { stageSite } from '../facts/site-list.ts';
import { type TalkHeights, talkBuildUps, talkHeights, talkStops } from '../facts/talk-facts.ts';
import type { PrintWords } from '../text/print-words.ts';
import { LayerColumn } from './LayerColumn.tsx';
import { StagePlan } from './StagePlan.tsx';

export interface TalkProps {
  readonly snapshot: Snapshot;
  readonly words: PrintWords;
  readonly stage: number;
}

interface PictureProps extends TalkProps {
  readonly picture: string | null;
}

export function TalkPicture({ snapshot, words, stage, picture }: PictureProps) {
  const shown = snapshot.stages[stage];
  if (shown === undefined) return null;
  const label = words.talk.picture(words.stageName(stage + 1, shown.name));
  const { plant } = stageSite(snapshot, shown.id);
  return (
    <div className="talk-picture">
      {picture === null ? (
        <figure>
          <StagePlan snapshot={snapshot} stage={stage} label={label} />
        </figure>
      ) : (
        <figure>
          <img src={picture} alt={label} />
        </figure>
      )}
      <div className="talk-says">
        <p>{words.talk.lays([...new Set(shown.lays.map(({ name }) => name))])}</p>
        <p>{words.talk.machines([...new Set(plant)])}</p>
      </div>
    </div>
  );
}

interface HeapProps extends TalkProps {
  readonly material: string | undefined;
  readonly plan: boolean;
}

export function TalkHeaps({ snapshot, words, stage, material, plan }: HeapProps) {
  const shown = snapshot.stages[stage];
  if (shown === undefined) return null;
  if (material === undefined) return <p>{words.talk.nothingLoose}</p>;
  const heights = talkHeights(snapshot, stage, material);
  const { over, ask, groups } = heights;
  return (
    <div className="talk-heaps">
      {plan && (
        <StagePlan
          snapshot={snapshot}
          stage={stage}
          label={words.talk.heapsOf(snapshot.materialNames.get(material) ?? material)}
          lineOf={(bay) => lineOf(bay, heights, words)}
        />
      )}
      <div className="talk-says">
        <p className="talk-material">{words.talk.heapsOf(snapshot.materialNames.get(material) ?? material)}</p>
        {over.length > 0 && <p className="talk-over">{words.talk.over(over)}</p>}
        {ask.length > 0 && <p className="talk-ask">{words.talk.ask(ask)}</p>}
        <table className="talk-heights">
          <tbody>
            {groups.map(({ heightM, bays }) => (
              <tr key={heightM}>
                <th scope="row">{words.quantity(heightM, 2, 'm')}</th>
                <td>{bays.join(', ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p>{words.talk.rule}</p>
        {plan && <p>{talkLimits(words, [heights])}</p>}
        {shown.stockpiles.map(({ id, material: name, heightM }) => (
          <p key={id}>{words.talk.stockpile(id, name, heightM)}</p>
        ))}
      </div>
    </div>
  );
}

/** What the heights leave out. */
export function talkLimits({ heaps }: PrintWords, shown: readonly TalkHeights[]): string {
  return shown.some(({ groups }) => isUnusual(groups)) ? `${heaps.loadOnly} ${heaps.unusual}` : heaps.loadOnly;
}

function lineOf(bay: string, { groups, over }: TalkHeights, words: PrintWords): string {
  const group = groups.find(({ bays }) => bays.includes(bay));
  if (group !== undefined) return words.quantity(group.heightM, 2, 'm');
  return over.includes(bay) ? '×' : '?';
}

interface LayerProps extends TalkProps {
  /** Build-ups drawn; the others are named. */
  readonly most?: number;
}

export function TalkLayers({ snapshot, words, stage, most }: LayerProps) {
  const buildUps = talkBuildUps(snapshot, stage);
  const others = most === undefined ? [] : buildUps.slice(most);
  if (buildUps.length === 0) return <p>{words.talk.noLayers}</p>;
  return (
    <div className="talk-layers">
      <p>{words.talk.bottomUp}</p>
      <div className="talk-columns">
        {buildUps.slice(0, most).map((buildUp) => (
          <section key={buildUp.id}>
            <h4>{buildUp.name}</h4>
            <LayerColumn buildUp={buildUp} words={words} />
            <p className="talk-zones">{words.talk.inZones(buildUp.zones)}</p>
          </section>
        ))}
      </div>
      {others.length > 0 && <p className="talk-zones">{words.talk.otherBuildUps(others.map(({ name }) => name))}</p>}
    </div>
  );
}

export function TalkStops({ snapshot, words, stage }: TalkProps) {
  const stops = talkStops(snapshot, stage);
  if (stops.length === 0) return <p>{words.talk.noStops}</p>;
  return (
    <div className="talk-stops">
      <p>{words.talk.stop}</p>
      <ul>
        {stops.map(({ hold, fromStage }) => (
          <li key={hold.id} data-open={hold.on === ''}>
            <strong>
              {hold.id} {hold.says}
            </strong>
            {fromStage !== null && <span> ({words.talk.earlier(fromStage)})</span>}
            <span className="block">
              {hold.on === '' ? words.talk.open(hold.releasedBy) : words.talk.released(hold.releasedBy, hold.on)}
            </span>
            {hold.evidence !== '' && <span className="block talk-evidence">{words.talk.evidence(hold.evidence)}</span>}
          </li>
        ))}
      </ul>
    </div>
  );
}

export function TalkSafety({ snapshot, words, stage }: TalkProps) {
  const shown = snapshot.stages[stage];
  if (shown === undefined) return null;
  const { access } = stageSite(snapshot, shown.id);
  return (
    <div className="talk-safety">
      <ul>
        <li>{words.talk.edges}</li>
        <li>{words.talk.lifting}</li>
        <li className="talk-over">{words.talk.crack}</li>
        <li className="talk-over">{words.talk.emergency}</li>
        {access.length > 0 && <li>{words.talk.access(access.map(({ id, kind }) => `${id} (${words.talk.accessKind[kind]})`))}</li>}
      </ul>
      {shown.cautions.length > 0 && (
        <>
          <h4>{words.talk.cautions}</h4>
          <ul>
            {shown.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
