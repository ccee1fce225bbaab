/** Facts line by line: what it is on the left, its value on the right. */

export interface Fact {
  readonly name: string;
  readonly value: string;
  /** Marked: something is wrong with it. */
  readonly wrong?: boolean;
}

export function FactTable({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="facts">
      {facts.map(({ name, value, wrong = false }) => (
        <div key={name} data-wrong={wrong}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
