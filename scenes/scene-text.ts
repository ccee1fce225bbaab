/** Writes a scene as JSON text: one zone, bay, tree … per line, everything above that indented. */

export function sceneText(scene: Readonly<Record<string, unknown>>): string {
  return `${write(scene, '')}\n`;
}

/** Broken over lines: the scene, the deck, its levels, and lists of objects; a single thing stays on its line. */
function write(value: unknown, indent: string): string {
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    const lists = value.length > 0 && value.every((item) => typeof item === 'object' && !isPoint(item));
    if (!lists) return flat(value);
    return `[\n${value.map((item) => inner + flat(item)).join(',\n')}\n${indent}]`;
  }
  if (value === null || typeof value !== 'object') return flat(value);
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  const lines = entries.map(
    ([key, item]) => `${inner}${JSON.stringify(key)}: ${indent.length < 4 && !isSmall(key) ? write(item, inner) : flat(item)}`,
  );
  return `{\n${lines.join(',\n')}\n${indent}}`;
}

const isSmall = (key: string): boolean => key === 'grid' || key === 'rain';
const isPoint = (value: unknown): boolean => Array.isArray(value) && typeof value[0] === 'number';

function flat(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flat).join(', ')}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  if (entries.length === 0) return '{}';
  return `{ ${entries.map(([key, item]) => `${JSON.stringify(key)}: ${flat(item)}`).join(', ')} }`;
}
