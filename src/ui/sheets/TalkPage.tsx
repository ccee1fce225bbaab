/** The toolbox talk on one page of paper, with lines to fill in and to sign. */

import { talkHeights, talkMaterials } from '../facts/talk-facts.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { TalkHeaps, TalkLayers, TalkPicture, type TalkProps, TalkSafety, TalkStops, talkLimits } from './talk-parts.tsx';

const SIGNATURES = 12;
/** More materials would push the list to sign off the page. */
const MATERIALS = 2;
const BUILD_UPS = 3;

export function TalkPage({ snapshot, words, stage, picture }: TalkProps & { readonly picture: string | null }) {
  const talk = { snapshot, words, stage };
  const { card } = words.talk;
  const materials = talkMaterials(snapshot, stage).slice(0, MATERIALS);
  return (
    <div className="talk-page">
      <h2>{words.talk.title(words.stageName(stage + 1, snapshot.stages[stage]?.name ?? ''))}</h2>
      <div className="talk-page-columns">
        <section>
          <h3>1 {card.picture}</h3>
          <TalkPicture {...talk} picture={picture} />
        </section>
        <section>
          <h3>2 {card.heaps}</h3>
          {materials.length === 0 && <TalkHeaps {...talk} material={undefined} plan={false} />}
          {materials.map((material) => (
            <TalkHeaps key={material} {...talk} material={material} plan={false} />
          ))}
          {materials.length > 0 && (
            <p>
              {talkLimits(
                words,
                materials.map((material) => talkHeights(snapshot, stage, material)),
              )}
            </p>
          )}
        </section>
        <section>
          <h3>3 {card.layers}</h3>
          <TalkLayers {...talk} most={BUILD_UPS} />
        </section>
        <section>
          <h3>4 {card.stops}</h3>
          <TalkStops {...talk} />
        </section>
        <section>
          <h3>5 {card.safety}</h3>
          <TalkSafety {...talk} />
        </section>
      </div>
      <TalkSigns words={words} />
    </div>
  );
}

function TalkSigns({ words }: Pick<TalkProps, 'words'>) {
  return (
    <div className="talk-signs">
      <p className="talk-fill">
        {[...words.talk.toFill, ...words.talk.given, words.talk.questions].map((what) => (
          <span key={what}>{what}</span>
        ))}
      </p>
      <p>{words.talk.sign}</p>
      <div className="talk-sign-columns">
        {[0, 1].map((column) => (
          <table key={column}>
            <TableHead heads={words.talk.signHead} />
            <tbody>
              {Array.from({ length: SIGNATURES / 2 }, (_, row) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: empty lines
                <tr key={row}>
                  <td />
                  <td />
                  <td />
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      </div>
    </div>
  );
}
