/** Reckons a thing once for each whole it is about, however often it is asked for. */
export const knownOnce = <Whole extends object, Found>(
  reckon: (whole: Whole) => Found,
): ((whole: Whole) => Found) => {
  const known = new WeakMap<Whole, { readonly found: Found }>();
  return (whole) => {
    const before = known.get(whole);
    if (before) return before.found;
    const found = reckon(whole);
    known.set(whole, { found });
    return found;
  };
};
