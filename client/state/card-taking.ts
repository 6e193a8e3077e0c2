import { type Op, textOfOp } from '#core/log/op.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import type { LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { type CardFault, type CardFile, parseCardFile } from '#shared/card-file.ts'
import { askToKeepStorage } from '../device/storage-persistence.ts'
import { heldOfText } from '../sync/brought.ts'
import { noMark } from '../sync/held-op.ts'
import { cardTaken } from './card-taken.ts'
import { closeLog, engineOf, logStore, showLog } from './open-outing.ts'
import { freshRecord } from './starting.ts'

/** Keeps a card on this phone, in place of an older one of the same round. No key and no invite: it asks no server. */
export async function takeCard(text: string, label: string): Promise<Result<LogId, CardFault>> {
  const parsed = parseCardFile(text)
  if (!parsed.ok) return err(parsed.error)
  const file = parsed.value
  if (engineOf(file.id)) closeLog()
  await logStore.remove(file.id).catch(() => undefined)
  const record = { ...freshRecord(file.id, label), nextN: 2, nextPlace: 2 }
  const held = heldOfText(file.id, textOfOp(opOfCard(file, record)), 1, noMark)
  if (held === null) return err('not a card')
  await logStore.save(record, [held]).catch(() => undefined)
  showLog({ record, ops: [held] }, false)
  void askToKeepStorage()
  return ok(file.id)
}

const opOfCard = ({ id, outing }: CardFile, { device, at }: Pick<Op, 'device' | 'at'>): Op => ({
  log: id,
  scope: null,
  device,
  n: 1,
  tick: 1,
  at,
  act: cardTaken,
  facts: factsOfPlain(outing).map(fact => ({ ...fact, replaces: [] })),
})
