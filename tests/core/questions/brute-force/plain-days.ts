/** Days as numbers, counted by the built-in calendar of the language: no calendar of our own. */
export const numberOfDay = (day: string): number => {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  return Date.UTC(year, month - 1, date) / 86_400_000;
};

export const dayOfNumber = (number: number): string =>
  new Date(number * 86_400_000).toISOString().slice(0, 10);

/** 1 is Monday, 7 is Sunday. 1970-01-01 was a Thursday. */
export const weekdayOfNumber = (number: number): number => ((((number + 3) % 7) + 7) % 7) + 1;

export const minutesOf = (time: string): number =>
  Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

export const timeOf = (minutes: number): string =>
  [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');
