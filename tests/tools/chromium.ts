/** The Chromium that the tests drive: unpacked once from its npm package, or the one at CHROMIUM_PATH. */

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chmod, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { brotliDecompress } from 'node:zlib';
import type { LaunchOptions } from 'playwright-core';

const ROOT = resolve(import.meta.dirname, '../..');
const PACKAGE = join(ROOT, 'node_modules/@sparticuz/chromium');

/** Folder for everything the tests leave behind. */
export const CACHE = join(ROOT, 'node_modules/.cache');

/** Software rendering everywhere, so that a machine with a graphics card draws the same pixels as one without. */
const ARGS = [
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
  '--font-render-hinting=none',
  '--disable-lcd-text',
];

const inflate = promisify(brotliDecompress);

async function readPacked(file: string): Promise<Buffer> {
  return inflate(await readFile(join(PACKAGE, 'bin', file)));
}

async function untar(file: string, into: string): Promise<void> {
  await mkdir(into, { recursive: true });
  const tar = spawnSync('tar', ['-x', '--no-same-owner', '-C', into], { input: await readPacked(file) });
  if (tar.status !== 0) throw new Error(`untar: ${file}: ${tar.error?.message ?? tar.stderr.toString()}`);
}

/** Everything goes into a folder of its own name first: a run cut short leaves no half-written browser behind. */
async function unpack(target: string): Promise<void> {
  const draft = `${target}.${process.pid}.draft`;
  await mkdir(draft, { recursive: true });
  await writeFile(join(draft, 'chromium'), await readPacked('chromium.br'));
  await chmod(join(draft, 'chromium'), 0o755);
  await untar('swiftshader.tar.br', draft);
  await untar('al2023.tar.br', draft);
  await untar('fonts.tar.br', join(draft, 'fonts'));
  await writeFile(
    join(draft, 'fonts/fonts.conf'),
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${target}/fonts/fonts</dir><cachedir>${target}/fonts-cache</cachedir></fontconfig>`,
  );
  try {
    await rename(draft, target);
  } catch (error) {
    // Another run may have finished first; its copy serves as well.
    await rm(draft, { recursive: true, force: true });
    if (!existsSync(join(target, 'chromium'))) throw error;
  }
}

/** How playwright starts the browser. */
export async function launchOptions(): Promise<LaunchOptions> {
  const own = process.env.CHROMIUM_PATH;
  if (own) return { executablePath: own, args: ARGS };
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('launchOptions: the packaged Chromium is for Linux x64; set CHROMIUM_PATH to a Chromium or Chrome of this machine');
  }
  const { version } = JSON.parse(await readFile(join(PACKAGE, 'package.json'), 'utf8')) as { version: string };
  const folder = join(CACHE, `chromium-${version}`);
  if (!existsSync(join(folder, 'chromium'))) await unpack(folder);
  const libraries = [process.env.LD_LIBRARY_PATH, join(folder, 'lib')].filter(Boolean).join(':');
  return {
    executablePath: join(folder, 'chromium'),
    args: ARGS,
    env: { ...process.env, LD_LIBRARY_PATH: libraries, FONTCONFIG_PATH: join(folder, 'fonts') },
  };
}
