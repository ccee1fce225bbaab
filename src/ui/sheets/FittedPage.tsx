/** What must stay on one page: set smaller until it does. */

import { type CSSProperties, type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { type PaperSize, roomMm } from './paged-sheet.ts';

const SHRINK = 0.95;
/** Smaller cannot be read; what is too long then ends at the foot of the page and the screen says so. */
const LEAST = 0.55;

interface Props {
  readonly paper: PaperSize;
  readonly children: ReactNode;
}

export function FittedPage({ paper, children }: Props) {
  const box = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState(1);
  const { heightMm } = roomMm(paper);
  useLayoutEffect(() => {
    const { current } = box;
    if (current === null) return;
    const shrink = () => {
      let at = 1;
      for (; at > LEAST; at *= SHRINK) {
        current.style.setProperty('--fit', String(at));
        if (current.scrollHeight <= current.clientHeight + 1) break;
      }
      setSize(at);
    };
    shrink();
    void document.fonts.ready.then(shrink);
  });
  return (
    <div className="fitted-page" ref={box} style={{ height: `${heightMm}mm`, '--fit': size } as CSSProperties}>
      {children}
    </div>
  );
}
