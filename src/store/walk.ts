/** The walkthrough: what is shown to people who only look. Part of the view store; nothing of the scene lives here. */

/** Looks of the page: paper for work, projector for a beamer in a lit room, sun for a tablet outdoors. */
export const THEMES = ['paper', 'projector', 'sun'] as const;
export type Theme = (typeof THEMES)[number];

/** What keys and buttons ask of the person on foot, each -1 … 1. */
export interface Drive {
  readonly ahead: number;
  readonly aside: number;
  /** Clockwise. */
  readonly turn: number;
}

export const STANDING: Drive = { ahead: 0, aside: 0, turn: 0 };

export interface Walk {
  /** Index of the view last gone to. */
  readonly at: number;
  /** First person, on the finished surface. */
  readonly onFoot: boolean;
  readonly drive: Drive;
  /** People, benches and plants are drawn. */
  readonly life: boolean;
  /** As a drawing: without people, plants, sun and shadow. */
  readonly plain: boolean;
  /** Hour of the day that the sun stands at, 6 … 20. */
  readonly hour: number;
  /** `slow`: left out because frames took too long. */
  readonly shadow: 'on' | 'off' | 'slow';
  /** Nothing is laid yet: before the first stage. */
  readonly bare: boolean;
  /** Stages follow one another by themselves. */
  readonly changing: boolean;
  /** The layers of the picked cell are lifted out. */
  readonly lifted: boolean;
}

export const FIRST_STEP: Walk = {
  at: 0,
  onFoot: false,
  drive: STANDING,
  life: true,
  plain: false,
  hour: 10,
  shadow: 'on',
  bare: false,
  changing: false,
  lifted: false,
};
