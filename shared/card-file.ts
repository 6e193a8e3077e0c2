import * as z from 'zod/mini'
import { faultsOfPlain } from '#core/outing/plain-faults.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import type { LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { logId } from './atoms.ts'
import { isTooDeep } from './op.ts'
import { plainOutingSchema } from './plain-outing.ts'
import { proves } from './proof.ts'

/** One player's card, taken home by codes or as a file: an outing of one ball, with nothing that lets anybody in. */
export interface CardFile {
  readonly sixThrees: 'card'
  readonly version: 1
  /** The same for one ball of one outing whoever gives it, so that a card taken again takes the place of the first. */
  readonly id: LogId
  readonly outing: PlainOuting
}

export const cardFileSchema = proves<CardFile>()(
  z.strictObject({ sixThrees: z.literal('card'), version: z.literal(1), id: logId, outing: plainOutingSchema }),
)

export const cardFaults = ['not a card', 'newer version'] as const
export type CardFault = (typeof cardFaults)[number]

/** Characters; a card with three tees takes about four thousand. */
const longestFile = 200_000
const deepestFile = 12

export const cardFileOf = (id: LogId, outing: PlainOuting): CardFile => ({ sixThrees: 'card', version: 1, id, outing })

/** True for a text that means to be a card, whatever is wrong with it. */
export const isCardText = (text: string): boolean => headOf(text)?.sixThrees === 'card'

export function parseCardFile(text: string): Result<CardFile, CardFault> {
  const head = headOf(text)
  if (head?.sixThrees !== 'card') return err('not a card')
  if (head.version !== 1) return err('newer version')
  const parsed = cardFileSchema.safeParse(head)
  if (!parsed.success) return err('not a card')
  const file: CardFile = parsed.data
  return faultsOfPlain(file.outing).length > 0 ? err('not a card') : ok(file)
}

function headOf(text: string): { readonly sixThrees?: unknown; readonly version?: unknown } | null {
  if (text.length > longestFile || isTooDeep(text, deepestFile)) return null
  try {
    const value: unknown = JSON.parse(text.replace(/^\ufeff/, ''))
    return typeof value === 'object' ? value : null
  } catch {
    return null
  }
}
