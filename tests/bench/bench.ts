/**
 * `npm run bench`: times the core's kernels as ratios to a copy in the same run; one process per cell size.
 * Aims are those of the design study for this core (signed-area shares, affine loads, 1 m² means, nets, water); a missed one is noted.
 */

import { spawnSync } from 'node:child_process';
import { cpus } from 'node:os';
import type { BenchCase } from './bench-case.ts';
import { benchCases } from './cases.ts';

const ROUNDS = 11;

const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1];

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Work and copy in turn, so that whatever else the machine does hits both alike. */
function measure({ run, copy }: BenchCase): { workMs: number; copyMs: number; ratio: number } {
  for (let i = 0; i < 3; i++) {
    run();
    copy();
  }
  const work: number[] = [];
  const copies: number[] = [];
  // A copy of microseconds is below the clock: enough of them to be seen.
  const repeats = Math.max(1, Math.ceil(0.5 / Math.max(timed(copy), 0.001)));
  for (let round = 0; round < ROUNDS; round++) {
    work.push(timed(run));
    copies.push(
      timed(() => {
        for (let i = 0; i < repeats; i++) copy();
      }) / repeats,
    );
  }
  const workMs = median(work);
  const copyMs = median(copies);
  return { workMs, copyMs, ratio: workMs / copyMs };
}

function benchOne(cellM: number): void {
  const cells = Math.round((100 / cellM) ** 2);
  console.log(`\n${cellM} m cells, ${cells.toLocaleString('en-GB')} of them`);
  for (const entry of benchCases(cellM)) {
    const { workMs, copyMs, ratio } = measure(entry);
    const aim = entry.target === null ? '' : `aim ${entry.target.toPrecision(3)}${ratio > entry.target * 1.1 ? '  MISSED' : ''}`;
    const numbers = `${workMs.toFixed(3).padStart(9)} ms  limit ${copyMs.toFixed(4).padStart(9)} ms  × ${ratio.toPrecision(3).padEnd(7)}`;
    console.log(`  ${entry.id.padEnd(11)} ${numbers} ${aim.padEnd(20)} ${entry.what} / ${entry.limit}`);
  }
}

const only = process.argv[2];
if (only !== undefined) {
  benchOne(Number(only));
} else {
  console.log(`Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} processors`);
  for (const cellM of ['0.25', '0.1']) {
    const child = spawnSync(process.execPath, [...process.execArgv, process.argv[1], cellM], { stdio: 'inherit' });
    if (child.status !== 0) process.exitCode = 1;
  }
}
