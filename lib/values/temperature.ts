/** How much warmer one thing is than another, in thousandths of a Fahrenheit degree. Never to be shown with the 32 added. */
export type Rise = number & { readonly in: 'm°F of rise' };
/** What a thermometer shows, in thousandths of a degree Fahrenheit. */
export type Reading = number & { readonly in: 'm°F' };

const whole = (x: number): number => {
  if (!Number.isFinite(x)) throw new RangeError(`${x} is no temperature`);
  return Math.round(x * 1000) || 0;
};

export const riseFahrenheit = (degF: number): Rise => whole(degF) as Rise;
export const readingFahrenheit = (degF: number): Reading => whole(degF) as Reading;
export const readingCelsius = (degC: number): Reading => whole((degC * 9) / 5 + 32) as Reading;

export const riseInFahrenheit = (rise: Rise): number => rise / 1000;
/** 9 Fahrenheit degrees of rise are 5 Celsius degrees of rise. */
export const riseInCelsius = (rise: Rise): number => (rise / 1000) * (5 / 9);
export const readingInFahrenheit = (reading: Reading): number => reading / 1000;
export const readingInCelsius = (reading: Reading): number => (reading / 1000 - 32) * (5 / 9);

export const warmer = (start: Reading, rise: Rise): Reading => (start + rise) as Reading;
