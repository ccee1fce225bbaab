/** Schemes side by side. */

export function VariantSheet() {
  return null;
}
