/** The scene as a link, with its size; or what to do where it is too large for one. */

import { useState } from 'react';
import { t } from '../text/text.ts';
import { MOST_CHARACTERS } from './scene-link.ts';
import { useShareLink } from './use-share-link.ts';

export function ShareLink() {
  const link = useShareLink();
  const [copied, setCopied] = useState(false);
  if (link === null) return null;
  if (link.length > MOST_CHARACTERS) return <p className="small">{t.file.linkTooLong(link.length, MOST_CHARACTERS)}</p>;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setCopied(true);
    } catch {
      // Without permission the link can still be marked and copied by hand.
      setCopied(false);
    }
  };
  return (
    <section className="share">
      <label className="file-name">
        {t.file.link(link.length)}
        <input type="text" readOnly value={link} onFocus={(event) => event.target.select()} />
      </label>
      <button type="button" className="button" onClick={() => void copy()}>
        {copied ? t.file.linkCopied : t.file.copyLink}
      </button>
      <p className="small">{t.file.linkSays}</p>
    </section>
  );
}
