/** Says what the address asked for and there is not, until it is put aside. */

import { useState } from 'react';
import { unknownWishes } from '../address.ts';
import { isLink } from '../file/scene-link.ts';
import { t } from '../text/text.ts';
import type { Demo } from './TopStrip.tsx';

export function AddressStrip({ demos }: { readonly demos: readonly Demo[] }) {
  const [wishes, setWishes] = useState(() => {
    // A link brings its own scene.
    return unknownWishes(
      location.search,
      demos.map(({ id }) => id),
    ).filter(({ what }) => what !== 'scene' || !isLink(location.hash));
  });
  if (wishes.length === 0) return null;
  return (
    <section className="recovered address-strip sheet" aria-label={t.file.address}>
      <div role="status">
        {wishes.map((wish) => (
          <p key={wish.what}>{t.file.unknownWish(wish)}</p>
        ))}
      </div>
      <button type="button" className="button" onClick={() => setWishes([])}>
        {t.file.understood}
      </button>
    </section>
  );
}
