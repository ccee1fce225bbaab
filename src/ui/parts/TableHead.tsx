/** The head of a table: one row of names. */

export function TableHead({ heads }: { readonly heads: readonly string[] }) {
  return (
    <thead>
      <tr>
        {heads.map((head) => (
          <th key={head} scope="col">
            {head}
          </th>
        ))}
      </tr>
    </thead>
  );
}
