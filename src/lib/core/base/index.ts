export type { Brand } from './brand';
export { failed, ok, type Result } from './result';
export { oneOf, seededRandom, type Random } from './seeded-random';
