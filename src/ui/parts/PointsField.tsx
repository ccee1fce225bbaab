/** Points of a line or outline typed line by line; says what is wrong instead of guessing. */

import type { PointM } from '../../model/scene-file.ts';
import { keptPoints, type PointsRead, pointsText, readPoints } from '../facts/read-points.ts';
import { t } from '../text/text.ts';
import { FieldProblem } from './FieldProblem.tsx';
import { useTyped } from './use-typed.ts';

interface Props {
  readonly label: string;
  readonly value: readonly PointM[];
  readonly least: number;
  readonly onCommit: (points: readonly PointM[]) => void;
}

function complaint(read: Extract<PointsRead, { ok: false }>): string {
  const words = t.stageEditor.points;
  if (read.why === 'too few') return words.tooFew(read.least);
  return read.why === 'two numbers' ? words.twoNumbers(read.line) : words.inLine(read.line, t.number.refused(read.read));
}

export function PointsField({ label, value, least, onCommit }: Props) {
  const { problem, problemId, input } = useTyped({
    shown: pointsText(value),
    lines: true,
    take: (typed) => {
      const read = readPoints(typed, least);
      if (!read.ok) return complaint(read);
      onCommit(keptPoints(read.points, value));
      return null;
    },
  });
  return (
    <span className="points-field">
      <label htmlFor={input.id}>{label}</label>
      <textarea className="text-field" rows={Math.min(8, Math.max(3, value.length))} spellCheck={false} {...input} />
      <FieldProblem id={problemId}>{problem}</FieldProblem>
    </span>
  );
}
