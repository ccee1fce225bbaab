/** Whether files dropped at once are scenes, before any is opened. */

/** Whether both are scenes, by what stands in them; in text of two bytes per letter every other one is zero. */
export async function areScenes(files: readonly File[]): Promise<boolean> {
  const bytes = await Promise.all(files.map((file) => file.arrayBuffer().catch(() => new ArrayBuffer(0))));
  const texts = bytes.map((one) => new TextDecoder('windows-1252').decode(one).replaceAll('\0', ''));
  return texts.every((text) => text.includes('"loamdeck-scene"'));
}
