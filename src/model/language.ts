/** Languages the tool speaks. */

export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

export const isLanguage = (text: unknown): text is Language => LANGUAGES.some((language) => language === text);
