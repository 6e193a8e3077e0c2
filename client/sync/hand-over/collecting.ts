import { type HashOf, parseFrame } from './frames.ts'

/** The codes read so far, in whatever order they came. */
export interface Collecting {
  readonly set: string | null
  readonly of: number
  readonly parts: ReadonlyMap<number, string>
}

export const nothingCollected: Collecting = { set: null, of: 0, parts: new Map() }

export type Collected =
  | { readonly kind: 'not ours' }
  /** Codes of two texts were mixed: the newer one is begun. */
  | { readonly kind: 'another'; readonly so: Collecting }
  | { readonly kind: 'kept'; readonly so: Collecting }
  /** All parts are here and do not make the text that was shown: begin again. */
  | { readonly kind: 'damaged' }
  | { readonly kind: 'whole'; readonly data: string }

/** What has been collected with one more code. The same code twice changes nothing. */
export function collect(so: Collecting, code: string, hash: HashOf): Collected {
  const frame = parseFrame(code)
  if (frame === null) return { kind: 'not ours' }
  const isSame = so.set === frame.set && so.of === frame.of
  const parts = new Map(isSame ? so.parts : []).set(frame.place, frame.data)
  const next: Collecting = { set: frame.set, of: frame.of, parts }
  if (parts.size < frame.of) return { kind: isSame || so.set === null ? 'kept' : 'another', so: next }
  const data = [...parts]
    .sort(([a], [b]) => a - b)
    .map(([, part]) => part)
    .join('')
  return hash(data).startsWith(frame.set) ? { kind: 'whole', data } : { kind: 'damaged' }
}

/** Places that are still missing. */
export const missingOf = ({ of, parts }: Collecting): number[] =>
  Array.from({ length: of }, (_, place) => place + 1).filter(place => !parts.has(place))
