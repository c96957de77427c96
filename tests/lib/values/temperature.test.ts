import { expect, it } from 'vitest';
import { printValue } from '../../../lib/figure/print-value.ts';
import {
  readingCelsius,
  readingFahrenheit,
  readingInCelsius,
  riseFahrenheit,
  riseInCelsius,
  warmer,
} from '../../../lib/values/temperature.ts';

it('a rise of 243 °F is 135 °C of rise, never the reading of 117 °C', () => {
  expect(riseInCelsius(riseFahrenheit(243))).toBe(135);
  expect(printValue({ rise: riseFahrenheit(243) }, 'in').other).toBe('135 °C of rise');
  expect(printValue({ reading: readingFahrenheit(243) }, 'in').other).toBe('117 °C');
});

it('a reading and a rise give a reading', () => {
  expect(printValue({ reading: warmer(readingFahrenheit(70), riseFahrenheit(317)) }, 'in')).toEqual({
    text: '387',
    unit: '°F',
    other: '197 °C',
  });
  expect(readingInCelsius(readingCelsius(100))).toBe(100);
  expect(readingCelsius(100)).toBe(readingFahrenheit(212));
});
