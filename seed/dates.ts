const DAY_MS = 86_400_000;

/** So many days before the present, as ISO text. */
export const daysBefore = (now: string, days: number): string => new Date(Date.parse(now) - days * DAY_MS).toISOString();

/** So many days after the present, as a day. */
export const dayAfter = (now: string, days: number): string => daysBefore(now, -days).slice(0, 10);
