/** What is typed into a field, and what is wrong with it: taken over on Enter or when leaving; Escape gives back what was there. */

import { type ChangeEvent, type KeyboardEvent, type ReactNode, useEffect, useId, useState } from 'react';

interface Options<Problem> {
  /** Text of the value that holds; another one from elsewhere replaces what was typed. */
  readonly shown: string;
  /** Takes over what was typed; where it cannot, null becomes what is wrong. */
  readonly take: (typed: string) => Problem | null;
  /** Enter begins a line of its own; Ctrl and Enter takes over. */
  readonly lines?: boolean;
}

type Field = HTMLInputElement | HTMLTextAreaElement;

export function useTyped<Problem = ReactNode>({ shown, take, lines = false }: Options<Problem>) {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const id = useId();
  const reset = () => {
    setTyped(null);
    setProblem(null);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs when the value changes, whatever it is
  useEffect(reset, [shown]);
  const commit = () => {
    if (typed === null) return;
    // As it was shown, which may be rounded for reading: nothing was typed.
    const why = typed === shown ? null : take(typed);
    setProblem(why);
    if (why === null) setTyped(null);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && (!lines || event.ctrlKey || event.metaKey)) commit();
    if (event.key === 'Escape') reset();
  };
  const problemId = `${id}-problem`;
  return {
    problem,
    problemId,
    reset,
    input: {
      id,
      autoComplete: 'off',
      'aria-invalid': problem !== null,
      'aria-describedby': problem === null ? undefined : problemId,
      value: typed ?? shown,
      // What was wrong was said of a text that is no longer there.
      onChange: ({ target }: ChangeEvent<Field>) => {
        setTyped(target.value);
        setProblem(null);
      },
      onBlur: commit,
      onKeyDown,
    },
  };
}
