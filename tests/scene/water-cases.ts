/** Faults of rain and of the water numbers of materials, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';

export const WATER_CASES: readonly SceneCase[] = [
  {
    fault: 'rain per square metre',
    code: 'RAIN_UNUSUAL',
    path: 'rain.designLpsHa',
    level: 'warning',
    says: ['0.03 l/(s·ha)', 'write 300'],
    put: (s) => {
      s.rain.designLpsHa = 0.03;
    },
  },
  {
    fault: 'rain of a year in metres',
    code: 'RAIN_UNUSUAL',
    path: 'rain.annualMm',
    level: 'warning',
    says: ['write 800'],
    put: (s) => {
      s.rain.annualMm = 0.8;
    },
  },
  {
    fault: 'another table of run-off',
    code: 'WRONG_VALUE',
    path: 'rain.table',
    says: ['"din-1986-100", "fll-depth"'],
    put: (s) => {
      s.rain.table = 'din-1986';
    },
  },
  {
    fault: 'storage more than full',
    code: 'OUT_OF_RANGE',
    path: 'rain.filledPercent',
    says: ['from 0 to 100 [%]'],
    put: (s) => {
      s.rain.filledPercent = 120;
    },
  },
  {
    fault: 'pores and water held beyond the volume',
    code: 'PORES_UNUSUAL',
    path: 'materials[0].porePercent',
    level: 'warning',
    says: ['70 % beside 35 %', 'at most 100 %'],
    put: (s) => {
      s.materials[0].porePercent = 70;
    },
  },
  {
    fault: 'permeability in centimetres per second',
    code: 'PERMEABILITY_UNUSUAL',
    path: 'materials[0].permeabilityMs',
    level: 'warning',
    says: ['5 m/s', 'write 0.05'],
    put: (s) => {
      s.materials[0].permeabilityMs = 5;
    },
  },
  {
    fault: 'a factor that lowers uplift',
    code: 'OUT_OF_RANGE',
    path: 'flotation.upFactor',
    says: ['from 1 to 3 [-]'],
    put: (s) => {
      s.flotation = { upFactor: 0.9 };
    },
  },
  {
    fault: 'a way of uplift that is not known',
    code: 'WRONG_VALUE',
    path: 'materials[0].uplift',
    says: ['"sealed", "grains"'],
    put: (s) => {
      s.materials[0].uplift = 'gravel';
    },
  },
];
