/** How a number comes about: every formula with its numbers, every input with its source, and the whole worked out again. */

import { useEffect, useRef, useState } from 'react';
import type { DerivationAsk, Term } from '../../model/derivation.ts';
import { derivationLines, formulaText, printedValue, recomputed } from '../facts/derivation-lines.ts';
import { Icon } from '../parts/Icon.tsx';
import type { PrintWords } from '../text/print-words.ts';
import { useScene } from '../use-stores.ts';

interface Props {
  readonly ask: DerivationAsk;
  readonly words: PrintWords;
  readonly onClose: () => void;
}

/** Numbers are printed with seven digits [-]. */
const PRINTED = 1e-5;

/** Beside a print sheet. */
export function DerivationPanel(props: Props) {
  return (
    <aside className="derivation" aria-label={props.words.derivation.title}>
      <Derivation {...props} />
    </aside>
  );
}

export function Derivation({ ask, words, onClose }: Props) {
  const derive = useScene((state) => state.derive);
  const snapshot = useScene((state) => state.snapshot);
  const [answer, setAnswer] = useState<{ readonly term: Term | null } | null>(null);
  const panel = useRef<HTMLDivElement>(null);
  const close = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    let stale = false;
    setAnswer(null);
    // Asked anew when the scene was edited meanwhile.
    if (snapshot === null) return;
    void derive(ask).then((term) => {
      if (!stale) setAnswer({ term });
    });
    return () => {
      stale = true;
    };
  }, [ask, derive, snapshot]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each number that was tapped has the focus again afterwards
  useEffect(() => {
    const before = document.activeElement;
    close.current?.focus();
    const { current } = panel;
    return () => {
      if (current?.contains(document.activeElement) && before instanceof HTMLElement) before.focus();
    };
  }, [ask]);
  return (
    <div ref={panel} aria-busy={answer === null}>
      <header>
        <h2 className="panel-title">{words.derivation.title}</h2>
        <button ref={close} type="button" className="icon-button" aria-label={words.derivation.close} onClick={onClose}>
          <Icon name="close" />
        </button>
      </header>
      {answer !== null && (answer.term === null ? <p>{words.derivation.nothing}</p> : <Tree term={answer.term} words={words} />)}
    </div>
  );
}

const unitText = (unit: string) => (unit === '-' ? '' : `\u202F${unit}`);

function Tree({ term, words }: { readonly term: Term; readonly words: PrintWords }) {
  const { exact } = words.derivation;
  const again = recomputed(term, (value) => printedValue(exact(value)));
  const agrees = Math.abs(again - term.value) <= PRINTED * Math.max(1, Math.abs(term.value));
  const text = `${exact(again)}${unitText(term.unit)}`;
  return (
    <>
      <p className="derivation-value" data-testid="derivation-value">
        {words.derivation.term(term.name, term.of)} = <strong>{`${exact(term.value)}${unitText(term.unit)}`}</strong>
      </p>
      <ul className="derivation-lines">
        {derivationLines(term).map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no id and their order is that of the formula
          <Line key={i} {...line} words={words} />
        ))}
      </ul>
      <p className="derivation-again" data-agrees={agrees}>
        {agrees ? words.derivation.recomputed(text) : words.derivation.differs(text)}
      </p>
    </>
  );
}

interface LineProps {
  readonly term: Term;
  readonly depth: number;
  readonly words: PrintWords;
}

function Line({ term, depth, words }: LineProps) {
  const { exact, term: nameOf, from, steps } = words.derivation;
  const formula = formulaText(term, exact, steps);
  return (
    <li style={{ paddingLeft: `${Math.min(depth, 6) * 12}px` }} data-depth={depth} data-given={'source' in term.how}>
      <span className="derivation-name">{nameOf(term.name, term.of)}</span>
      <span className="derivation-number">
        {formula !== '' && <span className="derivation-formula">{formula} = </span>}
        {`${exact(term.value)}${unitText(term.unit)}`}
      </span>
      {'source' in term.how && <span className="small block">{from(term.how.source)}</span>}
    </li>
  );
}
