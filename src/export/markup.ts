/** Texts in markup, of pages and drawings alike. */

/** Text for an element or an attribute. */
export function markupText(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: markup has no place for them
      .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, '')
      .replaceAll('&', '&amp;')
      .replaceAll('<', '&lt;')
      .replaceAll('>', '&gt;')
      .replaceAll('"', '&quot;')
      .replaceAll("'", '&#39;')
  );
}
