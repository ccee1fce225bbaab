/** Small line drawings for buttons; always beside or instead of a label that a screen reader gets. */

const PATHS = {
  plus: 'M8 3v10M3 8h10',
  minus: 'M3 8h10',
  undo: 'M3 6.5h6.5a3.5 3.5 0 0 1 0 7H6M6 3L2.5 6.5 6 10',
  redo: 'M13 6.5H6.5a3.5 3.5 0 0 0 0 7H10M10 3l3.5 3.5L10 10',
  close: 'M4 4l8 8M12 4l-8 8',
  play: 'M5 3.5v9l7.5-4.5z',
  pause: 'M5.5 3.5v9M10.5 3.5v9',
  previous: 'M10 3.5L5.5 8l4.5 4.5',
  next: 'M6 3.5L10.5 8 6 12.5',
  up: 'M3.5 10L8 5.5l4.5 4.5',
  down: 'M3.5 6L8 10.5 12.5 6',
  home: 'M2.5 8L8 3l5.5 5M4.5 7v6h7V7',
  plan: 'M3 3h10v10H3zM3 7.5h5.5M8.5 3v10',
  side: 'M2 12.5h12M3.5 12.5v-3h9v3M5 9.5v-3h6v3',
  cut: 'M2.5 13.5h11M3 11h4V3.5H3zM10 2v12M12 4l1.5 1.5M12 8l1.5 1.5',
  site: 'M2.5 14V3M2.5 3.5h6l-1.5 2 1.5 2h-6M6 13.5h1.5M9.5 13.5H11M13 12.5V11M13 9V7.5',
  eye: 'M1.5 8S4 4 8 4s6.5 4 6.5 4-2.5 4-6.5 4-6.5-4-6.5-4zM8 6.2a1.8 1.8 0 1 1 0 3.6 1.8 1.8 0 0 1 0-3.6z',
  hidden: 'M1.5 8S4 4 8 4s6.5 4 6.5 4-2.5 4-6.5 4-6.5-4-6.5-4zM2.5 13.5l11-11',
  only: 'M8 5.5a2.5 2.5 0 1 1 0 5 2.5 2.5 0 0 1 0-5zM2.5 5V2.5H5M11 2.5h2.5V5M13.5 11v2.5H11M5 13.5H2.5V11',
  garden: 'M8 14V7M8 9.5C4 9.5 3 7 3 4.5c3 0 5 1.5 5 5zM8 7.5c0-3 1.5-5 5-5 0 3-1.5 5-5 5z',
  keys: 'M2 4.5h12v7H2zM4.5 7h1M7.5 7h1M10.5 7h1M5 9.5h6',
  section: 'M2 4.5h12M2 12.5h12M3.5 4.5v8M12.5 4.5v8M3.5 9.5l5-5M3.5 12.5l8-8M7 12.5l5.5-5.5',
  save: 'M8 2.5v7M5 7l3 3 3-3M3 12.5v1h10v-1',
  gear: 'M8 5.5a2.5 2.5 0 1 1 0 5 2.5 2.5 0 0 1 0-5zM8 2v1.5M8 12.5V14M2 8h1.5M12.5 8H14M3.8 3.8l1 1M11.2 11.2l1 1M3.8 12.2l1-1M11.2 4.8l1-1',
  grip: 'M6 3.5h.1M6 8h.1M6 12.5h.1M10 3.5h.1M10 8h.1M10 12.5h.1',
  pencil: 'M3 13l.8-3.2L10.8 2.8l2.4 2.4L6.2 12.2zM9.2 4.4l2.4 2.4',
  file: 'M4 2h5l3 3v9H4zM9 2v3h3',
  arrow: 'M4 2.5l8 5.5-3.8.6 2.1 4-1.7.9-2.1-4L4 12z',
  outline: 'M3 12.5L5 4l6-1.5L13 9l-4 4z',
  rectangle: 'M2.5 4h11v8h-11z',
  magnet: 'M4 2.5v5a4 4 0 0 0 8 0v-5M4 5.5h2.5M9.5 5.5H12M6.5 2.5v5a1.5 1.5 0 0 0 3 0v-5M4 2.5h2.5M9.5 2.5H12',
  shared: 'M2.5 3.5h4.5v9H2.5zM9 3.5h4.5v9H9M8 1.5v13',
  wide: 'M6 4L2 8l4 4M10 4l4 4-4 4M2 8h12',
  lock: 'M4 7.5h8v6H4zM5.5 7.5v-2a2.5 2.5 0 0 1 5 0v2',
  unlocked: 'M4 7.5h8v6H4zM5.5 7.5v-2a2.5 2.5 0 0 1 4.8-1',
  trash: 'M3.5 4.5h9M6 4.5V3h4v1.5M4.5 4.5l.6 9h5.8l.6-9M6.8 7v4M9.2 7v4',
} as const;

export type IconName = keyof typeof PATHS;

export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
      <path d={PATHS[name]} />
    </svg>
  );
}
