/** The link of the scene as a QR code on paper, with where it leads; or why there is none. */

import { MOST_QR_BYTES, type QrCode } from '../facts/qr-code.ts';
import type { PrintWords } from '../text/print-words.ts';

/** Of the whole code: squares of the largest are still over 0.5 mm then, which telephones read from paper (common practice). */
const MOST_SIDE_MM = 100;
const MOST_SQUARE_MM = 1;

export const codeSideMm = ({ size }: QrCode): number => Math.min(MOST_SIDE_MM, size * MOST_SQUARE_MM);

interface Props {
  readonly link: string;
  readonly code: QrCode;
  readonly words: PrintWords;
}

export function ShareCode({ link, code, words }: Props) {
  const side = `${codeSideMm(code)}mm`;
  return (
    <figure className="share-code" style={{ width: side }}>
      <svg role="img" aria-label={words.share.code} width={side} height={side} viewBox={`0 0 ${code.size} ${code.size}`}>
        <rect width={code.size} height={code.size} fill="#ffffff" />
        <path d={code.path} fill="#000000" shapeRendering="crispEdges" />
      </svg>
      <figcaption>{words.share.says(link.replace(/[?#].*$/, ''))}</figcaption>
    </figure>
  );
}

export function NoShareCode({ link, words }: Pick<Props, 'link' | 'words'>) {
  return <p className="share-none">{words.share.tooLong(new TextEncoder().encode(link).length, MOST_QR_BYTES)}</p>;
}
