/** Stages, changed. */

export function StageEditor() {
  return null;
}
