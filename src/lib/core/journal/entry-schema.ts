import * as v from 'valibot';
import { bodySchemas } from './body-schemas';
import { deviceId, entryId, personId, stamp } from './field-schemas';

/**
 * The form of every entry this version writes. Each kind has a version of its own, `v`.
 * Bodies may carry more fields than are named: they are kept, and not looked at.
 */
export type EntryKind = keyof typeof bodySchemas;

const envelope = {
  id: entryId,
  at: stamp,
  device: deviceId,
  /** Who wrote it down, or null where nobody was chosen. */
  author: v.nullable(personId),
  v: v.literal(1),
};

/** What every entry has, whatever its kind: enough to order, keep and pass on a stranger. */
export const envelopeSchema = v.looseObject({
  id: entryId,
  at: stamp,
  device: deviceId,
  kind: v.pipe(v.string(), v.minLength(1), v.maxLength(80)),
  v: v.pipe(v.number(), v.integer(), v.minValue(1)),
});

export const entrySchemas = Object.fromEntries(
  Object.entries(bodySchemas).map(([kind, body]) => [
    kind,
    v.looseObject({ ...envelope, kind: v.literal(kind), ...body }),
  ]),
) as unknown as Readonly<Record<EntryKind, v.GenericSchema>>;

type Output<Fields> = Fields extends v.ObjectEntries
  ? v.InferOutput<v.ObjectSchema<Fields, undefined>>
  : never;
type BodyOf<Kind extends EntryKind> = Output<(typeof bodySchemas)[Kind]>;
type Envelope = Output<typeof envelope>;

export type EntryOf<Kind extends EntryKind> = Readonly<
  Envelope & { readonly kind: Kind } & BodyOf<Kind>
>;
export type Entry = { [Kind in EntryKind]: EntryOf<Kind> }[EntryKind];

/** What a screen gives to write an entry: the notebook adds id, stamp, device and author. */
export type EntryDraft = {
  [Kind in EntryKind]: Readonly<{ readonly kind: Kind } & BodyOf<Kind>>;
}[EntryKind];
