/** Files as people hand them over: other encodings are read, what is no text is told. */

import { describe, expect, it } from 'vitest';
import { MAX_FILE_BYTES, readSceneText } from '../../src/ui/read-scene-text.ts';

const file = (bytes: Iterable<number>, name = 'a.scene.json') => new File([Uint8Array.from(bytes)], name);

describe('readSceneText', () => {
  it('reads UTF-8 with and without its mark', async () => {
    const text = '{"name":"Süd–Hof"}';
    const bytes = [...new TextEncoder().encode(text)];
    expect(await readSceneText(file(bytes))).toEqual({ ok: true, text });
    expect(await readSceneText(file([0xef, 0xbb, 0xbf, ...bytes]))).toEqual({ ok: true, text });
  });

  it('reads UTF-16 with its mark, either way round', async () => {
    // "Hü" is U+0048 U+00FC
    expect(await readSceneText(file([0xff, 0xfe, 0x48, 0x00, 0xfc, 0x00]))).toEqual({ ok: true, text: 'Hü' });
    expect(await readSceneText(file([0xfe, 0xff, 0x00, 0x48, 0x00, 0xfc]))).toEqual({ ok: true, text: 'Hü' });
  });

  it('says what is no text, by name', async () => {
    const read = await readSceneText(file([0x89, 0x50, 0x4e, 0x47, 0xff], 'photo.png'));
    expect(read).toMatchObject({ ok: false, says: expect.stringMatching(/photo\.png is not a text file in UTF-8/) });
  });

  it('refuses what is too large without reading it', async () => {
    const huge = { name: 'big.json', size: MAX_FILE_BYTES + 1, arrayBuffer: () => Promise.reject(new Error('was read')) };
    expect(await readSceneText(huge)).toMatchObject({ ok: false, says: expect.stringMatching(/20\.0 MB.*20 MB/) });
  });

  it('says when the disk refuses', async () => {
    const gone = { name: 'gone.json', size: 10, arrayBuffer: () => Promise.reject(new Error('gone')) };
    expect(await readSceneText(gone)).toMatchObject({ ok: false, says: expect.stringMatching(/gone\.json could not be read/) });
  });

  it('leaves an empty file to the check of the scene, which says more', async () => {
    expect(await readSceneText(file([]))).toEqual({ ok: true, text: '' });
  });
});
