export type { Brand } from './brand';
export { failed, ok, type Result } from './result';
