/** Width of an element as the page lays it out, followed live. */

import { type RefObject, useLayoutEffect, useState } from 'react';

export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return;
    const observer = new ResizeObserver(() => setWidthPx(current.clientWidth));
    observer.observe(current);
    setWidthPx(current.clientWidth);
    return () => observer.disconnect();
  }, [element]);
  return widthPx;
}
