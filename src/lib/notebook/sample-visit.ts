/**
 * A look around the made-up notebook. It is opened in memory beside the family's own, which stays
 * untouched; nothing done in it is kept, and leaving it throws it away.
 */
export const visitSample = (): void => sessionStorage.setItem(visitKey, 'yes');

export const leaveSample = (): void => sessionStorage.removeItem(visitKey);

export function isVisitingSample(): boolean {
  try {
    return sessionStorage.getItem(visitKey) !== null;
  } catch {
    return false;
  }
}

const visitKey = 'morning-measure:sample';
