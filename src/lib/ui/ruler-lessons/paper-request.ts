import type { UnitFamily } from '#core/lessons';

/** What an address asks for: which sheet, and in which units; null where it does not say. */
export interface PaperTasksRequest {
  readonly sheetNumber: number;
  readonly family: UnitFamily | null;
}

/** Reads the address of the printed tasks. What it does not understand is left out. */
export function paperTasksRequest(params: URLSearchParams): PaperTasksRequest {
  const sheet = params.get('sheet') ?? '';
  const unit = params.get('unit');
  return {
    sheetNumber: /^[1-9]\d{0,3}$/.test(sheet) ? Number(sheet) : 1,
    family: unit === 'cm' ? 'centimetres' : unit === 'in' ? 'inches' : null,
  };
}

/** The same address with one thing of it changed. */
export const searchWith = (params: URLSearchParams, name: string, value: string): string => {
  const changed = new URLSearchParams(params);
  changed.set(name, value);
  return `?${changed}`;
};
