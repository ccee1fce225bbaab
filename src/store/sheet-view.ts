/** Print sheets and the cards of the toolbox talk, as far as the view store knows them. */

export const SHEETS = ['engineer', 'heaps', 'talk', 'findings', 'section'] as const;
export type SheetName = (typeof SHEETS)[number];

export const isSheet = (text: unknown): text is SheetName => SHEETS.some((sheet) => sheet === text);

/** Today's picture · heaps · order of layers · stop points · edges, lifting, emergency. */
export const CARDS = ['picture', 'heaps', 'layers', 'stops', 'safety'] as const;
export type CardName = (typeof CARDS)[number];
