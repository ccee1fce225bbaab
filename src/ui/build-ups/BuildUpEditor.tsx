/** Build-ups and materials, changed. */

export function BuildUpEditor() {
  return null;
}
