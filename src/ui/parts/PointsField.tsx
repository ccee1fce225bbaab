/** Points of a line or outline typed line by line; says what is wrong instead of guessing. Taken over when leaving, or with Ctrl and Enter. */

import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import type { PointM } from '../../model/scene-file.ts';
import { keptPoints, type PointsRead, pointsText, readPoints } from '../facts/read-points.ts';
import { t } from '../text/text.ts';

interface Props {
  readonly label: string;
  readonly value: readonly PointM[];
  readonly least: number;
  readonly onCommit: (points: readonly PointM[]) => void;
}

function complaint(read: PointsRead): string {
  const words = t.stageEditor.points;
  if (read.ok) return '';
  if (read.why === 'too few') return words.tooFew(read.least);
  return read.why === 'two numbers' ? words.twoNumbers(read.line) : words.inLine(read.line, t.number.refused(read.read));
}

export function PointsField({ label, value, least, onCommit }: Props) {
  const shown = pointsText(value);
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const id = useId();
  // Points moved elsewhere replace what was typed and its complaint.
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs when the points change, whatever they are
  useEffect(() => {
    setTyped(null);
    setProblem('');
  }, [shown]);
  const commit = () => {
    if (typed === null) return;
    if (typed === shown) {
      setTyped(null);
      return;
    }
    const read = readPoints(typed, least);
    setProblem(complaint(read));
    if (!read.ok) return;
    setTyped(null);
    onCommit(keptPoints(read.points, value));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) commit();
    if (event.key === 'Escape') {
      setTyped(null);
      setProblem('');
    }
  };
  return (
    <span className="points-field">
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        className="text-field"
        rows={Math.min(8, Math.max(3, value.length))}
        spellCheck={false}
        aria-invalid={problem !== ''}
        aria-describedby={problem === '' ? undefined : `${id}-problem`}
        value={typed ?? shown}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={commit}
        onKeyDown={onKeyDown}
      />
      {problem !== '' && (
        <span className="points-problem" id={`${id}-problem`} role="alert">
          {problem}
        </span>
      )}
    </span>
  );
}
