declare const brandName: unique symbol;

/** A value checked once at a door, so that it cannot be mixed up with a look-alike inside. */
export type Brand<Value, Name extends string> = Value & { readonly [brandName]: Name };
