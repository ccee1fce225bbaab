/** Texts of a drawing without their formatting. */

const SIGNS: Readonly<Record<string, string>> = { d: '°', p: '±', c: '⌀', '%': '%' };

/** Signs written as `%%d` and letters as `\U+00FC`, in all kinds of text. */
function plainSigns(text: string): string {
  return text
    .replace(/%%(\d{3})/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replace(/%%([a-z%])/gi, (_, sign: string) => SIGNS[sign.toLowerCase()] ?? '')
    .replace(/\\U\+([0-9a-f]{4})/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

/** A single line of text. */
export function plainText(text: string): string {
  return plainSigns(text);
}

/** A paragraph: line breaks become blanks, fonts, heights and fractions are taken off. */
export function plainParagraph(text: string): string {
  return plainSigns(text)
    .replace(/\\\\/g, '\u0001')
    .replace(/\\[{}]/g, (brace) => (brace === '\\{' ? '\u0002' : '\u0003'))
    .replace(/\\[Pp~]/g, ' ')
    .replace(/\\S([^;]{0,60});/g, (_, parts: string) => parts.replace(/[#^]/, '/'))
    .replace(/\\[ACFHQTWfc][^;\\{}]{0,200};/g, '')
    .replace(/\\[LlOoKkNX]/g, '')
    .replace(/[{}]/g, '')
    .replaceAll('\u0001', '\\')
    .replaceAll('\u0002', '{')
    .replaceAll('\u0003', '}')
    .trim();
}
