import type { SymbolName } from '#core/graphs';

/** What a symbol is called: one of it, and many of it. */
export const symbolWords: Readonly<Record<SymbolName, { one: string; many: string }>> = {
  leaf: { one: 'leaf', many: 'leaves' },
  drop: { one: 'drop', many: 'drops' },
  sun: { one: 'sun', many: 'suns' },
  cloud: { one: 'cloud', many: 'clouds' },
  boot: { one: 'boot', many: 'boots' },
  seed: { one: 'seed', many: 'seeds' },
  flake: { one: 'snowflake', many: 'snowflakes' },
  star: { one: 'star', many: 'stars' },
  circle: { one: 'circle', many: 'circles' },
  square: { one: 'square', many: 'squares' },
};
